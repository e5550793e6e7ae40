import { findingsOf, missing } from "../finding.ts";
import { possibleSupplies, type SupplyFit, supplyFit } from "../supplies.ts";
import type { Finding, Rule } from "../types.ts";

const say = findingsOf("supply", [
  "serves",
  "serves-all",
  "low-208",
  "other-volts",
  "other-volts-all",
  "unknown",
  "contradiction",
  "stock-unknown",
]);

/** Will the motor run on the voltage that is wired to the pump. */
export const supply: Rule = {
  name: "supply",
  weight: "deciding",
  source:
    "NEMA MG 1 12.44 (within 10 % of a rated voltage); ANSI C84.1 (systems); breaker poles: common practice, no source",
  reasons: say.reasons,
  judge: (question, { label }) => {
    const ratedVolts = label.volts;
    if (!ratedVolts) return say.notKnown("stock-unknown");
    const supplies = possibleSupplies(question);
    const needs = missing({ ...question.nameplate, ...question.site }, [
      "volts",
      "breakerPoles",
      "supplyVolts",
    ]);
    const values = { newVolts: ratedVolts.join("/"), supplyVolts: supplies.volts.join(" / ") };
    const [first, ...others] = supplies.volts.map((volts) => supplyFit(ratedVolts, volts));
    if (first === undefined) return say.notKnown("contradiction", { needs: ["supplyVolts"] });
    if (others.some((fit) => fit !== first)) return say.notKnown("unknown", { values, needs });
    return supplies.stated || others.length === 0 ? sayOne(first, values) : sayAll(first, values);
  },
};

function sayOne(fit: SupplyFit, values: Finding["values"]): Finding {
  if (fit === "serves") return say.holds("serves", { values });
  if (fit === "does-not-serve") return say.rulesOut("other-volts", { values });
  return say.needsWork("low-208", { values, work: [{ key: "low-voltage-check", values }] });
}

/** Every supply that the old plate allows gives the same answer, so the answer is as good as stated. */
function sayAll(fit: SupplyFit, values: Finding["values"]): Finding {
  if (fit === "serves") return say.holds("serves-all", { values });
  if (fit === "does-not-serve") return say.rulesOut("other-volts-all", { values });
  return sayOne(fit, values);
}
