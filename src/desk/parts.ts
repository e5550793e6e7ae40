import { motorBySku } from "../catalogue/catalogue.ts";
import type { Spare } from "../catalogue/types.ts";
import type { Assessment } from "../conversation/assess.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import {
  type AddedPart,
  type PartEdit,
  type PartsList,
  partsListOf,
  type RuledEdit,
  type RuledPart,
  type Unsettled,
} from "../conversation/parts-list.ts";
import type { Speaker } from "../conversation/speaker.ts";
import { spareText } from "../conversation/verdict/parts.ts";
import { judgeMotor } from "../matching/match.ts";
import type { JudgedMotor } from "../matching/types.ts";
import type { DeskCase } from "./case.ts";

type Edited = Pick<DeskCase, "offered" | "partEdits">;

/** The motor a case is about: the one a person has offered, else the one that fits best; none while neither is. */
export function motorOfCase(
  { offered }: Pick<DeskCase, "offered">,
  { match, nameplate, site }: Assessment,
  { catalogue, on }: Knowledge,
): JudgedMotor | undefined {
  const chosen = offered === null ? undefined : motorBySku(catalogue, offered);
  if (chosen) return judgeMotor({ nameplate, site, on }, chosen);
  const best = match?.motors[0];
  return best?.verdict === "undecided" ? undefined : best;
}

/** What goes with the motor of a case, as staff have it. */
export function partsOfCase(open: Edited, assessment: Assessment, knowledge: Knowledge): PartsList {
  const motor = motorOfCase(open, assessment, knowledge);
  return partsListOf(motor, assessment.site, knowledge.catalogue, open.partEdits);
}

/** The parts that go into the parcel, one text each; of the rules' own only what has a number or was edited. */
export function parcelTexts({ ruled, added }: PartsList, speaker: Speaker): readonly string[] {
  return [
    ...ruled.flatMap(({ part, spare, need, edit }) =>
      need === "dropped" || (spare === undefined && edit === undefined)
        ? []
        : partText(part, spare, need, speaker),
    ),
    ...added.map(({ edit, spare }) =>
      partText(spare ? spare.kind : addedName(edit), spare, edit.need, speaker),
    ),
  ];
}

function partText(
  kind: string,
  spare: Spare | undefined,
  need: "needed" | "optional",
  speaker: Speaker,
): string {
  const named = spare ? `${kind} ${spareText(spare, speaker)}` : kind;
  return speaker.say("brief", `part.${need}`, { part: named });
}

/** The whole list for somebody who is about to change it, a line for each part. */
export function listText({ ruled, added }: PartsList, speaker: Speaker): string {
  const lines = [
    ...ruled.map(({ part, spare, need, edit }) => {
      const named = spare ? `${part} ${spareText(spare, speaker)}` : part;
      return speaker.say("desk", edit ? "parts.edited" : "parts.line", {
        part: named,
        need: speaker.say("desk", `part.is.${need}`),
        name: edit?.by.name ?? "",
      });
    }),
    ...added.map(({ edit, spare }) =>
      speaker.say("desk", "parts.edited", {
        part: spare ? `${spare.kind} ${spareText(spare, speaker)}` : addedName(edit),
        need: speaker.say("desk", `part.is.${edit.need}`),
        name: edit.by.name,
      }),
    ),
  ];
  return lines.length > 0 ? lines.map((line) => `• ${line}`).join("\n") : speaker.say("desk", "parts.empty");
}

/** An added part by its stock number, or in its words. */
export function addedName({ part }: AddedPart): string {
  return "words" in part ? part.words : part.sku;
}

/** What a person has done to a part, in a few words: "no gasket HOOP-974". */
export function editText(edit: PartEdit, speaker: Speaker): string {
  if (edit.of === "rules") {
    const part = edit.sku === null ? edit.part : `${edit.part} ${edit.sku}`;
    return speaker.say("desk", `part.${edit.to}`, { part });
  }
  const part = edit.need === "needed" ? addedName(edit) : `${addedName(edit)} (${edit.need})`;
  return speaker.say("desk", "part.added", { part });
}

/** An edit with who made it and the note they left. */
export function editLine(edit: PartEdit, speaker: Speaker): string {
  const note = edit.of === "desk" && edit.note !== "" ? `: ${edit.note}` : "";
  return `${editText(edit, speaker)} (${edit.by.name}${note})`;
}

/** Why an edit should be looked at again, as a sentence. */
export function unsettledText(one: Unsettled, speaker: Speaker): string {
  const edit = `${editText(one.edit, speaker)} (${one.edit.by.name})`;
  switch (one.why) {
    case "not-called-for":
      return speaker.say("desk", "parts.notCalledFor", { edit });
    case "other-spare":
      return speaker.say("desk", "parts.otherSpare", { edit, now: one.now });
    case "not-stocked":
      return speaker.say("desk", "parts.notStocked", { edit });
  }
}

/** A part of a list, as staff name it. */
export type Named =
  | { readonly of: "rules"; readonly line: RuledPart }
  | { readonly of: "desk"; readonly edit: AddedPart }
  /** Edited, but not called for at present. */
  | { readonly of: "nothing"; readonly edit: RuledEdit };

const plain = (name: string): string => name.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "");

/** The part of a list with this stock number, words or sort ("gasket", "seal"); undefined when there is none. */
export function partNamed({ ruled, added, unsettled }: PartsList, typed: string): Named | undefined {
  const wanted = plain(typed);
  if (wanted === "") return undefined;
  const listed = added.find(({ edit }) => plain(addedName(edit)) === wanted);
  if (listed) return { of: "desk", edit: listed.edit };
  const line = ruled.find(
    ({ part, spare }) => isSort(part, wanted) || (spare !== undefined && plain(spare.sku) === wanted),
  );
  if (line) return { of: "rules", line };
  const idle = unsettled.find(({ edit }) => edit.of === "rules" && isSort(edit.part, wanted))?.edit;
  return idle?.of === "rules" ? { of: "nothing", edit: idle } : undefined;
}

function isSort(part: string, wanted: string): boolean {
  return plain(part) === wanted || (part === "shaft-seal" && wanted === "seal");
}
