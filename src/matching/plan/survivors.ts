import type { RatingName } from "../../nameplate/vocabulary.ts";
import type { FindingOf } from "../stock-index/aspects.ts";
import { type Cell, groupingRules } from "../stock-index/cells.ts";
import type { RatedRule } from "../stock-index/rule-inputs.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Finding, Question } from "../types.ts";
import { type Part, parts } from "./ladder.ts";

/** The deciding rules that look at each part. */
export const rulesOf = {
  mount: ["mount", "shaft"],
  power: ["total-horsepower"],
  electrics: ["supply", "phase"],
  speed: ["speed"],
} as const satisfies Readonly<Record<Part, readonly RatedRule[]>>;

/** Stocked motors that nothing rules out yet and that look alike to every rule which is still open. */
export interface Survivor {
  /** For each part, the kinds of its rules in the order of `rulesOf`. */
  readonly kinds: Readonly<Record<Part, readonly number[]>>;
  /** Whether a rule outside the parts asks for work (another current, heat, the date of manufacture). */
  readonly needsWork: boolean;
  /** How many stocked motors of this kind would be a drop-in as far as known: what old motors look like. */
  readonly alike: number;
}

export interface Survivors {
  readonly all: readonly Survivor[];
  /** For each part, the ratings any of which its open rules wait for. */
  readonly needs: Readonly<Record<Part, ReadonlySet<RatingName>>>;
}

/** The motors that may still fit, without touching each of them. */
export function survivorsOf(index: StockIndex, question: Question, find: FindingOf): Survivors {
  const all: Survivor[] = [];
  const needs: Record<Part, Set<RatingName>> = {
    mount: new Set(),
    power: new Set(),
    electrics: new Set(),
    speed: new Set(),
  };
  const note = (part: Part, { outcome, needs: names }: Finding) => {
    if (outcome === "not-known") for (const name of names) needs[part].add(name);
  };
  const workIn = workByCell(index, question, find);

  for (const group of index.groups) {
    const found = groupingRules.map((rule, at) => find(rule, group.kinds[at] ?? 0));
    if (found.some(({ outcome }) => outcome === "rules-out")) continue;
    const needsWork = found.some(({ rule, outcome }) => outcome === "needs-work" && !isOfPart(rule));
    const notAlike = found.some(({ outcome }) => outcome === "needs-work");
    const kindOf = (rule: (typeof groupingRules)[number]) => group.kinds[groupingRules.indexOf(rule)] ?? 0;
    const mount = [kindOf("mount"), kindOf("shaft")];
    const electrics = [kindOf("supply"), kindOf("phase")];
    const speed = [kindOf("speed")];

    let alive = false;
    for (const cell of group.cells) {
      const power = find("total-horsepower", cell.powerKind);
      if (power.outcome === "rules-out") continue;
      const work = workIn(cell);
      if (work === 0) continue;
      alive = true;
      note("power", power);
      const kinds = { mount, power: [cell.powerKind], electrics, speed };
      const alike = notAlike || power.outcome === "needs-work" ? 0 : cell.motors.length;
      if (work & someClean) all.push({ kinds, needsWork, alike });
      if (work & someWork) all.push({ kinds, needsWork: true, alike: work & someClean ? 0 : alike });
    }
    if (!alive) continue;
    for (const part of ["mount", "electrics", "speed"] as const) {
      for (const rule of rulesOf[part]) note(part, find(rule, kindOf(rule)));
    }
  }
  return { all, needs };
}

const partRules: ReadonlySet<string> = new Set(parts.flatMap((part) => rulesOf[part]));
const isOfPart = (rule: string) => partRules.has(rule);

const someClean = 1;
const someWork = 2;

const datesByStock = new WeakMap<StockIndex, { readonly on: string; readonly work: Uint8Array }>();

/**
 * What current and date of manufacture leave of a cell: some motors without a fault, some with work, none (0).
 * Dates are looked at once a day; currents only where both amps and supply are known.
 */
function workByCell(
  index: StockIndex,
  { nameplate, site, on }: Question,
  find: FindingOf,
): (cell: Cell) => number {
  const { sale, current } = index.aspects;
  const comparesAmps =
    site.supplyVolts !== undefined && (nameplate.amps ?? nameplate.serviceFactorAmps) !== undefined;
  const look = ({ motors }: Cell): number => {
    let work = 0;
    for (const at of motors) {
      const date = find("sale", sale.kindOf[at] ?? 0).outcome;
      if (date === "rules-out") continue;
      const amps = comparesAmps ? find("current", current.kindOf[at] ?? 0).outcome : "holds";
      work |= date === "needs-work" || amps === "needs-work" ? someWork : someClean;
      if (work === (someClean | someWork)) break;
    }
    return work;
  };
  if (comparesAmps) return look;

  const notLooked = 255;
  let dates = datesByStock.get(index);
  if (dates?.on !== on) {
    const cells = index.groups.reduce((count, group) => count + group.cells.length, 0);
    dates = { on, work: new Uint8Array(cells).fill(notLooked) };
    datesByStock.set(index, dates);
  }
  const { work } = dates;
  return (cell) => {
    if (work[cell.number] === notLooked) work[cell.number] = look(cell);
    return work[cell.number] ?? 0;
  };
}
