import { pumpByModel, spareBySku } from "../../catalogue/catalogue.ts";
import { plainNumber } from "../../catalogue/numbers.ts";
import type { Spare } from "../../catalogue/types.ts";
import { assessThread } from "../../conversation/assess.ts";
import type { AddedPart } from "../../conversation/parts-list.ts";
import { createSpeaker } from "../../conversation/speaker.ts";
import { addedName, editText, partNamed, partsOfCase } from "../parts.ts";
import type { Decision } from "./act.ts";
import { notMine, refuse, type TurnOf } from "./answers.ts";
import { editPart, withEdits } from "./edit-part.ts";

/** A part in words is told to the customer as it stands: a phrase, not a letter. */
const WORDS_CHARACTERS = 80;
const NOTE_CHARACTERS = 200;

/** Puts a spare on the list by its stock number, or a part in words. The note stays at the desk. */
export function addPart(turn: TurnOf<"add-part">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  const { act, by, at, thread, knowledge } = turn;
  const spare = "sku" in act.part ? spareBySku(knowledge.catalogue, act.part.sku) : undefined;
  if ("sku" in act.part && !spare) return refuse(turn, "noSpare", { sku: act.part.sku });
  const words = "words" in act.part ? act.part.words.replaceAll(/\s+/g, " ").trim() : "";
  if (words.length > WORDS_CHARACTERS) return refuse(turn, "longPart", { limit: WORDS_CHARACTERS });
  const part = spare ? { sku: spare.sku } : { words };
  const note = act.note.replaceAll(/\s+/g, " ").trim().slice(0, NOTE_CHARACTERS);
  const added: AddedPart = { of: "desk", part, need: "needed", note, by, at };

  const assessment = assessThread(thread, knowledge);
  const known = partNamed(partsOfCase(turn.case, assessment, knowledge), addedName(added));
  // The rules have this very spare already: it only may have been left out, or optional.
  if (known?.of === "rules" && spare) {
    return editPart({ ...turn, act: { kind: "edit-part", part: spare.sku, to: "needed" } });
  }
  const others = turn.case.partEdits.filter((edit) => known?.of !== "desk" || edit !== known.edit);
  const { site } = assessment;
  return withEdits(turn, [...others, added], editText(added, createSpeaker(knowledge.wording, [])), {
    more: note,
    warning: spare ? warningOf(turn, spare, site.pumpModel) : "",
  });
}

/** The stock list's word for the one who adds; a person may know more than it does. */
function warningOf(
  { knowledge }: TurnOf<"add-part">,
  { sku, fits }: Spare,
  pumpModel: string | undefined,
): string {
  const pump = pumpModel === undefined ? undefined : pumpByModel(knowledge.catalogue, pumpModel);
  if (!pump || fits.length === 0) return "";
  if (fits.some((model) => plainNumber(model) === plainNumber(pump.model))) return "";
  return knowledge.wording.say("desk", "answer.parts.otherPump", { sku, pump: pump.model });
}
