import { pumpByModel, sparesFor, sparesOfWork } from "../../catalogue/catalogue.ts";
import type { Catalogue, Spare } from "../../catalogue/types.ts";
import { labelTotalHp } from "../../engineering/power.ts";
import { type ChangeItem, changeItems } from "../../matching/parts.ts";
import type { JudgedMotor } from "../../matching/types.ts";
import type { Assessment } from "../assess.ts";
import type { Speaker } from "../speaker.ts";
import type { TalkTurn } from "../turn.ts";
import { priceText, stockText } from "./motor.ts";

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
  return changeItems(judged);
}

function itemText(
  { speaker, assessment, knowledge }: TalkTurn,
  judged: JudgedMotor,
  item: ChangeItem,
): string {
  const general = speaker.say("work", item.key, item.values);
  const listed = sparesOf(item, judged, assessment, knowledge.catalogue).map((spare) =>
    spareText(spare, speaker),
  );
  return listed.length > 0 ? `${general}: ${listed.join(", ")}` : general;
}

/** The shop's parts for one piece of work, where the pump is known. */
function sparesOf(
  item: ChangeItem,
  { motor }: JudgedMotor,
  { site }: Pick<Assessment, "site">,
  catalogue: Catalogue,
): readonly Spare[] {
  const pump = site.pumpModel === undefined ? undefined : pumpByModel(catalogue, site.pumpModel);
  if (!sparesOfWork[item.key] || !pump) return [];
  const totalHp = item.key === "impeller-and-diffuser" ? labelTotalHp(motor.label) : undefined;
  return sparesFor(catalogue, pump, [item], totalHp).flatMap(({ spare }) => spare ?? []);
}

function spareText(spare: Spare, speaker: Speaker): string {
  const { sku } = spare;
  return speaker.say("replies", "spare", {
    sku,
    price: priceText(spare, speaker),
    stock: stockText(spare, speaker),
  });
}

/** The parts list for staff: what goes into the parcel beside the motor; empty where the pump is not known. */
export function spareTexts(
  judged: JudgedMotor,
  assessment: Pick<Assessment, "site">,
  catalogue: Catalogue,
  speaker: Speaker,
): readonly string[] {
  return itemsOf(judged).flatMap((item) =>
    sparesOf(item, judged, assessment, catalogue).map((spare) =>
      speaker.say("brief", `part.${item.need}`, { kind: spare.kind, spare: spareText(spare, speaker) }),
    ),
  );
}
