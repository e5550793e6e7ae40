import type { Nameplate, RatingName } from "../../nameplate/vocabulary.ts";
import { ratedHpOf, totalHpOf } from "../deduced.ts";
import { figure, findingsOf, missing, tolerance } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("total-horsepower", [
  "matches",
  "matches-other-hp",
  "up-rated-for-full-rated",
  "full-rated-for-up-rated",
  "above",
  "below",
  "service-factor-unknown",
  "unknown",
  "stock-unknown",
]);

/** Two per cent for the rounding of labels. */
export const smallestTotalHpRatio = 0.98;
/** Above this the motor is bought for more flow, which the impeller must be changed for. */
export const largestTotalHpRatio = 1.1;

/** The ratings still missing to know a label's total horsepower, easiest first. */
function needsFor(nameplate: Nameplate): readonly RatingName[] {
  if (ratedHpOf(nameplate)) return missing(nameplate, ["serviceFactor", "totalHp"]);
  return missing(nameplate, ["hp", "serviceFactor", "totalHp"]);
}

/** Can the motor carry the load: the impeller in the pump asks for what the old motor could give for ever. */
export const totalHorsepower: Rule = {
  name: "total-horsepower",
  weight: "deciding",
  source:
    "Total hp: 10 CFR 431.483 by reference to UL 1004-10; limits 0.98 and 1.10: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldTotal = totalHpOf(nameplate);
    const newTotal = totalHpOf(label);
    if (!newTotal) return say.notKnown("stock-unknown");
    if (!oldTotal) {
      const oldHp = ratedHpOf(nameplate);
      const needs = needsFor(nameplate);
      if (!oldHp) return say.notKnown("unknown", { needs });
      return say.notKnown("service-factor-unknown", { needs, values: { oldHp: figure(oldHp.value) } });
    }

    const ratio = newTotal.value / oldTotal.value;
    const inferred = oldTotal.inferred || newTotal.inferred;
    const values = { oldTotalHp: figure(oldTotal.value), newTotalHp: figure(newTotal.value) };
    if (ratio < smallestTotalHpRatio - tolerance) return say.rulesOut("below", { values, inferred });
    if (ratio > largestTotalHpRatio + tolerance) {
      const work = [
        { key: "impeller-and-diffuser", values },
        { key: "flow-limits", values },
      ];
      return say.needsWork("above", { values, inferred, work });
    }
    if (nameplate.hp === undefined || label.hp === undefined || nameplate.hp === label.hp) {
      return say.holds("matches", { values, inferred });
    }
    return say.holds(otherHp(nameplate, label), {
      values: { ...values, oldHp: figure(nameplate.hp), newHp: figure(label.hp) },
      inferred,
    });
  },
};

/** Up to this service factor a motor is called up-rated, above it full-rated (common practice, no source). */
const largestUpRatedServiceFactor = 1.27;

/** Why a label with another hp carries the same load: 1.5 hp up-rated (x 1.10) is 1.0 hp full-rated (x 1.65). */
function otherHp({ serviceFactor: old }: Nameplate, { serviceFactor: fresh }: Nameplate) {
  if (old === undefined || fresh === undefined) return "matches-other-hp";
  const upRated = fresh <= largestUpRatedServiceFactor;
  if (upRated === old <= largestUpRatedServiceFactor) return "matches-other-hp";
  return upRated ? "up-rated-for-full-rated" : "full-rated-for-up-rated";
}
