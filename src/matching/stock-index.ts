import { overallVerdict } from "./match.ts";
import { bestFirst } from "./rank.ts";
import { plainNumber } from "./rules/record.ts";
import {
  type Aspects,
  aspectsOf,
  type FindingOf,
  type Findings,
  findingsFor,
} from "./stock-index/aspects.ts";
import { bestMotors } from "./stock-index/best.ts";
import { type Group, groupsOf } from "./stock-index/cells.ts";
import { nearestMiss } from "./stock-index/nearest.ts";
import type { JudgedMotor, MatchResult, Miss, Question, StockMotor } from "./types.ts";

/**
 * The stock prepared for many questions: a rule is worked out once for all motors that look alike to it, and
 * motors are taken out best first, so that a match does not have to touch them all.
 */
export interface StockIndex {
  readonly motors: readonly StockMotor[];
  readonly aspects: Aspects;
  readonly groups: readonly Group[];
  /** Findings of one question by kind; those of the sale rule are kept for the day. */
  readonly findings: (question: Question) => FindingOf;
  /** The same answer as `matchStock`, cut off after the best `limit` motors (1 or more; none left out by default). */
  readonly match: (question: Question, options?: { readonly limit?: number }) => MatchResult;
  /** The nearest of the motors that are ruled out; undefined when none is. */
  readonly nearestMiss: (question: Question) => Miss | undefined;
}

const ready = new WeakMap<readonly StockMotor[], StockIndex>();

/** The index of a stock; the same array is indexed only once, so it must not be changed afterwards. */
export function indexStock(motors: readonly StockMotor[]): StockIndex {
  const known = ready.get(motors);
  if (known) return known;
  const index = build(motors);
  ready.set(motors, index);
  return index;
}

function build(motors: readonly StockMotor[]): StockIndex {
  const aspects = aspectsOf(motors);
  const preferred = inOrderOfWorth(motors);
  const rank = new Uint32Array(motors.length);
  for (const [place, at] of preferred.entries()) rank[at] = place;
  const groups = groupsOf(motors, aspects, preferred);
  const replacers = replacersOf(motors);

  let sale: { on: string; kept: Findings } = { on: "", kept: {} };
  const findings = (question: Question) => {
    if (sale.on !== question.on) sale = { on: question.on, kept: { sale: [] } };
    return findingsFor(aspects, question, sale.kept);
  };
  const stock = { motors, aspects, groups, rank };
  const recordedFor = ({ nameplate: { modelNumbers = [] } }: Question) =>
    new Set(modelNumbers.flatMap((number) => replacers.get(plainNumber(number)) ?? []));
  const match: StockIndex["match"] = (question, { limit = Number.POSITIVE_INFINITY } = {}) => {
    const onRecord = recordedFor(question);
    const chosen = bestFirst(question, bestMotors(stock, question, findings(question), onRecord, limit));
    const best = limit < chosen.length ? chosen.slice(0, limit) : chosen;
    return { verdict: overallVerdict(best), motors: best, ruledOut: [] };
  };
  return {
    motors,
    aspects,
    groups,
    findings,
    match,
    nearestMiss: (question) => nearestMiss(stock, question, findings(question), recordedFor(question)),
  };
}

const noQuestion: Question = { nameplate: {}, site: {}, on: "0000-01-01" };

/**
 * Positions of the motors, the preferred one first. With nothing asked the ranking is what a motor is worth by
 * itself: cheaper to run, in stock, price, stock number.
 */
function inOrderOfWorth(motors: readonly StockMotor[]): readonly number[] {
  const unasked = motors.map((motor): JudgedMotor => ({ motor, verdict: "undecided", findings: [] }));
  const positions = new Map(unasked.map((judged, at) => [judged, at]));
  return bestFirst(noQuestion, unasked).map((judged) => positions.get(judged) ?? 0);
}

/** Old number, plainly written -> positions of the motors recorded to replace it. */
function replacersOf(motors: readonly StockMotor[]): ReadonlyMap<string, readonly number[]> {
  const replacers = new Map<string, number[]>();
  for (const [at, { replaces }] of motors.entries()) {
    for (const number of new Set(replaces.map(plainNumber))) {
      if (number === "") continue;
      const known = replacers.get(number);
      if (known) known.push(at);
      else replacers.set(number, [at]);
    }
  }
  return replacers;
}
