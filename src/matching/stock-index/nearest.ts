import { decisiveFinding } from "../explain.ts";
import { nearestMissFirst } from "../rank.ts";
import type { JudgedMotor, Miss, Question } from "../types.ts";
import type { FindingOf } from "./aspects.ts";
import { judgeAt, type SortedStock } from "./best.ts";
import { ratedRules } from "./rule-inputs.ts";

/**
 * The nearest of the motors ruled out: the first that `matchStock` would list of them. Only those that break as few
 * rules as any are judged in full, and those in `onRecord` (positions), whose record may count against them.
 */
export function nearestMiss(
  stock: SortedStock,
  question: Question,
  find: FindingOf,
  onRecord: ReadonlySet<number>,
): Miss | undefined {
  let least = Number.POSITIVE_INFINITY;
  let nearest: number[] = [];
  for (let at = 0; at < stock.motors.length; at++) {
    if (onRecord.has(at)) continue;
    const distance = distanceAt(stock, at, find);
    if (distance === undefined || distance > least) continue;
    if (distance < least) nearest = [];
    least = distance;
    nearest.push(at);
  }
  const judged = [...nearest, ...onRecord].flatMap((at) => judgeAt(stock, at, question, find));
  const [miss] = nearestMissFirst(
    question,
    judged.filter(({ verdict }: JudgedMotor) => verdict === "no-fit"),
  );
  const why = miss && decisiveFinding(miss);
  return miss && why ? { judged: miss, why } : undefined;
}

/** More than there are rules: rules broken weigh more than any number of unknowns, these more than work. */
const WEIGHT = 100;

/** How far a motor is from fitting, as the ranking counts it; undefined when no rule is broken. */
function distanceAt({ aspects }: SortedStock, at: number, find: FindingOf): number | undefined {
  let broken = 0;
  let rest = 0;
  for (const rule of ratedRules) {
    const { outcome } = find(rule, aspects[rule].kindOf[at] ?? 0);
    if (outcome === "rules-out") broken++;
    else if (outcome === "not-known") rest += WEIGHT;
    else if (outcome === "needs-work") rest++;
  }
  return broken === 0 ? undefined : broken * WEIGHT * WEIGHT + rest;
}
