import { describe, expect, test } from "vitest";
import { nameplateRatingNames, ratingNames } from "../../src/nameplate/vocabulary.ts";
import { guidePage } from "../../src/pictures/guide-page.ts";
import { isDrawn, sampleRows } from "../../src/pictures/label/sample.ts";
import { escapeXml } from "../../src/pictures/svg.ts";
import { wording } from "./examples.ts";

const explained = ratingNames.filter((rating) => wording.has("explain", rating));
const text = (rating: string) => wording.say("explain", rating);
const captions = new Map<string, string>(sampleRows.flat().map(({ rating, caption }) => [rating, caption]));

describe("what a rating is", () => {
  // Where a sentence ends is told by the platform's segmenter (Unicode Standard Annex 29).
  test.each(explained)("%s: in two sentences that fit a phone's screen", (rating) => {
    const sentences = [...new Intl.Segmenter("en", { granularity: "sentence" }).segment(text(rating))];
    expect(sentences.map(({ segment }) => segment)).toHaveLength(2);
    expect(text(rating).length).toBeLessThanOrEqual(280);
  });

  test.each(nameplateRatingNames.filter(isDrawn))(
    "%s: by the word that the drawn label prints for it",
    (rating) => {
      const word = captions.get(rating) ?? "";
      expect(
        text(rating)
          .toLowerCase()
          .split(/[^\p{L}]+/u),
      ).toEqual(expect.arrayContaining(word.toLowerCase().split(" ")));
    },
  );

  test("stands in the guide in the same words", () => {
    const page = guidePage(wording);
    const words = page.replace(/<\/?b>/g, "");
    for (const rating of explained) expect(words).toContain(escapeXml(text(rating)));
  });
});
