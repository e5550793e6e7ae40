import { type Check, type Finding, type Subject, shown } from "../check.ts";

/**
 * Part of a rise in load that shows in the current at least: magnetizing current does not grow with load, so
 * amps rise less than power. 0.28 holds down to a full-load power factor of 0.5.
 */
const leastShare = 0.28;

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
  const low = 1 + leastShare * (serviceFactor - 1) - rounding;
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
  source: "definition of the service factor, NEMA MG 1 1.42; the lower limit is our estimate",
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
