import type { RatingName } from "../../nameplate/vocabulary.ts";
import { totalHpOf } from "../deduced.ts";
import type { FindingOf } from "../stock-index/aspects.ts";
import { type Cell, groupingRules } from "../stock-index/cells.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Finding, Question, RuleName } from "../types.ts";
import { type Part, parts } from "./ladder.ts";
import { partKindsOf, rulesOf } from "./part-kinds.ts";

/** Stocked motors that nothing rules out yet and that are of one kind in every part. */
export interface Survivor extends Readonly<Record<Part, number>> {
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
  const kinds = partKindsOf(index);

  for (const group of index.groups) {
    const found = groupingRules.map((rule, at) => find(rule, group.kinds[at] ?? 0));
    if (found.some(({ outcome }) => outcome === "rules-out")) continue;
    const needsWork = found.some(({ rule, outcome }) => outcome === "needs-work" && !isOfPart(rule));
    const notAlike = found.some(({ outcome }) => outcome === "needs-work");
    const mount = kinds.mount.ofGroup[group.number] ?? 0;
    const electrics = kinds.electrics.ofGroup[group.number] ?? 0;
    const speed = kinds.speed.ofGroup[group.number] ?? 0;

    let alive = false;
    for (const cell of group.cells) {
      const finding = find("total-horsepower", cell.powerKind);
      if (finding.outcome === "rules-out") continue;
      const work = workIn(cell);
      if (work === 0) continue;
      alive = true;
      note("power", finding);
      const power = cell.powerKind;
      const alike = notAlike || finding.outcome === "needs-work" ? 0 : cell.motors.length;
      if (work & someClean) all.push({ mount, power, electrics, speed, needsWork, alike });
      if (work & someWork) {
        const rest = work & someClean ? 0 : alike;
        all.push({ mount, power, electrics, speed, needsWork: true, alike: rest });
      }
    }
    if (!alive) continue;
    for (const finding of found) {
      const part = partOf.get(finding.rule);
      if (part) note(part, finding);
    }
  }
  return { all, needs };
}

const partOf: ReadonlyMap<RuleName, Part> = new Map(
  parts.flatMap((part) => rulesOf[part].map((rule) => [rule, part] as const)),
);
const isOfPart = (rule: RuleName) => partOf.has(rule);

const someClean = 1;
const someWork = 2;

const datesByStock = new WeakMap<StockIndex, { readonly on: string; readonly work: Uint8Array }>();

/**
 * What current and date of manufacture leave of a cell: some motors without a fault, some with work, none (0).
 * Dates are looked at once a day; currents only where amps, supply and horsepower are known.
 */
function workByCell(
  index: StockIndex,
  { nameplate, site, on }: Question,
  find: FindingOf,
): (cell: Cell) => number {
  const { sale, current } = index.aspects;
  const amps = nameplate.volts && (nameplate.amps ?? nameplate.serviceFactorAmps);
  // Before the horsepower is known tens of thousands of motors are left, and no current settles anything yet.
  const comparesAmps = amps && site.supplyVolts !== undefined && totalHpOf(nameplate) !== undefined;
  const look = ({ motors }: Cell): number => {
    let work = 0;
    for (const at of motors) {
      const date = find("sale", sale.kindOf[at] ?? 0).outcome;
      if (date === "rules-out") continue;
      const load = comparesAmps ? find("current", current.kindOf[at] ?? 0).outcome : "holds";
      work |= date === "needs-work" || load === "needs-work" ? someWork : someClean;
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
