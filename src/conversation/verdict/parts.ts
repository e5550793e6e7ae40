import { pumpByModel, type SpareLine, sparesFor, sparesOfWork } from "../../catalogue/catalogue.ts";
import { labelTotalHp } from "../../engineering/power.ts";
import { type ChangeItem, changeItems } from "../../matching/parts.ts";
import type { JudgedMotor } from "../../matching/types.ts";
import type { TalkTurn } from "../turn.ts";

/** The parts a change takes, each with stock number and price where the pump is known. */
export function partsText(turn: TalkTurn, judged: JudgedMotor): string {
  const items = itemsOf(judged).filter(({ kind }) => kind === "part");
  return items.map((item) => itemText(turn, judged, item)).join("; ");
}

/** Said with the cautions of every verdict already. */
const amongCautions: ReadonlySet<string> = new Set(["own-capacitor"]);

/** The jobs a change takes beyond parts, one line each; nothing for a plain swap. */
export function workText(turn: TalkTurn, judged: JudgedMotor): readonly string[] {
  const jobs = itemsOf(judged).filter(
    ({ key, kind, need }) => kind === "job" && need === "needed" && !amongCautions.has(key),
  );
  if (jobs.length === 0) return [];
  const lines = jobs.map(({ key, values }) => `• ${turn.speaker.say("work", key, values)}`);
  return [turn.speaker.say("replies", "work", { work: `\n${lines.join("\n")}` })];
}

function itemsOf(judged: JudgedMotor): readonly ChangeItem[] {
  return changeItems(judged, { moreFlow: false });
}

function itemText(
  { speaker, assessment, knowledge }: TalkTurn,
  judged: JudgedMotor,
  item: ChangeItem,
): string {
  const general = speaker.say("work", item.key, item.values);
  const { pumpModel } = assessment.site;
  const pump = pumpModel === undefined ? undefined : pumpByModel(knowledge.catalogue, pumpModel);
  if (!sparesOfWork[item.key] || !pump) return general;
  const totalHp = item.key === "impeller-and-diffuser" ? labelTotalHp(judged.motor.label) : undefined;
  const listed = sparesFor(knowledge.catalogue, pump, [item], totalHp)
    .map(spareText)
    .filter((text) => text !== "");
  return listed.length > 0 ? `${general}: ${listed.join(", ")}` : general;
}

function spareText({ spare }: SpareLine): string {
  if (!spare) return "";
  return spare.priceUsd === undefined ? spare.sku : `${spare.sku} $${spare.priceUsd.toFixed(2)}`;
}
