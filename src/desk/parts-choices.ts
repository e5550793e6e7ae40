import type { PartsList } from "../conversation/parts-list.ts";
import type { Wording } from "../conversation/wording.ts";
import { type Choice, fitsChoice } from "../outgoing.ts";
import type { Act } from "./acts/act.ts";
import { addedName } from "./parts.ts";
import { actOfChoice, choiceIdOf } from "./staff-line.ts";

type To = Extract<Act, { kind: "edit-part" }>["to"];

/** What can be done to each part of a list, as buttons. A part whose name no button carries is named in words. */
export function partChoices(
  caseId: number,
  { ruled, added }: PartsList,
  wording: Wording,
): readonly Choice[] {
  const button = (to: To, part: string): Choice => ({
    id: choiceIdOf(caseId, { kind: "edit-part", part, to }),
    label: wording.say("desk", `choice.part.${to}`, { part }),
  });
  return [
    ...ruled.flatMap(({ part, need, edit }) => [
      ...(need === "dropped" ? [] : [button("dropped", part)]),
      ...(need === "optional" || need === "dropped" ? [button("needed", part)] : [button("optional", part)]),
      ...(edit ? [button("as-ruled", part)] : []),
    ]),
    ...added.flatMap(({ edit }) => [
      button("dropped", addedName(edit)),
      button(edit.need === "needed" ? "optional" : "needed", addedName(edit)),
    ]),
  ].filter(({ id }) => fitsChoice(id) && actOfChoice(id) !== null);
}
