import { wattsFromHp } from "./units.ts";

export type Phase = 1 | 3;

/**
 * Total horsepower: the most a motor may give for ever, hp x service factor, rounded to 1/10,000 hp so that
 * 1.5 x 1.10 and 1.0 x 1.65 compare equal.
 * Source: U.S. EPA data dictionary of the pool pump data set; 10 CFR 431.483 by reference to UL 1004-10.
 */
export function totalHorsepower(hp: number, serviceFactor: number): number {
  return Math.round(hp * serviceFactor * 1e4) / 1e4;
}

/**
 * A label's total horsepower: printed, or hp x service factor; undefined when the label gives neither.
 * The printed figure wins, because it is the one the maker stands for.
 */
export function labelTotalHp(label: {
  readonly hp?: number | undefined;
  readonly serviceFactor?: number | undefined;
  readonly totalHp?: number | undefined;
}): number | undefined {
  if (label.totalHp !== undefined) return label.totalHp;
  if (label.hp === undefined || label.serviceFactor === undefined) return undefined;
  return totalHorsepower(label.hp, label.serviceFactor);
}

/** Apparent power in volt-amperes: V x A, times the square root of 3 for three-phase. */
export function apparentVa(volts: number, amps: number, phase: Phase = 1): number {
  return volts * amps * (phase === 3 ? Math.sqrt(3) : 1);
}

/**
 * Input power in watts: V x A x power factor, times the square root of 3 for three-phase.
 * Source: U.S. DOE fact sheet "Determining Electric Motor Load and Efficiency" (three-phase form);
 * textbook relation (single-phase).
 */
export function inputWatts(volts: number, amps: number, powerFactor: number, phase: Phase = 1): number {
  return apparentVa(volts, amps, phase) * powerFactor;
}

/** Input power in watts of a motor giving `shaftHp` at `efficiencyPct` percent: W = hp x 745.7 / efficiency. */
export function inputWattsFromEfficiency(shaftHp: number, efficiencyPct: number): number {
  return wattsFromHp(shaftHp) / (efficiencyPct / 100);
}

/**
 * Efficiency times power factor that a label's figures imply: watts out over volt-amperes in. Above 1 no
 * motor can be; single-phase motors of 1/2 to 3 hp lie well below.
 */
export function impliedEfficiencyTimesPowerFactor(
  shaftHp: number,
  volts: number,
  amps: number,
  phase: Phase = 1,
): number {
  return wattsFromHp(shaftHp) / apparentVa(volts, amps, phase);
}
