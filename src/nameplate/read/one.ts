import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";

/** A candidate with one claim. */
export function one(
  rating: RatingName,
  value: RatingValue<RatingName>,
  start: number,
  end: number,
  from: number,
  to: number,
  score: number,
): Candidate {
  const claim: Claim = { rating, value, start: from, end: to, score };
  return { start, end, score, claims: [claim] };
}
