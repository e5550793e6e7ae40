import type { RatingName, RatingValue } from "../vocabulary.ts";

/** What a candidate says of one rating. */
export interface Claim {
  readonly rating: RatingName;
  /** Undefined when there is something to read that could not be read whole. */
  readonly value: RatingValue<RatingName> | undefined;
  /** Tokens the value itself stands on. */
  readonly start: number;
  readonly end: number;
  /** Evidence, to choose between claims that contradict each other. */
  readonly score: number;
  /** The value stood alone, without a word that names it. */
  readonly bare?: boolean;
  /** It takes the place of what was said of this rating before. */
  readonly instead?: boolean;
}

/** One way to explain a stretch of tokens. Without claims it explains it as something that is no rating. */
export interface Candidate {
  readonly start: number;
  readonly end: number;
  readonly score: number;
  readonly claims: readonly Claim[];
}

/** A claim of the chosen reading, with the tokens of the whole phrase it came from. */
export interface Standing extends Claim {
  readonly from: number;
  readonly to: number;
}
