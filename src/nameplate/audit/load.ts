import { labelTotalHp, type Phase } from "../../engineering/power.ts";
import { hpFromWatts } from "../../engineering/units.ts";
import type { Nameplate } from "../vocabulary.ts";

/** Largest service factor met on pool motors; stands in where the label states none. Common practice, no source. */
export const largestServiceFactor = 1.9;

/**
 * Shaft loads, hp, between which a printed current was measured: it must suffice for the low one and may not
 * be absurd for the high one.
 */
export interface LoadRange {
  readonly lowHp: number;
  readonly highHp: number;
}

/**
 * The load a printed current belongs to. Service-factor amps go with total hp. Plain amps go with hp, but
 * pool labels often print the service-factor figure under AMPS (common practice, no source), so they may go
 * with anything up to total hp. Undefined when the label tells no power.
 */
export function loadRange(label: Nameplate, kind: "amps" | "serviceFactorAmps"): LoadRange | undefined {
  const ratedHp = label.hp ?? (label.kw === undefined ? undefined : hpFromWatts(label.kw * 1000));
  const totalHp = labelTotalHp({ ...label, hp: ratedHp });
  if (ratedHp === undefined && totalHp === undefined) return undefined;
  const lowHp = ratedHp ?? (totalHp ?? 0) / largestServiceFactor;
  const highHp = totalHp ?? lowHp * largestServiceFactor;
  if (kind === "serviceFactorAmps") return { lowHp: totalHp ?? lowHp, highHp };
  return { lowHp: Math.min(lowHp, highHp), highHp: Math.max(lowHp, highHp) };
}

/** Above this small motors are three-phase. Source: NEMA MG 1 10.30. */
const highestSinglePhaseVolts = 277;

/** Phase for power sums: stated, else three-phase by its volts, else single-phase as nearly all pool motors are. */
export function phaseForPower({ phase, volts = [] }: Nameplate): Phase {
  return phase ?? (volts.some((value) => value > highestSinglePhaseVolts) ? 3 : 1);
}
