import { totalHpOf } from "../deduced.ts";
import { verdictOf } from "../match.ts";
import { rules } from "../rules/index.ts";
import type { JudgedMotor, MotorVerdict, Question, StockMotor } from "../types.ts";
import type { Aspects, FindingOf } from "./aspects.ts";
import { type Cell, type Group, groupingRules } from "./cells.ts";
import { mergeInOrder } from "./merge.ts";

/** The stock in groups and cells, and the order of its motors by what they are worth by themselves. */
export interface SortedStock {
  readonly motors: readonly StockMotor[];
  readonly aspects: Aspects;
  readonly groups: readonly Group[];
  /** Position in the stock -> place in that order. */
  readonly rank: Uint32Array;
}

type Fitting = Exclude<MotorVerdict, "no-fit">;

/**
 * The motors that fit, best first but for those in `onRecord` (positions), which stand at the head of their
 * verdict. Stops after `limit` motors, at the earliest with all on record of the verdict it is in.
 */
export function bestMotors(
  stock: SortedStock,
  question: Question,
  find: FindingOf,
  onRecord: ReadonlySet<number>,
  limit: number,
): readonly JudgedMotor[] {
  const { aspects, rank } = stock;
  const levels = cellsByVerdict(stock.groups, find);
  const recorded = [...onRecord].flatMap((at) => judgeAt(stock, at, question, find));
  const chosen: JudgedMotor[] = [];
  // Motors of a faultless cell that their current or date puts down to work.
  const demoted: Shelf[] = [];
  for (const verdict of ["drop-in", "undecided", "fits-with-work"] as const) {
    chosen.push(...recorded.filter((judged) => judged.verdict === verdict));
    const shelves = levels[verdict].map(({ motors, totalHp }) => ({
      motors,
      closeness: closeness(question, totalHp),
    }));
    for (const at of inOrder(verdict === "fits-with-work" ? [...shelves, ...demoted] : shelves, rank)) {
      if (chosen.length >= limit) return chosen;
      if (onRecord.has(at)) continue;
      const found = finalVerdict(verdict, at, find, aspects);
      if (found === verdict) chosen.push(...judgeAt(stock, at, question, find));
      else if (found === "fits-with-work") {
        demoted.push({ motors: [at], closeness: closeness(question, totalHpAt(stock, at)) });
      }
    }
    if (chosen.length >= limit) return chosen;
  }
  return chosen;
}

/** The cells that may fit, by the verdict that horsepower and the grouping rules give them. */
function cellsByVerdict(
  groups: readonly Group[],
  find: FindingOf,
): Readonly<Record<Fitting, readonly Cell[]>> {
  const levels: Record<Fitting, Cell[]> = { "drop-in": [], undecided: [], "fits-with-work": [] };
  for (const group of groups) {
    const byGroup = verdictOf(groupingRules.map((rule, at) => find(rule, group.kinds[at] ?? 0)));
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
function finalVerdict(
  verdict: Fitting,
  at: number,
  find: FindingOf,
  { sale, current }: Aspects,
): MotorVerdict {
  const date = find("sale", sale.kindOf[at] ?? 0).outcome;
  if (date === "rules-out") return "no-fit";
  if (verdict !== "drop-in") return verdict;
  if (date === "needs-work") return "fits-with-work";
  const load = find("current", current.kindOf[at] ?? 0).outcome;
  return load === "needs-work" ? "fits-with-work" : "drop-in";
}

/** The full judgement of one motor, in the order of the rules. */
export function judgeAt(
  { motors, aspects }: SortedStock,
  at: number,
  question: Question,
  find: FindingOf,
): readonly JudgedMotor[] {
  const motor = motors[at];
  if (!motor) return [];
  const findings = rules.map((rule) =>
    rule.name === "record"
      ? rule.judge(question, motor)
      : find(rule.name, aspects[rule.name].kindOf[at] ?? 0),
  );
  return [{ motor, verdict: verdictOf(findings), findings }];
}

/** Motors that differ in the ranking only by what they are worth by themselves, in that order. */
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

function totalHpAt({ motors }: SortedStock, at: number): number | undefined {
  const label = motors[at]?.label;
  return label && totalHpOf(label)?.value;
}

/** All motors of the shelves: closest shelf first, and equally close ones as if they were one. */
function* inOrder(shelves: readonly Shelf[], rank: Uint32Array): Generator<number> {
  const runs = new Map<number, (readonly number[])[]>();
  for (const { motors, closeness: key } of shelves) {
    const run = runs.get(key);
    if (run) run.push(motors);
    else runs.set(key, [motors]);
  }
  const byCloseness = [...runs].sort(([a], [b]) => (a < b ? -1 : 1));
  for (const [, run] of byCloseness) yield* mergeInOrder(run, (at) => rank[at] ?? 0);
}
