import { groupingRules } from "../stock-index/cells.ts";
import type { RatedRule } from "../stock-index/rule-inputs.ts";
import type { StockIndex } from "../stock-index.ts";
import { type Part, parts } from "./ladder.ts";

/** The deciding rules that look at each part. */
export const rulesOf: Readonly<Record<Part, readonly RatedRule[]>> = {
  mount: ["mount", "shaft"],
  power: ["total-horsepower"],
  electrics: ["supply", "phase"],
  speed: ["speed"],
};

/** The stock as the rules of one part together see it. */
export interface PartKinds {
  /** For each kind of the part, the kinds of its rules in the order of `rulesOf`. */
  readonly kinds: readonly (readonly number[])[];
  /** Group number -> kind; for power, where a group has many, the cell's own number counts instead. */
  readonly ofGroup: readonly number[];
}

const ready = new WeakMap<StockIndex, Readonly<Record<Part, PartKinds>>>();

/** The kinds of every part, worked out once for a stock. */
export function partKindsOf(index: StockIndex): Readonly<Record<Part, PartKinds>> {
  const known = ready.get(index);
  if (known) return known;
  const found = Object.fromEntries(parts.map((part) => [part, kindsOf(index, part)])) as Record<
    Part,
    PartKinds
  >;
  ready.set(index, found);
  return found;
}

function kindsOf({ groups, aspects }: StockIndex, part: Part): PartKinds {
  if (part === "power") {
    return { kinds: aspects["total-horsepower"].samples.map((_, kind) => [kind]), ofGroup: [] };
  }
  const places = rulesOf[part].map((rule) => (groupingRules as readonly RatedRule[]).indexOf(rule));
  const numbers = new Map<string, number>();
  const kinds: (readonly number[])[] = [];
  const ofGroup = groups.map((group) => {
    const ofRules = places.map((place) => group.kinds[place] ?? 0);
    const key = ofRules.join();
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, kinds.length);
    return kinds.push(ofRules) - 1;
  });
  return { kinds, ofGroup };
}
