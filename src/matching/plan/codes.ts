import type { StockIndex } from "../stock-index.ts";
import type { Outcome, Question } from "../types.ts";
import type { Part } from "./ladder.ts";
import { partKindsOf, rulesOf } from "./part-kinds.ts";

/** Outcomes as bits, so that those of several rules can be put together; 0 is `holds`. */
export const outcomeBits: Readonly<Record<Outcome, number>> = {
  holds: 0,
  "rules-out": 1,
  "not-known": 2,
  "needs-work": 4,
};

const worked = new WeakMap<StockIndex, Map<string, Uint8Array>>();
/** Label values repeat, so what was worked out once is kept; beyond this many it is thrown away. */
const keptAtMost = 20_000;

/** What the rules of a part together say of each kind of motor: one outcome as bits, the strongest. */
export function partCodes(index: StockIndex, part: Part, question: Question): Uint8Array {
  let kept = worked.get(index);
  if (!kept || kept.size > keptAtMost) {
    kept = new Map();
    worked.set(index, kept);
  }
  const key = keyOf(part, question);
  const known = kept.get(key);
  if (known) return known;
  const found = judgeKinds(index, part, question);
  kept.set(key, found);
  return found;
}

function judgeKinds(index: StockIndex, part: Part, question: Question): Uint8Array {
  const byRule = rulesOf[part].map((name) => {
    const { rule, samples } = index.aspects[name];
    return samples.map((motor) => outcomeBits[rule.judge(question, motor).outcome]);
  });
  const { "rules-out": out, "not-known": unknown } = outcomeBits;
  return Uint8Array.from(partKindsOf(index)[part].kinds, (ofRules) => {
    const together = ofRules.reduce((bits, kind, at) => bits | (byRule[at]?.[kind] ?? 0), 0);
    if (together & out) return out;
    return together & unknown ? unknown : together;
  });
}

/** Everything of a question that the rules of a part look at. */
function keyOf(part: Part, { nameplate, site }: Question): string {
  switch (part) {
    case "mount":
      return `m|${nameplate.frame}|${nameplate.flange}|${nameplate.shaft}`;
    case "power":
      return `p|${nameplate.hp}|${nameplate.serviceFactor}|${nameplate.totalHp}|${nameplate.kw}`;
    case "electrics":
      return `e|${nameplate.volts}|${nameplate.phase}|${site.supplyVolts}|${site.breakerPoles}`;
    case "speed":
      return `s|${nameplate.rpm}|${nameplate.speedKind}|${nameplate.hz}`;
  }
}
