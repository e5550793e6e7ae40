import type { RatingName } from "../../nameplate/vocabulary.ts";
import { polesOf, type SpeedKind, speedKindOf } from "../deduced.ts";
import { findingsOf, missing } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("speed", [
  "same",
  "to-two",
  "to-variable",
  "to-single",
  "variable-to-two",
  "other-poles",
  "unknown",
  "odd",
  "stock-unknown",
]);

const names: Readonly<Record<SpeedKind, string>> = {
  single: "single-speed",
  two: "two-speed",
  variable: "variable-speed",
};

/** Same top speed by pole count, and a kind of speed that the controls can work. */
export const speed: Rule = {
  name: "speed",
  weight: "deciding",
  source: "Synchronous speed 120 x Hz / poles (definition); change of kind: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    const oldPoles = polesOf(nameplate);
    const newPoles = polesOf(label);
    const newKind = speedKindOf(label);
    if (newPoles === undefined) return say.notKnown("stock-unknown");
    if (oldPoles === undefined) {
      const odd = nameplate.rpm !== undefined;
      const needs: readonly RatingName[] = odd ? ["rpm"] : missing(nameplate, ["rpm", "speedKind"]);
      return say.notKnown(odd ? "odd" : "unknown", { needs });
    }
    if (oldPoles !== newPoles) return say.rulesOut("other-poles", { values: { oldPoles, newPoles } });

    if (newKind === undefined) return say.notKnown("stock-unknown");
    const oldKind = speedKindOf(nameplate);
    if (oldKind === undefined) return say.notKnown("unknown", { needs: ["speedKind"] });
    const values = { oldKind: names[oldKind], newKind: names[newKind] };
    if (oldKind === newKind) return say.holds("same", { values });
    return say.needsWork(changeTo(newKind, oldKind), {
      values,
      work: [{ key: "control-and-wiring", values }],
    });
  },
};

function changeTo(newKind: SpeedKind, oldKind: SpeedKind) {
  if (newKind === "single") return "to-single";
  if (newKind === "variable") return "to-variable";
  return oldKind === "variable" ? "variable-to-two" : "to-two";
}
