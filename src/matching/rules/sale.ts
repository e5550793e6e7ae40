import { extraSmallMinEfficiencyPct, judgeSale } from "../../engineering/sale-rule.ts";
import { phaseOf, speedKindOf, totalHpOf } from "../deduced.ts";
import { findingsOf } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("sale", [
  "no-standard",
  "meets",
  "made-before",
  "not-yet-in-force",
  "date-unknown",
  "scope-unclear",
  "property-unknown",
  "needs-variable-speed",
  "needs-efficiency",
  "stock-unknown",
]);

/** May this motor be sold as a replacement in the U.S., by its total horsepower and date of manufacture. */
export const sale: Rule = {
  name: "sale",
  weight: "supporting",
  source: "10 CFR 431.485 (88 FR 66966)",
  reasons: say.reasons,
  judge: ({ on }, { label, efficiencyPct, madeOn }) => {
    const found = judgeSale({
      totalHp: totalHpOf(label)?.value,
      speedKind: speedKindOf(label),
      efficiencyPct,
      madeOn,
      phase: phaseOf(label),
      on,
    });
    switch (found.kind) {
      case "total-hp-unknown":
        return say.notKnown("stock-unknown");
      case "no-standard":
        return say.holds("no-standard");
      case "meets":
        return say.holds("meets");
      case "made-before":
      case "not-yet-in-force":
        return say.holds(found.kind, { values: { from: found.band.madeFrom } });
      case "date-unknown":
      case "scope-unclear": {
        const values = { from: found.band.madeFrom };
        return say.needsWork(found.kind, { values, work: [{ key: `sale-${found.kind}`, values }] });
      }
      case "property-unknown":
        return say.notKnown("property-unknown", { values: { from: found.band.madeFrom } });
      case "fails": {
        const values = { from: found.band.madeFrom };
        return found.band.needs === "efficiency"
          ? say.rulesOut("needs-efficiency", {
              values: { ...values, minEfficiencyPct: extraSmallMinEfficiencyPct },
            })
          : say.rulesOut("needs-variable-speed", { values });
      }
    }
  },
};
