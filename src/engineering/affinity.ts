/**
 * Share of full power that a measured two-speed pump took at half speed on the same pipes: 381 W of 1957 W.
 * Source: U.S. EPA, ENERGY STAR Certified Pool Pumps (data set 2ppn-v3hp), one pump at 3450 and 1725 rpm on
 * curve A. The cube law would give 0.125; small motors lose efficiency at light load.
 */
export const measuredHalfSpeedPowerRatio = 381 / 1957;

/** Ratios of flow, head and shaft power after a change of speed. */
export interface AffinityRatios {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
}

/**
 * Affinity laws for one pump on one system: flow ~ n, head ~ n^2, shaft power ~ n^3 (handbook relations).
 * This is the ideal; for what a pump takes from the mains use `realPowerRatio`.
 */
export function affinity(fromRpm: number, toRpm: number): AffinityRatios {
  const ratio = toRpm / fromRpm;
  return { flow: ratio, head: ratio ** 2, power: ratio ** 3 };
}

const measuredExponent = Math.log(measuredHalfSpeedPowerRatio) / Math.log(0.5);

/**
 * Mains power at a lower speed as a fraction of mains power at full speed: the power law through the
 * measured half-speed point. An estimate for speeds from a third up; below that drives take a floor.
 */
export function realPowerRatio(speedFraction: number): number {
  return speedFraction ** measuredExponent;
}
