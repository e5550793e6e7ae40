import { realPowerRatio } from "./affinity.ts";
import { inputWatts, inputWattsFromEfficiency, type Phase } from "./power.ts";

/** One figure a result rests on, to be shown next to it. */
export interface Assumption {
  readonly name: "powerFactor" | "loadHp" | "hoursPerDay" | "pricePerKwh" | "daysPerYear" | "speedFraction";
  readonly value: number;
  /** Said by the customer or printed on the label, or taken by us. */
  readonly basis: "stated" | "assumed";
}

/** Power drawn from the mains, with what it rests on. */
export interface InputPower {
  readonly kw: number;
  readonly from: "efficiency" | "volts-and-amps";
  readonly assumptions: readonly Assumption[];
}

/** Taken when nobody states it: power factor of a capacitor-run pool motor under load (common practice, no source). */
export const assumedPowerFactor = 0.85;
/** Daily run taken when the customer does not say: 8 h (common practice, no source). */
export const assumedHoursPerDay = 8;
/** U.S. residential price, $/kWh, 2025. Source: U.S. EIA, Short-Term Energy Outlook of December 2025 (an estimate). */
export const assumedPricePerKwh = 0.1729;
const daysPerYear = 365;

/** What a label may give to work out input power. */
export interface PowerLabel {
  readonly totalHp?: number | undefined;
  readonly efficiencyPct?: number | undefined;
  readonly powerFactor?: number | undefined;
  readonly volts?: number | undefined;
  /** At the same voltage; service-factor amps where printed, because pool pumps load their motors that far. */
  readonly amps?: number | undefined;
  readonly phase?: Phase | undefined;
}

/**
 * Input power in kW at full load: from total hp and printed efficiency, else from volts, amps and a power
 * factor (assumed when not printed); undefined when the label gives neither way.
 */
export function inputPower(label: PowerLabel): InputPower | undefined {
  const { totalHp, efficiencyPct, volts, amps } = label;
  if (totalHp !== undefined && efficiencyPct !== undefined) {
    return {
      kw: inputWattsFromEfficiency(totalHp, efficiencyPct) / 1000,
      from: "efficiency",
      assumptions: [{ name: "loadHp", value: totalHp, basis: "assumed" }],
    };
  }
  if (volts === undefined || amps === undefined) return undefined;
  const powerFactor = label.powerFactor ?? assumedPowerFactor;
  return {
    kw: inputWatts(volts, amps, powerFactor, label.phase ?? 1) / 1000,
    from: "volts-and-amps",
    assumptions: [
      {
        name: "powerFactor",
        value: powerFactor,
        basis: label.powerFactor === undefined ? "assumed" : "stated",
      },
    ],
  };
}

/** What the customer says of use; what is missing is assumed and said so. */
export interface Usage {
  readonly hoursPerDay?: number | undefined;
  readonly pricePerKwh?: number | undefined;
}

/** A year's running, with every figure it rests on. */
export interface RunningCost {
  readonly inputKw: number;
  readonly kwhPerYear: number;
  readonly usdPerYear: number;
  readonly assumptions: readonly Assumption[];
}

/** Energy and money for a year: kW x hours a day x 365 x price. */
export function runningCost(power: InputPower, usage: Usage = {}): RunningCost {
  const hoursPerDay = usage.hoursPerDay ?? assumedHoursPerDay;
  const pricePerKwh = usage.pricePerKwh ?? assumedPricePerKwh;
  const kwhPerYear = power.kw * hoursPerDay * daysPerYear;
  const basis = (stated: number | undefined) => (stated === undefined ? "assumed" : "stated");
  return {
    inputKw: power.kw,
    kwhPerYear,
    usdPerYear: kwhPerYear * pricePerKwh,
    assumptions: [
      ...power.assumptions,
      { name: "hoursPerDay", value: hoursPerDay, basis: basis(usage.hoursPerDay) },
      { name: "pricePerKwh", value: pricePerKwh, basis: basis(usage.pricePerKwh) },
      { name: "daysPerYear", value: daysPerYear, basis: "assumed" },
    ],
  };
}

/** The most a slower speed can save in a year; always said as "up to". */
export interface SlowSaving {
  readonly upToKwhPerYear: number;
  readonly upToUsdPerYear: number;
  /** Hours a day at the slow speed that move the same water. */
  readonly slowHoursPerDay: number;
  readonly assumptions: readonly Assumption[];
}

/**
 * Saving when the same water is moved at a fraction of full speed: the pump runs longer by 1 / fraction at
 * the measured power of a real pump (0.195 of full at half speed, not the ideal 0.125). Hours are cut at 24.
 */
export function slowSpeedSaving(full: RunningCost, speedFraction = 0.5): SlowSaving {
  const stated = full.assumptions.find(({ name }) => name === "hoursPerDay");
  const hoursPerDay = stated?.value ?? assumedHoursPerDay;
  const slowHoursPerDay = Math.min(24, hoursPerDay / speedFraction);
  const energyRatio = (realPowerRatio(speedFraction) * slowHoursPerDay) / hoursPerDay;
  return {
    upToKwhPerYear: full.kwhPerYear * (1 - energyRatio),
    upToUsdPerYear: full.usdPerYear * (1 - energyRatio),
    slowHoursPerDay,
    assumptions: [...full.assumptions, { name: "speedFraction", value: speedFraction, basis: "assumed" }],
  };
}

/**
 * Share of the current that an energy-efficient motor saves against a standard one of equal total hp: a
 * quarter to a third (common practice, no source).
 */
export const energyEfficientCurrentSaving = { low: 0.25, high: 1 / 3 } as const;
