import { frequenciesOf } from "../deduced.ts";
import { findingsOf } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("frequency", ["covered", "region", "covers-some", "other"]);

/** The motor must be made for the frequency of the mains. */
export const frequency: Rule = {
  name: "frequency",
  weight: "supporting",
  source: "NEMA MG 1 12.44 (rated frequency within 5 %); 60 Hz where nothing is stated: the region's mains",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldHz = frequenciesOf(nameplate);
    const newHz = frequenciesOf(label);
    const inferred = oldHz.inferred || newHz.inferred;
    const values = { oldHz: oldHz.value.join("/"), newHz: newHz.value.join("/") };
    const covered = oldHz.value.filter((hz) => newHz.value.includes(hz));
    if (covered.length === 0) return say.rulesOut("other", { values, inferred });
    // Which of the two the house has is not on the label, and no rating could tell.
    if (covered.length < oldHz.value.length) return say.notKnown("covers-some", { values, inferred });
    return say.holds(oldHz.inferred ? "region" : "covered", { values, inferred });
  },
};
