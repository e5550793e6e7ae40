import type { Nameplate, RatingName } from "../../nameplate/vocabulary.ts";
import { figure, findingsOf, tolerance } from "../finding.ts";
import type { Rule } from "../types.ts";

const say = findingsOf("current", ["not-above", "above", "supply-unknown", "unknown", "stock-unknown"]);

/** Two per cent for the rounding of labels. */
const largestCurrentRatio = 1.02;

/** Full-load amps compare with full-load amps, service-factor amps with service-factor amps. */
const currents = ["amps", "serviceFactorAmps"] as const;

/** Is the new motor's current within what the circuit carried before. */
export const current: Rule = {
  name: "current",
  weight: "supporting",
  source:
    "NEC 430.22(A), 430.52 and 430.6 (why a higher current is for an electrician); 2 %: common practice, no source",
  reasons: say.reasons,
  judge: ({ nameplate, site }, { label }) => {
    const volts = site.supplyVolts;
    const stocked = currents.filter((name) => ratedAmps(label, name, volts ?? 0) !== undefined);
    if (stocked.length === 0) return say.notKnown("stock-unknown");
    if (volts === undefined) return say.notKnown("supply-unknown", { needs: ["supplyVolts"] });

    let highest: { oldAmps: number; newAmps: number } | undefined;
    for (const name of stocked) {
      const oldAmps = ratedAmps(nameplate, name, volts);
      const newAmps = ratedAmps(label, name, volts);
      if (oldAmps === undefined || newAmps === undefined) continue;
      if (!highest || newAmps / oldAmps > highest.newAmps / highest.oldAmps) highest = { oldAmps, newAmps };
    }
    if (!highest) {
      const needs: readonly RatingName[] = nameplate.volts ? stocked : ["volts", ...stocked];
      return say.notKnown("unknown", { needs: needs.filter((name) => !(name in nameplate)) });
    }

    const { oldAmps, newAmps } = highest;
    const values = { oldAmps: figure(oldAmps), newAmps: figure(newAmps) };
    if (newAmps / oldAmps <= largestCurrentRatio + tolerance) return say.holds("not-above", { values });
    return say.needsWork("above", { values, work: [{ key: "electrician-circuit", values }] });
  },
};

/** Amps at the rated voltage nearest the supply; lists of unequal length do not say which amps go with which volts. */
function ratedAmps(
  label: Nameplate,
  name: (typeof currents)[number],
  supplyVolts: number,
): number | undefined {
  const { volts, [name]: amps } = label;
  if (!volts || amps?.length !== volts.length) return undefined;
  let nearest = 0;
  for (const [index, rated] of volts.entries()) {
    if (Math.abs(rated - supplyVolts) < Math.abs((volts[nearest] ?? 0) - supplyVolts)) nearest = index;
  }
  return amps[nearest];
}
