/** Motors work within this fraction of a rated voltage, at rated frequency. Source: NEMA MG 1 12.44. */
export const voltageBand = 0.1;

/** Nominal supplies of North America: 120, 208, 240 V and, three-phase, 480 V. Source: ANSI C84.1. */
export const supplySystems = [120, 208, 240, 480] as const;
export type SupplySystem = (typeof supplySystems)[number];

/** Signed deviation of a supply from a rated voltage, as a fraction of the rated voltage. */
export function voltageDeviation(ratedVolts: number, supplyVolts: number): number {
  return (supplyVolts - ratedVolts) / ratedVolts;
}

/** True when the supply lies within +-10 % of the rated voltage, limits inclusive (NEMA MG 1 12.44). */
export function withinVoltageBand(ratedVolts: number, supplyVolts: number): boolean {
  // Compared as 10 x |difference| <= rated, exact for whole volts; the rest is for 187.2 V on a 208 V rating.
  return Math.abs(supplyVolts - ratedVolts) * 10 <= ratedVolts + 1e-9;
}

/** True for a supply of a 208 V system: 198 to under 220 V. */
export function is208System(supplyVolts: number): boolean {
  return supplyVolts >= 198 && supplyVolts < 220;
}

/**
 * The nominal system behind a wired voltage, or undefined when it belongs to none. What people call 110 or
 * 115 is a 120 V system, 220 and 230 a 240 V system.
 */
export function supplySystem(supplyVolts: number): SupplySystem | undefined {
  if (is208System(supplyVolts)) return 208;
  if (supplyVolts >= 105 && supplyVolts <= 132) return 120;
  if (supplyVolts >= 220 && supplyVolts <= 264) return 240;
  if (supplyVolts >= 432 && supplyVolts <= 528) return 480;
  return undefined;
}
