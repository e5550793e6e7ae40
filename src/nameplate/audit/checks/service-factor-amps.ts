import { type Check, type Finding, type Subject, shown } from "../check.ts";

/** Lowest power factor met on small single-phase motors (engineering note on fractional-hp motors: 0.55 to 0.75). */
const lowestPowerFactor = 0.55;

/**
 * Least rise of current from full load to service-factor load. The active part follows the load, the
 * magnetizing part stays: textbook phasor sum of the two.
 */
function leastRise(serviceFactor: number): number {
  const active = lowestPowerFactor ** 2;
  return 1 / Math.sqrt(1 - active + active / serviceFactor ** 2);
}

function judge(subject: Subject, amps: number, sfAmps: number): Finding | undefined {
  const { serviceFactor } = subject.nameplate;
  const ratio = sfAmps / amps;
  const rounding = 0.06 / amps + 0.06 / sfAmps;
  const values = { amps: shown(subject, "amps"), sfAmps: shown(subject, "serviceFactorAmps") };
  if (ratio < 1 - rounding) {
    return {
      ratings: ["serviceFactorAmps", "amps"],
      reason: "service-factor-amps-below",
      values,
      severity: "impossible",
    };
  }
  if (serviceFactor === undefined || serviceFactor < 1) return undefined;
  const low = leastRise(serviceFactor) - rounding;
  const high = serviceFactor * 1.05 + rounding;
  if (ratio >= low && ratio <= high) return undefined;
  return {
    ratings: ["serviceFactorAmps", "amps", "serviceFactor"],
    reason: "service-factor-amps-differ",
    values: { ...values, serviceFactor },
    severity: "doubtful",
  };
}

/** Service-factor amps are not below full-load amps, and above them by no more than the service factor. */
export const serviceFactorAmps: Check = {
  name: "service-factor-amps",
  source: "definition of the service factor, NEMA MG 1 1.42; active and magnetizing current: textbook",
  reasons: ["service-factor-amps-below", "service-factor-amps-differ"],
  find: (subject) => {
    const { amps, serviceFactorAmps: sfAmps } = subject.nameplate;
    if (!amps || !sfAmps || amps.length !== sfAmps.length) return [];
    for (const [index, full] of amps.entries()) {
      const finding = judge(subject, full, sfAmps[index] ?? full);
      if (finding) return [finding];
    }
    return [];
  },
};
