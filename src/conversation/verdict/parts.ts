import type { Spare } from "../../catalogue/types.ts";
import type { ChangeItem } from "../../matching/parts.ts";
import type { JudgedMotor } from "../../matching/types.ts";
import { type ListedPart, type PartsList, partsListOf, type RuledPart } from "../parts-list.ts";
import type { Speaker } from "../speaker.ts";
import type { TalkTurn } from "../turn.ts";
import { priceText, stockText } from "./motor.ts";

/** What goes with a motor for this customer, as the desk has edited it. */
export function partsOf({ assessment, knowledge, thread }: TalkTurn, judged: JudgedMotor): PartsList {
  return partsListOf(judged, assessment.site, knowledge.catalogue, thread.partEdits);
}

/** The parts of a list as told to the customer, each with stock number and price where there is one. */
export function partsText({ items, ruled, added }: PartsList, speaker: Speaker): string {
  const texts = [
    ...items
      .filter(({ kind }) => kind === "part")
      .flatMap((work) =>
        itemTexts(
          work,
          ruled.filter((part) => part.work === work),
          speaker,
        ),
      ),
    ...added.map((part) => addedText(part, speaker)),
  ];
  return texts.length > 0 ? texts.join("; ") : speaker.say("replies", "parts.none");
}

/** Said with the cautions of every verdict already. */
const amongCautions: ReadonlySet<string> = new Set(["own-capacitor"]);

/** The jobs a change takes beyond parts, one line each; nothing for a plain swap. */
export function workText({ items, ruled }: PartsList, speaker: Speaker): readonly string[] {
  // Who takes the larger impeller needs what belongs to it.
  const moreFlow = ruled.some(({ part, need }) => part === "impeller" && need === "needed");
  const jobs = items.filter(
    ({ key, kind, need }) => kind === "job" && (need === "needed" || moreFlow) && !amongCautions.has(key),
  );
  if (jobs.length === 0) return [];
  const lines = jobs.map(({ key, values }) => `• ${speaker.say("work", key, values)}`);
  return [speaker.say("replies", "work", { work: `\n${lines.join("\n")}` })];
}

/** One sentence for what belongs together, until a person has told its parts apart. */
function itemTexts(work: ChangeItem, parts: readonly RuledPart[], speaker: Speaker): readonly string[] {
  if (parts.some(({ edit }) => edit !== undefined)) {
    return parts.flatMap(({ part, spare, need }) => {
      if (need === "dropped") return [];
      const name = speaker.say("replies", `part.${part}`, work.values);
      return [marked(spare ? `${name}: ${spareText(spare, speaker)}` : name, need, speaker)];
    });
  }
  const general = speaker.say("work", work.key, work.values);
  const listed = parts.flatMap(({ spare }) => (spare ? spareText(spare, speaker) : []));
  return [listed.length > 0 ? `${general}: ${listed.join(", ")}` : general];
}

function addedText({ edit: { part, need }, spare }: ListedPart, speaker: Speaker): string {
  const named = spare
    ? `${spare.description}: ${spareText(spare, speaker)}`
    : "words" in part
      ? part.words
      : part.sku;
  return marked(named, need, speaker);
}

function marked(part: string, need: "needed" | "optional", speaker: Speaker): string {
  return need === "needed" ? part : speaker.say("replies", "part.optional", { part });
}

/** Stock number, price and stock of a spare. */
export function spareText(spare: Spare, speaker: Speaker): string {
  return speaker.say("replies", "spare", {
    sku: spare.sku,
    price: priceText(spare, speaker),
    stock: stockText(spare, speaker),
  });
}
