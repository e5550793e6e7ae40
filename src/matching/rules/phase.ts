import { phaseOf } from "../deduced.ts";
import { findingsOf, missing } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("phase", [
  "same",
  "proved-single",
  "three-for-single",
  "single-for-three",
  "unknown",
  "stock-unknown",
]);

/** Same number of phases; a house seldom has three, and a three-phase motor does not run on one. */
export const phase: Rule = {
  name: "phase",
  weight: "deciding",
  source: "NEMA MG 1 10.30 (phases on the label); 127 V or less is single-phase: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldPhase = phaseOf(nameplate);
    const newPhase = phaseOf(label);
    if (newPhase === undefined) return say.notKnown("stock-unknown");
    if (oldPhase === undefined)
      return say.notKnown("unknown", { needs: missing(nameplate, ["phase", "volts"]) });
    if (oldPhase !== newPhase) return say.rulesOut(newPhase === 3 ? "three-for-single" : "single-for-three");
    return nameplate.phase === undefined
      ? say.holds("proved-single")
      : say.holds("same", { values: { phase: oldPhase === 1 ? "single" : "three" } });
  },
};
