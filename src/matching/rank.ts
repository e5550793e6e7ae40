import { inputWatts, inputWattsFromEfficiency } from "../engineering/power.ts";
import { phaseOf, ratedHpOf, totalHpOf } from "./deduced.ts";
import type { JudgedMotor, MotorVerdict, Outcome, Question, StockMotor } from "./types.ts";

/** What cannot be compared comes last. */
const last = Number.POSITIVE_INFINITY;

/** As the overall verdict: an undecided motor may yet turn out a drop-in, so it stands before work. */
const verdictOrder: Readonly<Record<MotorVerdict, number>> = {
  "drop-in": 0,
  undecided: 1,
  "fits-with-work": 2,
  "no-fit": 3,
};

const count = (judged: JudgedMotor, outcome: Outcome): number =>
  judged.findings.filter((finding) => finding.outcome === outcome).length;

const isOnRecord = ({ findings }: JudgedMotor): boolean =>
  findings.some(({ rule, outcome }) => rule === "record" && outcome === "holds");

/** Total hp of the motor over that of the old one, to a millionth so that equal labels compare equal. */
function totalHpRatio(question: Question, motor: StockMotor): number | undefined {
  const oldTotal = totalHpOf(question.nameplate)?.value;
  const newTotal = totalHpOf(motor.label)?.value;
  if (oldTotal === undefined || newTotal === undefined) return undefined;
  return Math.round((newTotal / oldTotal) * 1e6) / 1e6;
}

/**
 * Input watts for each horsepower at the shaft: from the printed efficiency, else from volts, amps and power
 * factor. The low speeds of a two- or variable-speed motor are left out: what they save depends on the hours.
 */
function wattsPerShaftHp({ label, efficiencyPct, powerFactor }: StockMotor): number {
  if (efficiencyPct !== undefined) return inputWattsFromEfficiency(1, efficiencyPct);
  const hp = ratedHpOf(label)?.value;
  const volts = label.volts?.at(-1);
  const amps = label.amps?.length === label.volts?.length ? label.amps?.at(-1) : undefined;
  if (hp === undefined || volts === undefined || amps === undefined || powerFactor === undefined) return last;
  return inputWatts(volts, amps, powerFactor, phaseOf(label)) / hp;
}

/** The order of preference, one number for each criterion, smaller first. */
function preference(question: Question, judged: JudgedMotor): readonly number[] {
  const { motor, verdict } = judged;
  const ratio = totalHpRatio(question, motor);
  return [
    verdictOrder[verdict],
    isOnRecord(judged) ? 0 : 1,
    ratio === undefined ? 2 : ratio >= 1 ? 0 : 1,
    ratio === undefined ? last : Math.abs(ratio - 1),
    wattsPerShaftHp(motor),
    motor.inStock > 0 ? 0 : 1,
    motor.priceUsd ?? last,
  ];
}

/** How far a ruled-out motor is from fitting: fewest rules broken first, then least unknown, least work. */
function distance(judged: JudgedMotor): readonly number[] {
  return [count(judged, "rules-out"), count(judged, "not-known"), count(judged, "needs-work")];
}

function sorted(
  motors: readonly JudgedMotor[],
  keyOf: (judged: JudgedMotor) => readonly number[],
): readonly JudgedMotor[] {
  return motors
    .map((judged) => ({ judged, key: keyOf(judged) }))
    .sort((a, b) => compareKeys(a.key, b.key) || compareText(a.judged.motor.sku, b.judged.motor.sku))
    .map(({ judged }) => judged);
}

function compareKeys(a: readonly number[], b: readonly number[]): number {
  for (const [index, value] of a.entries()) {
    const other = b[index] ?? last;
    if (value !== other) return value < other ? -1 : 1;
  }
  return 0;
}

/** By code unit, the same on every machine. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Motors best first: drop-in, undecided, work; number on record; nearest total horsepower from above; cheaper
 * to run; in stock; price; and at last the stock number, so that the order of the stock changes nothing.
 */
export function bestFirst(question: Question, motors: readonly JudgedMotor[]): readonly JudgedMotor[] {
  return sorted(motors, (judged) => preference(question, judged));
}

/** Ruled-out motors, the nearest miss first. */
export function nearestMissFirst(question: Question, motors: readonly JudgedMotor[]): readonly JudgedMotor[] {
  return sorted(motors, (judged) => [...distance(judged), ...preference(question, judged)]);
}
