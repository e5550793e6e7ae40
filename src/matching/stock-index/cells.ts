import { totalHpOf } from "../deduced.ts";
import type { StockMotor } from "../types.ts";
import type { Aspects } from "./aspects.ts";
import type { RatedRule } from "./rule-inputs.ts";

/** Rules by which the stock is put into groups: few kinds each, and alike for every horsepower. */
export const groupingRules = [
  "mount",
  "shaft",
  "supply",
  "phase",
  "speed",
  "frequency",
  "duty",
  "ambient",
] as const satisfies readonly RatedRule[];

/** Motors that every grouping rule sees alike, split by horsepower. */
export interface Group {
  readonly number: number;
  /** Kind of its motors for each of `groupingRules`, in that order. */
  readonly kinds: readonly number[];
  readonly cells: readonly Cell[];
}

/** Motors of one group with one horsepower: all that differs is current, date, price and number. */
export interface Cell {
  readonly number: number;
  readonly group: number;
  /** Kind for the total-horsepower rule. */
  readonly powerKind: number;
  /** Total hp; undefined when the shop does not know it. */
  readonly totalHp: number | undefined;
  /** Positions in the stock, the preferred motor first. */
  readonly motors: readonly number[];
}

/** Puts the stock into groups and cells. `preferred` holds every position, the preferred motor first. */
export function groupsOf(
  motors: readonly StockMotor[],
  aspects: Aspects,
  preferred: readonly number[],
): readonly Group[] {
  const groups = new Map<string, { kinds: readonly number[]; cells: Map<number, number[]> }>();
  for (const position of preferred) {
    const kinds = groupingRules.map((rule) => aspects[rule].kindOf[position] ?? 0);
    const key = kinds.join(",");
    let group = groups.get(key);
    if (!group) {
      group = { kinds, cells: new Map() };
      groups.set(key, group);
    }
    const powerKind = aspects["total-horsepower"].kindOf[position] ?? 0;
    const cell = group.cells.get(powerKind);
    if (cell) cell.push(position);
    else group.cells.set(powerKind, [position]);
  }

  let cellNumber = 0;
  return [...groups.values()].map(({ kinds, cells }, number) => ({
    number,
    kinds,
    cells: [...cells].map(([powerKind, positions]) => {
      const label = motors[positions[0] ?? 0]?.label;
      const totalHp = label === undefined ? undefined : totalHpOf(label)?.value;
      return { number: cellNumber++, group: number, powerKind, totalHp, motors: positions };
    }),
  }));
}
