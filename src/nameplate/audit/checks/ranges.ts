import { isNameplateRating, type RatingDefinition, ratingNames, ratings } from "../../vocabulary.ts";
import { type Check, type Finding, ratingValue, type Subject, shown } from "../check.ts";

function findingFor(subject: Subject, rating: (typeof ratingNames)[number]): Finding | undefined {
  const { plausible, unit, title }: RatingDefinition<unknown> = ratings[rating];
  const value = ratingValue(subject, rating);
  if (!plausible || value === undefined) return undefined;
  const figures = [value].flat().filter((figure) => typeof figure === "number");
  const outside = figures.find((figure) => figure < plausible.min || figure > plausible.max);
  if (outside === undefined) return undefined;
  const high = outside > plausible.max;
  const absurd = outside > 2 * plausible.max || outside < plausible.min / 2;
  return {
    ratings: [rating],
    reason: `${isNameplateRating(rating) ? "range" : "site-range"}-${high ? "high" : "low"}`,
    values: {
      rating: title,
      // Without a unit the figure alone would not say what it is.
      value: unit ? shown(subject, rating) : `${title} ${shown(subject, rating)}`,
      limit: `${high ? plausible.max : plausible.min}${unit ? ` ${unit}` : ""}`,
    },
    severity: absurd ? "impossible" : "doubtful",
  };
}

/** Every number against what the vocabulary holds possible for a residential pool motor. */
export const ranges: Check = {
  name: "ranges",
  source: "common practice, no source",
  reasons: ["range-high", "range-low", "site-range-high", "site-range-low"],
  find: (subject) => ratingNames.flatMap((rating) => findingFor(subject, rating) ?? []),
};
