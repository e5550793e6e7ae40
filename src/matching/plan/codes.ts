import type { RatedRule } from "../stock-index/rule-inputs.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Outcome, Question } from "../types.ts";
import type { Part } from "./ladder.ts";
import { rulesOf } from "./survivors.ts";

/** Outcomes as bits, so that those of several rules can be put together; 0 is `holds`. */
export const rulesOut = 1;
export const notKnown = 2;
export const needsWork = 4;

const codes: Readonly<Record<Outcome, number>> = {
  holds: 0,
  "rules-out": rulesOut,
  "not-known": notKnown,
  "needs-work": needsWork,
};

const worked = new WeakMap<StockIndex, Map<string, Uint8Array>>();
/** Label values repeat, so what was worked out once is kept; beyond this many it is thrown away. */
const keptAtMost = 20_000;

/** What one rule says of each of its kinds of motor, as codes. */
function codesOf(index: StockIndex, rule: RatedRule, question: Question, key: string): Uint8Array {
  let kept = worked.get(index);
  if (!kept || kept.size > keptAtMost) {
    kept = new Map();
    worked.set(index, kept);
  }
  const known = kept.get(rule + key);
  if (known) return known;
  const {
    rule: { judge },
    samples,
  } = index.aspects[rule];
  const found = Uint8Array.from(samples, (motor) => codes[judge(question, motor).outcome]);
  kept.set(rule + key, found);
  return found;
}

/** Everything of a question that the rules of a part look at. */
function keyOf(part: Part, { nameplate, site }: Question): string {
  switch (part) {
    case "mount":
      return `${nameplate.frame}|${nameplate.flange}|${nameplate.shaft}`;
    case "power":
      return `${nameplate.hp}|${nameplate.serviceFactor}|${nameplate.totalHp}|${nameplate.kw}`;
    case "electrics":
      return `${nameplate.volts}|${nameplate.phase}|${site.supplyVolts}|${site.breakerPoles}`;
    case "speed":
      return `${nameplate.rpm}|${nameplate.speedKind}|${nameplate.hz}`;
  }
}

/** What the rules of a part together say of motors of the given kinds: one code, the strongest finding. */
export function partCodes(
  index: StockIndex,
  part: Part,
  question: Question,
  kinds: readonly (readonly number[])[],
): Uint8Array {
  const key = keyOf(part, question);
  const found = rulesOf[part].map((rule) => codesOf(index, rule, question, key));
  return Uint8Array.from(kinds, (ofRules) => {
    let together = 0;
    for (const [at, kind] of ofRules.entries()) together |= found[at]?.[kind] ?? 0;
    if (together & rulesOut) return rulesOut;
    return together & notKnown ? notKnown : together;
  });
}
