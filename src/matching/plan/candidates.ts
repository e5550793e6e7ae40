import type { Nameplate, RatingName, Site } from "../../nameplate/vocabulary.ts";

/** A set of values that the ratings asked for may have. */
export interface Candidate {
  readonly values: Nameplate & Site;
  /** Stocked motors with these values that look like the old one so far. */
  readonly alike: number;
}

/** A stocked label, and how many look-alikes of the old motor share what matters of it. */
export interface Stocked {
  readonly label: Nameplate;
  readonly alike: number;
}

/** The values of those ratings that are asked for. */
export function only(asked: readonly RatingName[], values: Nameplate & Site): Nameplate & Site {
  return Object.fromEntries(
    Object.entries(values).filter(
      ([rating, value]) => value !== undefined && (asked as readonly string[]).includes(rating),
    ),
  );
}
