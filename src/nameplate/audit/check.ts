import type { Doubt } from "../reading.ts";
import {
  type Nameplate,
  type RatingName,
  type RatingValue,
  ratings,
  type Site,
  showRating,
} from "../vocabulary.ts";

/** What a check looks at: the label and the facts of the place, kept apart. */
export interface Subject {
  readonly nameplate: Nameplate;
  readonly site: Site;
}

export type Proposal = NonNullable<Doubt["proposal"]>;

/** A doubt before anybody has looked for what the value may have been. */
export interface Finding extends Omit<Doubt, "check" | "proposal"> {
  /** Likelier values that only this check can know of; tried before slips of the pen. */
  readonly suggestions?: readonly Proposal[];
}

/** One check, one file: `checks/<name>.ts`. */
export interface Check {
  readonly name: string;
  /** Standard and clause, or "common practice, no source". */
  readonly source: string;
  /**
   * Every reason this check may give. Each has two texts in `intents/answers/doubts.json`: under its own key, and under the
   * key with `-proposed` for when a likelier value is at hand.
   */
  readonly reasons: readonly string[];
  readonly find: (subject: Subject) => readonly Finding[];
}

/** A rating's value on the label or of the site. */
export function ratingValue<K extends RatingName>(subject: Subject, rating: K): RatingValue<K> | undefined {
  // Looked up in place: a large import asks for millions of values.
  const { nameplate, site }: { readonly [Part in keyof Subject]: Partial<Record<RatingName, unknown>> } =
    subject;
  return (site[rating] ?? nameplate[rating]) as RatingValue<K> | undefined;
}

/** The value of a rating as text with its unit, for the blanks of a reason; empty when not stated. */
export function shown(subject: Subject, rating: RatingName): string {
  const value = ratingValue(subject, rating);
  return value === undefined ? "" : showRating(rating, value);
}

/** The blanks every reason may use: what the doubted rating is called, and its value. */
export function blanks(subject: Subject, rating: RatingName): Record<string, string> {
  return { rating: ratings[rating].title, value: shown(subject, rating) };
}
