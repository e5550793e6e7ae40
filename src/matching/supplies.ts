import { is208System, supplySystems, withinVoltageBand } from "../engineering/voltage.ts";
import { phaseOf } from "./deduced.ts";
import type { Question } from "./types.ts";

/** The volts a replacement may meet, and whether somebody stated them. */
export interface Supplies {
  readonly volts: readonly number[];
  readonly stated: boolean;
}

/**
 * The wired supply when stated; else every supply of the region that the old plate allows, narrowed by the
 * breaker's poles (one pole 120 V, two poles 208 or 240 V: common practice). Empty when plate and breaker
 * contradict each other.
 */
export function possibleSupplies({ nameplate, site }: Question): Supplies {
  if (site.supplyVolts !== undefined) return { volts: [site.supplyVolts], stated: true };
  const singlePhase = phaseOf(nameplate) === 1;
  const volts = supplySystems.filter(
    (system) =>
      !(system === 480 && singlePhase) &&
      breakerAllows(system, site.breakerPoles) &&
      (!nameplate.volts || servesAnyhow(nameplate.volts, system)),
  );
  return { volts, stated: false };
}

function breakerAllows(system: number, poles: number | undefined): boolean {
  if (poles === 1) return system === 120;
  if (poles === 2) return system === 208 || system === 240;
  return true;
}

/** True when any rated voltage takes this supply within its band (NEMA MG 1 12.44). */
export function servesAnyhow(ratedVolts: readonly number[], supplyVolts: number): boolean {
  return ratedVolts.some((rated) => withinVoltageBand(rated, supplyVolts));
}

/** True when the plate is made for a 208 V system; the band of 230 V only just reaches it. */
export function isMadeFor208(ratedVolts: readonly number[]): boolean {
  return ratedVolts.includes(200) || ratedVolts.includes(208);
}

/** How a motor takes one supply. */
export type SupplyFit = "serves" | "serves-208-poorly" | "does-not-serve";

/** NEMA MG 1 12.44 for the band; the 208 V limits are common practice. */
export function supplyFit(ratedVolts: readonly number[], supplyVolts: number): SupplyFit {
  if (!servesAnyhow(ratedVolts, supplyVolts)) return "does-not-serve";
  return is208System(supplyVolts) && !isMadeFor208(ratedVolts) ? "serves-208-poorly" : "serves";
}
