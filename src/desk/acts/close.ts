import type { DeskCase } from "../case.ts";
import type { OutcomeName } from "../outcomes.ts";
import type { Act, Decision } from "./act.ts";
import { dangerFirst, done, eventOf, notMine, type TurnOf } from "./answers.ts";
import { cameBack } from "./close/came-back.ts";
import { sold } from "./close/sold.ts";

/** What an outcome adds to closing: the motor, changes to the numbers on record, and what is said of them. */
export type Closing = Pick<Extract<Decision, { kind: "done" }>, "numbers" | "doubted"> & {
  readonly sku: string | null;
  readonly sale: DeskCase["sale"];
  readonly said: readonly string[];
};

type Refused = Extract<Decision, { kind: "refused" }>;
export type CloseTurn = TurnOf<"close">;

const plain = ({ act, case: { sale } }: CloseTurn): Closing => ({
  numbers: [],
  doubted: [],
  sku: act.sku,
  sale,
  said: [],
});

/** Outcomes the shop learns from; the others only end the case. */
const learning: { readonly [O in OutcomeName]?: (turn: CloseTurn) => Closing | Refused } = {
  sold,
  "wrong-part": cameBack,
};

/** Ends a case. A part may come back after the case was closed, so that outcome can replace `sold`. */
export function close(turn: CloseTurn): Decision {
  const { outcome } = turn.act;
  const refused = comesBack(turn.case, turn.act) ? null : (notMine(turn) ?? dangerFirst(turn));
  if (refused) return refused;
  const closing = (learning[outcome] ?? plain)(turn);
  if ("kind" in closing) return closing;
  const { wording } = turn.knowledge;
  const word = wording.say("desk", `outcome.${outcome}`);
  const shown = closing.sku === null ? word : `${word}, ${closing.sku}`;
  const answer = [wording.say("desk", "answer.closed", { outcome: shown }), ...closing.said].join(" ");
  return done(turn, answer, {
    case: {
      ...turn.case,
      sale: closing.sale,
      unanswered: null,
      standing: { state: "closed", outcome, sku: closing.sku, by: turn.by, since: turn.at },
    },
    thread: { ...turn.thread, pending: { kind: "nothing" } },
    toCase: [{ text: wording.say("desk", "case.closed", { name: turn.by.name, outcome: shown }) }],
    events: [eventOf(turn, "closed", shown)],
    numbers: closing.numbers,
    doubted: closing.doubted,
  });
}

function comesBack({ standing }: DeskCase, { outcome }: Extract<Act, { kind: "close" }>): boolean {
  return outcome === "wrong-part" && standing.state === "closed" && standing.outcome === "sold";
}
