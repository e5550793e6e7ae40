import type { StockMotor } from "../../matching/types.ts";
import { costOfLabel, costOfMotor, roundUsd, useOf } from "../money.ts";
import type { TalkTurn } from "../talk.ts";

/** Running cost of the new motor beside the old one, with every assumption; nothing when it can't be worked out. */
export function costText({ speaker, assessment, knowledge }: TalkTurn, motor: StockMotor): readonly string[] {
  const use = useOf(assessment.site, knowledge.shop);
  const after = costOfMotor(motor, use);
  if (after === undefined) return [];
  const before = costOfLabel(assessment.nameplate, use);
  const lines = [
    ...(before ? [speaker.say("replies", "cost.old", { usd: roundUsd(before.usdPerYear) })] : []),
    speaker.say("replies", "cost.new", { usd: roundUsd(after.usdPerYear) }),
  ];
  const powerFactor = before?.assumptions.find(
    ({ name, basis }) => name === "powerFactor" && basis === "assumed",
  );
  const basis = speaker.say("replies", "cost.basis", {
    powerFactor: powerFactor ? speaker.say("replies", "cost.powerFactor", { value: powerFactor.value }) : "",
    basis: speaker.say("replies", use.stated ? "cost.stated" : "cost.assumed"),
  });
  return [
    speaker.say("replies", "cost", {
      hours: use.hoursPerDay,
      cents: Math.round(use.pricePerKwh * 1000) / 10,
      lines: lines.join(", "),
      basis,
    }),
  ];
}
