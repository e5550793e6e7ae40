import type { Phase } from "./power.ts";

/** One size class of 10 CFR 431.485: lower limit included; the upper limit is excluded except at 5 hp. */
export interface SaleBand {
  readonly name: "extra-small" | "small" | "standard";
  /** Total hp. */
  readonly fromTotalHp: number;
  readonly toTotalHp: number;
  /** Applies to motors made on or after this ISO day. */
  readonly madeFrom: string;
  readonly needs: "efficiency" | "variable-speed";
}

/** Full-load efficiency, percent, that an extra-small motor needs. Source: 10 CFR 431.485. */
export const extraSmallMinEfficiencyPct = 69;

/**
 * Size classes by total horsepower. Source: 10 CFR 431.485 (88 FR 66966). It binds by date of manufacture
 * or import, not of sale. A relief from penalties for the small class was reported for 2027 to 2029; the
 * rule itself stands, so nothing here rests on it.
 */
export const saleBands: readonly SaleBand[] = [
  { name: "extra-small", fromTotalHp: 0, toTotalHp: 0.5, madeFrom: "2025-09-29", needs: "efficiency" },
  { name: "small", fromTotalHp: 0.5, toTotalHp: 1.15, madeFrom: "2027-09-28", needs: "variable-speed" },
  { name: "standard", fromTotalHp: 1.15, toTotalHp: 5, madeFrom: "2025-09-29", needs: "variable-speed" },
];

/** The band of a total horsepower; undefined above 5, where there is no standard. */
export function saleBand(totalHp: number): SaleBand | undefined {
  if (totalHp === 5) return saleBands.at(-1);
  return saleBands.find((band) => totalHp >= band.fromTotalHp && totalHp < band.toTotalHp);
}

/** What the rule is judged on. Days are ISO `YYYY-MM-DD`. */
export interface SaleQuestion {
  readonly totalHp: number | undefined;
  readonly speedKind: "single" | "two" | "variable" | undefined;
  readonly efficiencyPct: number | undefined;
  readonly madeOn: string | undefined;
  readonly phase: Phase | undefined;
  /** Day of the question. */
  readonly on: string;
}

/** Why a motor may or may not be sold as a replacement in the U.S. */
export type SaleFinding =
  /** Above 5 total hp: no standard. */
  | { readonly kind: "no-standard" }
  /** Total hp is not known, so neither is the band. */
  | { readonly kind: "total-hp-unknown" }
  /** Meets the standard whenever it was made. */
  | { readonly kind: "meets"; readonly band: SaleBand }
  /** Made before the band's date. */
  | { readonly kind: "made-before"; readonly band: SaleBand }
  /** No date of manufacture, but the band's date has not passed yet. */
  | { readonly kind: "not-yet-in-force"; readonly band: SaleBand }
  /** No date of manufacture and the band's date has passed: the desk looks at the label. */
  | { readonly kind: "date-unknown"; readonly band: SaleBand }
  /** Three-phase motors that run without a drive may lie outside 431.481(b): the desk decides. */
  | { readonly kind: "scope-unclear"; readonly band: SaleBand }
  /** Made after the date, and the speed kind or the efficiency that decides is not known. */
  | { readonly kind: "property-unknown"; readonly band: SaleBand }
  /** Made on or after the date without what the band needs. */
  | { readonly kind: "fails"; readonly band: SaleBand };

function meets(band: SaleBand, { speedKind, efficiencyPct }: SaleQuestion): boolean | undefined {
  if (band.needs === "variable-speed") return speedKind === undefined ? undefined : speedKind === "variable";
  return efficiencyPct === undefined ? undefined : efficiencyPct >= extraSmallMinEfficiencyPct;
}

/**
 * Judges 10 CFR 431.485 for one motor. A motor that has what its band needs is free whatever its date; a
 * two-speed motor is not variable-speed. ISO days compare as text.
 */
export function judgeSale(question: SaleQuestion): SaleFinding {
  const { totalHp, madeOn, phase, on } = question;
  if (totalHp === undefined) return { kind: "total-hp-unknown" };
  const band = saleBand(totalHp);
  if (!band) return { kind: "no-standard" };
  const met = meets(band, question);
  if (met) return { kind: "meets", band };
  if (madeOn === undefined) return { kind: on > band.madeFrom ? "date-unknown" : "not-yet-in-force", band };
  if (madeOn < band.madeFrom) return { kind: "made-before", band };
  if (phase === 3) return { kind: "scope-unclear", band };
  return { kind: met === undefined ? "property-unknown" : "fails", band };
}
