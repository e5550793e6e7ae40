import { labelTotalHp } from "../../engineering/power.ts";
import { slowSpeedSaving } from "../../engineering/running-cost.ts";
import { centsFromUsd } from "../../engineering/units.ts";
import { decisiveFinding } from "../../matching/explain.ts";
import { indexStock } from "../../matching/stock-index.ts";
import type { JudgedMotor } from "../../matching/types.ts";
import { mentioned } from "../../nameplate/read.ts";
import { costOfMotor, roundUsd, useOf } from "../money.ts";
import type { TalkTurn } from "../turn.ts";
import { motorName, priceText } from "../verdict/motor.ts";

const fits = ({ verdict }: JudgedMotor) => verdict === "drop-in" || verdict === "fits-with-work";

/** Mount, shaft, supply, phase and the rest are settled: only then an alternative is worth naming. */
function fitting({ assessment }: TalkTurn): readonly JudgedMotor[] | undefined {
  const motors = assessment.match?.motors.filter(fits);
  return motors && (motors.length > 0 || assessment.match?.verdict === "none-fits") ? motors : undefined;
}

/**
 * "Can I go bigger?": about the horsepower that was named, else the nearest stronger motor that fits; and what the extra
 * power does and doesn't do.
 */
export function bigger(turn: TalkTurn): string {
  const { speaker } = turn;
  const motors = fitting(turn);
  if (!motors) return speaker.say("replies", "bigger.later");
  const wish = wishedHp(turn);
  if (wish !== undefined) {
    return `${aboutWish(turn, motors, wish)} ${speaker.say("replies", "bigger.caution")}`;
  }
  const stronger = motors.find(({ findings }) =>
    findings.some(({ rule, outcome }) => rule === "total-horsepower" && outcome === "needs-work"),
  );
  if (!stronger) return speaker.say("replies", "bigger.none");
  const values = { motor: motorName(stronger.motor), price: priceText(stronger.motor, speaker) };
  return speaker.say("replies", "bigger.some", values);
}

/** The horsepower of a motor somebody would like: named in this message and not that of their label. */
function wishedHp({ text, thread }: TalkTurn): number | undefined {
  return mentioned(text, "hp").find((hp) => hp !== thread.facts.hp?.value);
}

/** The motor of that horsepower that suits best and what its total comes to; or why none of them goes on this pump. */
function aboutWish(
  { speaker, assessment: { nameplate, site }, knowledge }: TalkTurn,
  motors: readonly JudgedMotor[],
  hp: number,
): string {
  const ofSize = knowledge.catalogue.motors.filter(({ label }) => label.hp === hp);
  if (ofSize.length === 0) return speaker.say("replies", "bigger.wish.notStocked", { hp });
  const suits = motors.find(({ motor }) => motor.label.hp === hp);
  const judged = suits ?? indexStock(ofSize).nearestMiss({ nameplate, site, on: knowledge.on })?.judged;
  const why =
    suits?.findings.find(({ rule }) => rule === "total-horsepower") ?? (judged && decisiveFinding(judged));
  if (!judged || !why) return speaker.say("replies", "bigger.wish.notStocked", { hp });
  return speaker.say("replies", suits ? `bigger.wish.${suits.verdict}` : "bigger.wish.no", {
    hp,
    motor: motorName(judged.motor),
    price: priceText(judged.motor, speaker),
    reason: speaker.say("reasons", why.reason, why.values),
  });
}

/** "What about two-speed or variable?": the best one that fits, and what half speed can save at most. */
export function otherSpeeds(turn: TalkTurn): string | undefined {
  const { speaker, assessment, knowledge, absorbed } = turn;
  // "It's a two-speed" states the label; it doesn't ask for another motor.
  if (absorbed.news.includes("speedKind") || absorbed.news.includes("rpm")) return undefined;
  const motors = fitting(turn);
  if (!motors) return speaker.say("replies", "speeds.later");
  const slower = motors.find(
    ({ motor }) => motor.label.speedKind === "two" || motor.label.speedKind === "variable",
  );
  if (!slower) return speaker.say("replies", "speeds.none");
  const use = useOf(assessment.site, knowledge.shop);
  const full = costOfMotor(slower.motor, use, labelTotalHp(assessment.nameplate));
  const values = { motor: motorName(slower.motor), price: priceText(slower.motor, speaker) };
  if (!full) return speaker.say("replies", "speeds.plain", values);
  return speaker.say("replies", "speeds.some", {
    ...values,
    saving: roundUsd(slowSpeedSaving(full).upToUsdPerYear),
    full: roundUsd(full.usdPerYear),
    hours: use.hoursPerDay,
    cents: centsFromUsd(use.pricePerKwh),
  });
}
