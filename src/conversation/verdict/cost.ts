import { centsFromUsd } from "../../engineering/units.ts";
import type { StockMotor } from "../../matching/types.ts";
import { costsOf, roundUsd } from "../money.ts";
import type { Reply } from "../reply.ts";
import type { Speaker } from "../speaker.ts";
import type { TalkTurn } from "../turn.ts";

/**
 * Running cost of the new motor beside the old one, with every assumption, and both as a picture; nothing when it
 * can't be worked out.
 */
export function costReplies(
  { speaker, assessment, knowledge }: TalkTurn,
  motor: StockMotor,
): readonly Reply[] {
  const { use, before, after } = costsOf(assessment, motor, knowledge.shop);
  if (after === undefined) return [];
  const lines = compared(speaker, before?.usdPerYear, after.usdPerYear);
  const powerFactor = before?.assumptions.find(
    ({ name, basis }) => name === "powerFactor" && basis === "assumed",
  );
  const basis = speaker.say("replies", "cost.basis", {
    powerFactor: powerFactor ? speaker.say("replies", "cost.powerFactor", { value: powerFactor.value }) : "",
    basis: speaker.say("replies", use.stated ? "cost.stated" : "cost.assumed"),
  });
  const text = speaker.say("replies", "cost", {
    hours: use.hoursPerDay,
    cents: centsFromUsd(use.pricePerKwh),
    lines,
    basis,
  });
  return [before ? { text, picture: { kind: "running-cost", costs: { before, after, use } } } : text];
}

/** Labels and assumptions cannot tell a smaller difference apart. */
export const SAME_COST = 0.1;

function compared(speaker: Speaker, before: number | undefined, after: number): string {
  const now = speaker.say("replies", "cost.new", { usd: roundUsd(after) });
  if (before === undefined) return now;
  if (Math.abs(before - after) <= before * SAME_COST) {
    return speaker.say("replies", "cost.same", { usd: roundUsd(after) });
  }
  return `${speaker.say("replies", "cost.old", { usd: roundUsd(before) })}, ${now}`;
}
