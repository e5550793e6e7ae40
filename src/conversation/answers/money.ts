import { labelTotalHp } from "../../engineering/power.ts";
import { centsFromUsd } from "../../engineering/units.ts";
import { costOfLabel, costOfMotor, roundUsd, useOf } from "../money.ts";
import type { TalkTurn } from "../turn.ts";
import { motorName, priceText, stockText } from "../verdict/motor.ts";

/** What the motor on offer costs to buy. */
export function price({ assessment, speaker, knowledge }: TalkTurn): string {
  const best = assessment.match?.motors[0];
  if (!best || best.verdict === "undecided") return speaker.say("replies", "price.later");
  return speaker.say("replies", "price.best", {
    motor: motorName(best.motor),
    price: priceText(best.motor, speaker),
    stock: stockText(best.motor, speaker),
    date: knowledge.catalogue.importedOn,
  });
}

/** Less than this share is inside what labels and assumptions can tell. */
const WORTH_SAYING = 0.1;

/** What the thriftiest fitting motor of the same speeds would save on this customer's motor. */
export function savings({ assessment, knowledge, speaker }: TalkTurn): string {
  const use = useOf(assessment.site, knowledge.shop);
  const before = costOfLabel(assessment.nameplate, use);
  const fitting = assessment.match?.motors.filter(
    ({ verdict }) => verdict === "drop-in" || verdict === "fits-with-work",
  );
  if (!before || !fitting || fitting.length === 0) return speaker.say("replies", "money.later");
  const [thriftiest] = fitting
    .flatMap(({ motor }) => {
      const after = costOfMotor(motor, use, labelTotalHp(assessment.nameplate));
      return after ? [{ motor, after }] : [];
    })
    .sort((a, b) => a.after.usdPerYear - b.after.usdPerYear);
  const saved = thriftiest ? before.usdPerYear - thriftiest.after.usdPerYear : 0;
  if (!thriftiest || saved < before.usdPerYear * WORTH_SAYING) return speaker.say("replies", "savings.none");
  return speaker.say("replies", "savings.efficient", {
    motor: motorName(thriftiest.motor),
    price: priceText(thriftiest.motor, speaker),
    before: roundUsd(before.usdPerYear),
    after: roundUsd(thriftiest.after.usdPerYear),
    saving: roundUsd(saved),
    hours: use.hoursPerDay,
    cents: centsFromUsd(use.pricePerKwh),
  });
}
