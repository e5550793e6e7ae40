import { findingsOf } from "../finding.ts";
import type { Question, Rule, StockMotor } from "../types.ts";

const say = findingsOf("record", ["listed", "contradicted", "none"]);

/**
 * Does a recorded cross-reference link the old number to this motor. The ratings have the last word: where one
 * of the deciding `ratingRules` rules the motor out, the record is contradicted and goes to the desk.
 */
export function recordRule(ratingRules: readonly Rule[]): Rule {
  const deciding = ratingRules.filter(({ weight }) => weight === "deciding");
  return {
    name: "record",
    weight: "supporting",
    source: "The shop's own cross-references",
    reasons: say.reasons,
    judge: (question, motor) => {
      const oldNumber = recordedNumber(question, motor);
      if (oldNumber === undefined) return say.notKnown("none");
      const contradicted = deciding.some(({ judge }) => judge(question, motor).outcome === "rules-out");
      return contradicted
        ? say.rulesOut("contradicted", { values: { oldNumber } })
        : say.holds("listed", { values: { oldNumber } });
    },
  };
}

function recordedNumber({ nameplate }: Question, { replaces }: StockMotor): string | undefined {
  if (!nameplate.modelNumbers || replaces.length === 0) return undefined;
  const listed = new Set(replaces.map(plainNumber));
  return nameplate.modelNumbers.find((typed) => plainNumber(typed) !== "" && listed.has(plainNumber(typed)));
}

/** A number without the spaces, hyphens and letter case that people and catalogues vary. */
export function plainNumber(typed: string): string {
  return typed.replaceAll(/[\s-]/g, "").toUpperCase();
}
