import type { Separation } from "./separate.ts";

/**
 * How what was typed leads to a number, the surest first: letter by letter; by the maker's own format, once what
 * does not identify the motor is left out; with look-alike characters; one edit away, or with a piece of it
 * missing or too much. All but the first are worth reading back to the customer.
 */
export type FoundHow = "exact" | "format" | "look-alike" | "near" | "part";

/** A number that may have been meant, as the catalogue writes it, and the motors it leads to. */
export interface Candidate {
  readonly number: string;
  readonly skus: readonly string[];
  readonly how: FoundHow;
}

export type NumberResult =
  | { readonly kind: "none" }
  | ({ readonly kind: "found" } & Candidate)
  /** Several numbers are as likely: ask `separates`, best first. Not to be guessed from the order. */
  | { readonly kind: "choose"; readonly candidates: readonly Candidate[]; readonly separates: Separation }
  /** What was typed fits more numbers than one would ask about: `count` at least, the likeliest first. */
  | { readonly kind: "many"; readonly count: number; readonly likeliest: readonly Candidate[] }
  /** A serial number or date code: it tells age and origin, never fit. `means` is the format's explanation. */
  | { readonly kind: "serial"; readonly by: "word" }
  | {
      readonly kind: "serial";
      readonly by: "format";
      readonly maker: string;
      readonly format: string;
      readonly means: string;
    };
