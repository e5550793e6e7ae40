import { assessThread } from "../../conversation/assess.ts";
import type { PartEdit } from "../../conversation/parts-list.ts";
import { createSpeaker } from "../../conversation/speaker.ts";
import { addedName, editText, listText, type Named, partNamed, partsOfCase } from "../parts.ts";
import { partChoices } from "../parts-choices.ts";
import type { Decision } from "./act.ts";
import { done, eventOf, notMine, refuse, type TurnOf } from "./answers.ts";

/** Leaves a part out, makes it needed or optional, or has it again as the rules do. The customer is told nothing by it. */
export function editPart(turn: TurnOf<"edit-part">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  const { act, thread, knowledge } = turn;
  const list = partsOfCase(turn.case, assessThread(thread, knowledge), knowledge);
  const named = partNamed(list, act.part);
  if (!named) return refuse(turn, "noPart", { part: act.part });
  const changed = change(turn, named);
  return changed
    ? withEdits(turn, changed.edits, changed.what)
    : refuse(turn, "partAlready", { part: act.part });
}

interface Changed {
  readonly edits: readonly PartEdit[];
  /** In a few words. */
  readonly what: string;
}

/** The edits after the act; undefined when it would change nothing. */
function change(
  { act, by, at, knowledge, case: { partEdits } }: TurnOf<"edit-part">,
  named: Named,
): Changed | undefined {
  const speaker = createSpeaker(knowledge.wording, []);
  const without = (edit: PartEdit | undefined) => partEdits.filter((other) => other !== edit);
  const undone = (part: string) => speaker.say("desk", "part.undone", { part });
  if (named.of === "desk") {
    const { edit } = named;
    if (act.to === "dropped" || act.to === "as-ruled") {
      return { edits: without(edit), what: speaker.say("desk", "part.dropped", { part: addedName(edit) }) };
    }
    if (act.to === edit.need) return undefined;
    const next: PartEdit = { ...edit, need: act.to, by, at };
    return {
      edits: [...without(edit), next],
      what: speaker.say("desk", `part.${act.to}`, { part: addedName(edit) }),
    };
  }
  if (named.of === "nothing") {
    return act.to === "as-ruled" ? { edits: without(named.edit), what: undone(named.edit.part) } : undefined;
  }
  const { part, spare, need, edit } = named.line;
  if (act.to === "as-ruled") return edit && { edits: without(edit), what: undone(part) };
  if (act.to === need) return undefined;
  const next: PartEdit = { of: "rules", part, to: act.to, sku: spare?.sku ?? null, by, at };
  return { edits: [...without(edit), next], what: editText(next, speaker) };
}

/** The case with these edits; `more` goes into the history alone. */
export function withEdits(
  turn: TurnOf<"edit-part" | "add-part">,
  partEdits: readonly PartEdit[],
  what: string,
  { more = "", warning = "" }: { readonly more?: string; readonly warning?: string } = {},
): Decision {
  const { thread, knowledge, by } = turn;
  const { wording } = knowledge;
  const edited = { ...turn.case, partEdits };
  const list = partsOfCase(edited, assessThread(thread, knowledge), knowledge);
  const text = listText(list, createSpeaker(wording, []));
  return done(
    turn,
    wording.say("desk", "answer.parts", { what, warning, list: text }).replace(/ +\n/, "\n"),
    {
      case: edited,
      toCase: [{ text: wording.say("desk", "case.parts", { name: by.name, what }) }],
      events: [eventOf(turn, "parts", more === "" ? what : `${what}: ${more}`)],
      choices: partChoices(turn.case.id, list, wording),
    },
  );
}
