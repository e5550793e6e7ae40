import type { RatingName, RatingValue } from "./vocabulary.ts";

/** How sure we are of a value: the customer's words, their yes, our deduction (with a reason), or staff. */
export type Certainty = "typed" | "confirmed" | "inferred" | "staff";

/** Half-open range of UTF-16 offsets in the message the reading came from. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One value taken from one message, with its evidence. */
export interface Reading<K extends RatingName = RatingName> {
  readonly rating: K;
  readonly value: RatingValue<K>;
  /** The customer's own words this came from. */
  readonly words: string;
  readonly span: Span;
}

/** A rating the customer says is missing, illegible or only half read. */
export interface Unreadable {
  readonly rating: RatingName;
  readonly words: string;
  readonly span: Span;
}

/** Everything one message states; nothing in it is inferred. */
export interface MessageReading {
  readonly readings: readonly Reading[];
  readonly unreadable: readonly Unreadable[];
}

/**
 * A reading that cannot, or can hardly, be true, as the audit found it. `reason` is a key of
 * `intents/answers/doubts.json`, `values` fill its blanks.
 */
export interface Doubt {
  /** Name of the check that raised it. */
  readonly check: string;
  /** The ratings it doubts, the most suspicious first. */
  readonly ratings: readonly RatingName[];
  readonly reason: string;
  readonly values: Readonly<Record<string, string | number>>;
  /** What the first rating may have been, when a slip of the pen or a look-alike explains it. */
  readonly proposal?: {
    readonly rating: RatingName;
    readonly value: RatingValue<RatingName>;
    /** The other rating of a pair that was exchanged; both change together. */
    readonly also?: { readonly rating: RatingName; readonly value: RatingValue<RatingName> };
  };
  /** Impossible readings are not used; doubtful ones are asked about. Both leave the value as typed. */
  readonly severity: "impossible" | "doubtful";
}

/** Dangers, most urgent first: of two in one message the earlier one wins. */
export const hazards = ["shock", "fire", "water", "trip"] as const;
export type Hazard = (typeof hazards)[number];
