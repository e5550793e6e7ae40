import type { Act, ActKind, Decision, DeskTurn } from "./act.ts";
import { addPart } from "./add-part.ts";
import { allClear } from "./all-clear.ts";
import type { TurnOf } from "./answers.ts";
import { close } from "./close.ts";
import { confirm } from "./confirm.ts";
import { correct } from "./correct.ts";
import { editPart } from "./edit-part.ts";
import { handBack } from "./hand-back.ts";
import { note } from "./note.ts";
import { offer } from "./offer.ts";
import { rank } from "./rank.ts";
import { reopen } from "./reopen.ts";
import { showParts } from "./show-parts.ts";
import { take } from "./take.ts";
import { takeOver } from "./take-over.ts";
import { tell } from "./tell.ts";

/** Everything staff can do, in the order of a case's life. */
const acts: { readonly [K in ActKind]: (turn: TurnOf<K>) => Decision } = {
  take,
  "take-over": takeOver,
  note,
  tell,
  correct,
  offer,
  "show-parts": showParts,
  "edit-part": editPart,
  "add-part": addPart,
  confirm,
  rank,
  "all-clear": allClear,
  "hand-back": handBack,
  close,
  reopen,
};

/** What an act on a case leads to. Pure: nothing has happened until it is committed. */
export function decide<A extends Act>(turn: DeskTurn<A>): Decision {
  const act = acts[turn.act.kind] as (turn: DeskTurn<A>) => Decision;
  return act(turn);
}
