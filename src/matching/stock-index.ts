import { totalHpOf } from "./deduced.ts";
import { overallVerdict, verdictOf } from "./match.ts";
import { bestFirst } from "./rank.ts";
import { rules } from "./rules/index.ts";
import { plainNumber } from "./rules/record.ts";
import {
  type Aspects,
  aspectsOf,
  type FindingOf,
  type Findings,
  findingsFor,
} from "./stock-index/aspects.ts";
import { type Cell, type Group, groupingRules, groupsOf } from "./stock-index/cells.ts";
import { mergeInOrder } from "./stock-index/merge.ts";
import type { JudgedMotor, MatchResult, MotorVerdict, Question, StockMotor } from "./types.ts";

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
  /** The same answer as `matchStock`, cut off after the best `limit` motors (none by default). */
  readonly match: (question: Question, options?: { readonly limit?: number }) => MatchResult;
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

const noQuestion: Question = { nameplate: {}, site: {}, on: "0000-01-01" };

function build(motors: readonly StockMotor[]): StockIndex {
  const aspects = aspectsOf(motors);
  // With nothing asked the ranking is what a motor is worth by itself: cheaper to run, in stock, price, number.
  const unasked = motors.map((motor): JudgedMotor => ({ motor, verdict: "undecided", findings: [] }));
  const positions = new Map(unasked.map((judged, at) => [judged, at]));
  const preferred = bestFirst(noQuestion, unasked).map((judged) => positions.get(judged) ?? 0);
  const rank = new Uint32Array(motors.length);
  for (const [place, at] of preferred.entries()) rank[at] = place;
  const groups = groupsOf(motors, aspects, preferred);
  const replacers = replacersOf(motors);

  let sale: { on: string; kept: Findings } = { on: "", kept: {} };
  const findings = (question: Question) => {
    if (sale.on !== question.on) sale = { on: question.on, kept: { sale: [] } };
    return findingsFor(aspects, question, sale.kept);
  };
  const match: StockIndex["match"] = (question, { limit = Number.POSITIVE_INFINITY } = {}) => {
    const find = findings(question);
    const judge = (at: number) => judgeAt(motors[at], at, question, find, aspects);
    const levels = cellsByVerdict(groups, find);
    const onRecord = new Set(
      (question.nameplate.modelNumbers ?? []).flatMap((typed) => replacers.get(plainNumber(typed)) ?? []),
    );
    const recorded = [...onRecord].flatMap((at) => judge(at) ?? []);

    const chosen: JudgedMotor[] = [];
    // Motors of a faultless cell that their current or date puts down to work.
    const demoted: Shelf[] = [];
    for (const verdict of ["drop-in", "undecided", "fits-with-work"] as const) {
      chosen.push(...recorded.filter((judged) => judged.verdict === verdict));
      const shelves = levels[verdict].map(
        (cell): Shelf => ({ ...cell, closeness: closeness(question, cell.totalHp) }),
      );
      if (verdict === "fits-with-work") shelves.push(...demoted);
      for (const run of runsByCloseness(shelves)) {
        if (chosen.length >= limit) break;
        const walk = mergeInOrder(
          run.map((shelf) => shelf.motors),
          (at) => rank[at] ?? 0,
        );
        for (const at of walk) {
          if (chosen.length >= limit) break;
          if (onRecord.has(at)) continue;
          const found = quickVerdict(verdict, at, find, aspects);
          if (found === "no-fit") continue;
          if (found !== verdict) {
            demoted.push({ motors: [at], closeness: run[0]?.closeness ?? 0 });
            continue;
          }
          const judged = judge(at);
          if (judged) chosen.push(judged);
        }
      }
      if (chosen.length >= limit) break;
    }
    const best = bestFirst(question, chosen);
    return {
      verdict: overallVerdict(best),
      motors: limit < best.length ? best.slice(0, limit) : best,
      ruledOut: [],
    };
  };
  return { motors, aspects, groups, findings, match };
}

/** Motors that stand together in the ranking but for what they are worth by themselves. */
interface Shelf {
  readonly motors: readonly number[];
  readonly closeness: number;
}

/** Place in the ranking by total horsepower: nearest from above, then nearest from below, then not known. */
function closeness({ nameplate }: Question, newTotalHp: number | undefined): number {
  const oldTotalHp = totalHpOf(nameplate)?.value;
  if (oldTotalHp === undefined || newTotalHp === undefined) return Number.POSITIVE_INFINITY;
  const ratio = Math.round((newTotalHp / oldTotalHp) * 1e6) / 1e6;
  return ratio >= 1 ? ratio - 1 : 1e6 + (1 - ratio);
}

function runsByCloseness(shelves: readonly Shelf[]): readonly (readonly Shelf[])[] {
  const runs = new Map<number, Shelf[]>();
  for (const shelf of shelves) {
    const run = runs.get(shelf.closeness);
    if (run) run.push(shelf);
    else runs.set(shelf.closeness, [shelf]);
  }
  return [...runs].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, run]) => run);
}

type Fitting = Exclude<MotorVerdict, "no-fit">;

/** The cells that may fit, by the verdict that horsepower and the grouping rules give them. */
function cellsByVerdict(
  groups: readonly Group[],
  find: FindingOf,
): Readonly<Record<Fitting, readonly Cell[]>> {
  const levels: Record<Fitting, Cell[]> = { "drop-in": [], undecided: [], "fits-with-work": [] };
  for (const group of groups) {
    const found = groupingRules.map((rule, at) => find(rule, group.kinds[at] ?? 0));
    const byGroup = verdictOf(found);
    if (byGroup === "no-fit") continue;
    for (const cell of group.cells) {
      const { outcome } = find("total-horsepower", cell.powerKind);
      if (outcome === "rules-out") continue;
      if (outcome === "not-known") levels.undecided.push(cell);
      else if (outcome === "needs-work" && byGroup === "drop-in") levels["fits-with-work"].push(cell);
      else levels[byGroup].push(cell);
    }
  }
  return levels;
}

/** What date of manufacture and current make of the verdict of the cell. */
function quickVerdict(verdict: Fitting, at: number, find: FindingOf, aspects: Aspects): MotorVerdict {
  const sale = find("sale", aspects.sale.kindOf[at] ?? 0).outcome;
  if (sale === "rules-out") return "no-fit";
  if (verdict !== "drop-in") return verdict;
  if (sale === "needs-work") return "fits-with-work";
  const current = find("current", aspects.current.kindOf[at] ?? 0).outcome;
  return current === "needs-work" ? "fits-with-work" : "drop-in";
}

/** The full judgement of one motor, in the order of the rules. */
function judgeAt(
  motor: StockMotor | undefined,
  at: number,
  question: Question,
  find: FindingOf,
  aspects: Aspects,
): JudgedMotor | undefined {
  if (!motor) return undefined;
  const findings = rules.map((rule) =>
    rule.name === "record"
      ? rule.judge(question, motor)
      : find(rule.name, aspects[rule.name].kindOf[at] ?? 0),
  );
  return { motor, verdict: verdictOf(findings), findings };
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
