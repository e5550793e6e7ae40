import { shaftOf } from "../deduced.ts";
import { findingsOf, missing } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("shaft", [
  "same",
  "threaded-for-keyed",
  "keyed-for-threaded",
  "unknown",
  "stock-unknown",
]);

/** Can the motor carry the impeller: a screw-on impeller needs a thread, a keyed one a keyway. */
export const shaft: Rule = {
  name: "shaft",
  weight: "deciding",
  source: "NEMA MG 1 Part 4 (C) and Part 18 (J); threaded shaft of Y frames: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldShaft = shaftOf(nameplate);
    const newShaft = shaftOf(label);
    if (!newShaft) return say.notKnown("stock-unknown");
    if (!oldShaft) return say.notKnown("unknown", { needs: missing(nameplate, ["frame", "shaft"]) });
    const inferred = oldShaft.inferred || newShaft.inferred;
    if (oldShaft.value === newShaft.value) {
      return say.holds("same", { values: { shaft: oldShaft.value }, inferred });
    }
    const found = newShaft.value === "threaded" ? "threaded-for-keyed" : "keyed-for-threaded";
    return say.rulesOut(found, { inferred });
  },
};
