import { figure, findingsOf, tolerance } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("ambient", ["not-below", "below", "unknown", "stock-unknown"]);

/** Does the motor stand the heat that the old one was made for. */
export const ambient: Rule = {
  name: "ambient",
  weight: "supporting",
  source: "NEMA MG 1 12.42/12.43 (rise and ambient); 50 C usual on pool motors: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate }, { label }) => {
    if (label.ambientC === undefined) return say.notKnown("stock-unknown");
    if (nameplate.ambientC === undefined) return say.notKnown("unknown", { needs: ["ambientC"] });
    const values = { oldAmbientC: figure(nameplate.ambientC), newAmbientC: figure(label.ambientC) };
    if (label.ambientC >= nameplate.ambientC - tolerance) return say.holds("not-below", { values });
    return say.needsWork("below", { values, work: [{ key: "cooling", values }] });
  },
};
