import type { Phase } from "./power.ts";
import { type CurrentTable, singlePhaseCurrent, threePhaseCurrent } from "./tables/full-load-current.ts";
import { copperSizes, smallestBreakerAmps, standardProtectionAmps } from "./tables/wire.ts";

/** What a motor's branch circuit is sized from. Figures for an electrician, never advice to a homeowner. */
export interface MotorCircuit {
  /** Current by the table, not by the label: 430.6(A)(1). */
  readonly tableAmps: number;
  /** 125 % of the table current: 430.22(A). */
  readonly conductorMinAmps: number;
  /** Smallest copper size with 60 or 75 deg C terminals, or undefined beyond 6 AWG: Table 310.16. */
  readonly awg60C: number | undefined;
  readonly awg75C: number | undefined;
  /** Inverse-time breaker, at most 250 %, and the standard size at or above it: 430.52, 240.6(A). */
  readonly breakerMaxAmps: number;
  readonly breakerNextStandardAmps: number | undefined;
  /** Dual-element fuse, at most 175 %, and the standard size at or above it: 430.52, 240.6(A). */
  readonly fuseMaxAmps: number;
  readonly fuseNextStandardAmps: number | undefined;
  /** Disconnect, 115 % of the table current: 430.110(A). */
  readonly disconnectMinAmps: number;
}

/** Products of one-decimal amps and whole percents are kept to a hundredth, so 14 x 1.25 is 17.5. */
const hundredths = (amps: number): number => Math.round(amps * 100) / 100;

/** Motor volts that a column serves where it is more than its own figure (notes to both tables). */
const servedVolts: Readonly<Record<number, readonly [low: number, high: number]>> = {
  115: [110, 120],
  230: [220, 240],
  460: [440, 480],
};

function columnIndex(table: CurrentTable, ratedVolts: number): number {
  return table.columnVolts.findIndex((volts) => {
    const [low, high] = servedVolts[volts] ?? [volts, volts];
    return ratedVolts >= low && ratedVolts <= high;
  });
}

/**
 * Full-load current in amperes by the NEC tables 430.248 (single-phase) and 430.250 (three-phase), read
 * between two rows in proportion; undefined outside the table. Motors of unusual speed or many speeds go by
 * their label instead.
 */
export function tableCurrentAmps(hp: number, ratedVolts: number, phase: Phase): number | undefined {
  const table = phase === 1 ? singlePhaseCurrent : threePhaseCurrent;
  const column = columnIndex(table, ratedVolts);
  const above = table.rows.find(([rowHp]) => rowHp >= hp);
  const below = table.rows.findLast(([rowHp]) => rowHp <= hp);
  const high = above?.[column + 1];
  const low = below?.[column + 1];
  if (column < 0 || !above || !below || high === undefined || low === undefined) return undefined;
  if (above[0] === below[0]) return high;
  return hundredths(low + ((high - low) * (hp - below[0])) / (above[0] - below[0]));
}

/** The standard breaker or fuse size at or above `amps`; undefined beyond 200 A. Source: NEC 240.6(A). */
export function nextStandardAmps(amps: number): number | undefined {
  return standardProtectionAmps.find((size) => size >= amps);
}

/** True for a size that breakers are made in. Source: NEC 240.6(A). */
export function isStandardBreaker(amps: number): boolean {
  return amps === smallestBreakerAmps || standardProtectionAmps.includes(amps);
}

/** Circuit figures for a motor of this hp; undefined where the current tables end. Sources stand at each field. */
export function motorCircuit(hp: number, ratedVolts: number, phase: Phase): MotorCircuit | undefined {
  const tableAmps = tableCurrentAmps(hp, ratedVolts, phase);
  if (tableAmps === undefined) return undefined;
  const conductorMinAmps = hundredths(tableAmps * 1.25);
  const breakerMaxAmps = hundredths(tableAmps * 2.5);
  const fuseMaxAmps = hundredths(tableAmps * 1.75);
  return {
    tableAmps,
    conductorMinAmps,
    awg60C: copperSizes.find((size) => size.amps60C >= conductorMinAmps)?.awg,
    awg75C: copperSizes.find((size) => size.amps75C >= conductorMinAmps)?.awg,
    breakerMaxAmps,
    breakerNextStandardAmps: nextStandardAmps(breakerMaxAmps),
    fuseMaxAmps,
    fuseNextStandardAmps: nextStandardAmps(fuseMaxAmps),
    disconnectMinAmps: hundredths(tableAmps * 1.15),
  };
}

/**
 * Separate overload protection in percent of the LABEL amps: 125 when the service factor is 1.15 or more or
 * the marked rise 40 deg C or less, else 115; 140 and 130 if the motor would not start. Source: NEC
 * 430.32(A)(1), 430.32(C).
 */
export function overloadPercent(
  serviceFactor: number,
  temperatureRiseC?: number,
): { readonly basic: number; readonly raised: number } {
  const robust = serviceFactor >= 1.15 || (temperatureRiseC !== undefined && temperatureRiseC <= 40);
  return robust ? { basic: 125, raised: 140 } : { basic: 115, raised: 130 };
}
