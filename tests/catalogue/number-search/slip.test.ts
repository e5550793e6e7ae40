import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deletionHashes, foldedHash } from "../../../src/catalogue/number-search/hashes.ts";
import { likeness } from "../../../src/catalogue/number-search/look-alikes.ts";
import { encode } from "../../../src/catalogue/number-search/plain.ts";
import { type Stretch, slipBetween } from "../../../src/catalogue/number-search/slip.ts";
import { editDistance, foldedText } from "./textbook.ts";

const stretch = (text: string): Stretch => {
  const codes = new Uint8Array(64);
  return { codes, start: 0, end: encode(text, codes) };
};
const slip = (typed: string, number: string) => slipBetween(stretch(typed), stretch(number));
const few = fc.string({ unit: fc.constantFrom(..."01OI7B86XA"), minLength: 1, maxLength: 9 });

describe("a slip between what was typed and a number", () => {
  it.each([
    ["QUI11", "QUILL", 0, likeness.typed],
    ["MOSS76", "MOSS16", 0, likeness.worn],
    ["MOSS7B", "MOSS16", 0, likeness.far],
    ["MOSX", "MOSS", 1, likeness.same],
    ["MOS", "MOSS", 1, likeness.same],
    ["MOSSS", "MOSS", 1, likeness.same],
    ["MSOS", "MOSS", 1, likeness.same],
    ["M05X", "MOSS", 1, likeness.typed],
  ])("%s for %s", (typed, number, edits, worst) =>
    expect(slip(typed, number)).toMatchObject({ edits, worst }),
  );

  it.each([
    ["MOXX", "MOSS"],
    ["MO", "MOSS"],
    ["SMOS", "MOSS"],
    ["OMSSX", "MOSS"],
  ])("%s is no slip for %s", (typed, number) => expect(slip(typed, number)).toBeUndefined());

  it("rates doubled letters, swaps and similar shapes as likelier than other edits", () => {
    const cost = (typed: string, number: string) => slip(typed, number)?.cost ?? Number.NaN;
    expect(cost("QUIL4", "QUILL4")).toBeLessThan(cost("QULL4", "QUILL4"));
    expect(cost("WHISK30", "WHISK38")).toBeLessThan(cost("WHISK34", "WHISK38"));
    expect(cost("WHISK34", "WHISK38")).toBeLessThan(cost("WHISK3T", "WHISK38"));
  });

  it("agrees with the textbook distance on what is one edit away, plain and folded", () => {
    const agrees = fc.property(few, few, (typed, number) => {
      const found = slip(typed, number);
      const plain = editDistance(typed, number);
      const looks = editDistance(foldedText(typed), foldedText(number));
      expect(found !== undefined).toBe(looks <= 1);
      if (looks === 0 || !found) return;
      expect(found.edits).toBe(1);
      expect(found.worst === likeness.same).toBe(plain === 1);
    });
    fc.assert(agrees, { seed: 7, numRuns: 5000 });
  });

  it("shares a hash with every text that one character less makes equal", () => {
    const shares = fc.property(few, (text) => {
      const out = new Uint32Array(65);
      const { codes, end } = stretch(text);
      const hashes = new Set(out.subarray(0, deletionHashes(codes, 0, end, out)));
      const shorter = Array.from(text, (_, at) => stretch(text.slice(0, at) + text.slice(at + 1)));
      const expected = [stretch(text), ...shorter].map((one) => foldedHash(one.codes, one.start, one.end));
      expect(hashes).toEqual(new Set(expected));
    });
    fc.assert(shares, { seed: 7, numRuns: 500 });
  });
});
