import { type RatingName, ratingNames, ratings } from "./vocabulary.ts";

/**
 * The rating a text names ("what does SF mean?" -> `serviceFactor`): the longest label word that stands in it
 * as whole words; undefined when it names none.
 */
export function namedRating(text: string): RatingName | undefined {
  const padded = ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}./]+/gu, " ")
    .replace(/[.?!]+(?= |$)/g, "")} `;
  let best: { rating: RatingName; length: number } | undefined;
  for (const rating of ratingNames) {
    for (const word of [ratings[rating].title, ...ratings[rating].words]) {
      // One-letter words (a, v) are units in a label but everyday letters in a question.
      if (word.length < 2 || word.length <= (best?.length ?? 0)) continue;
      if (padded.includes(` ${word} `)) best = { rating, length: word.length };
    }
  }
  if (best) return best.rating;
  return /\b\d{2}[ -]?[ycj]\b/i.test(text) ? "frame" : undefined;
}
