import { findingsOf } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("duty", ["continuous", "short-time", "stock-unknown"]);

/** A pool pump runs for hours on end, whatever the old label said. */
export const duty: Rule = {
  name: "duty",
  weight: "supporting",
  source: "NEC 430.7(A) (time rating on the label); continuous for pool pumps: common practice, no source",
  reasons: say.reasons,
  judge: (_, { label }) => {
    if (label.duty === undefined) return say.notKnown("stock-unknown");
    if (label.duty === "continuous") return say.holds("continuous");
    return say.rulesOut("short-time", { values: { minutes: label.duty } });
  },
};
