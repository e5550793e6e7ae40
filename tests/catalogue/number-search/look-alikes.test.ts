import { describe, expect, it } from "vitest";
import {
  folded,
  likeness,
  likenessBetween,
  looksAlike,
} from "../../../src/catalogue/number-search/look-alikes.ts";
import { codeOf } from "../../../src/catalogue/number-search/plain.ts";
import { foldedText } from "./textbook.ts";

const all = [..."0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"];

describe("look-alikes", () => {
  // Decoding table of Crockford's Base32: I and L are read as 1, O as 0. RFC 4648 section 6 leaves 0, 1 and 8 out of
  // its alphabet, which resemble O, I and B. ISO 3779 keeps I and O out of vehicle numbers. All from memory.
  it.each(["0O", "1I", "1L", "8B"])(
    "takes %s for each other, as published alphabets for hand-copied codes do",
    (pair) => {
      expect(likenessBetween(codeOf(pair.charAt(0)), codeOf(pair.charAt(1)))).toBe(likeness.typed);
    },
  );

  // Common practice, no source.
  it.each(["5S", "2Z", "6G"])("takes %s for each other", (pair) =>
    expect(looksAlike(pair.charAt(0), pair.charAt(1))).toBe(true),
  );
  it.each(["68", "17"])("takes %s for each other on worn print", (pair) =>
    expect(likenessBetween(codeOf(pair.charAt(0)), codeOf(pair.charAt(1)))).toBe(likeness.worn),
  );

  it.each(["38", "4A", "UV", "12", "AB", "0D"])("keeps %s apart", (pair) =>
    expect(looksAlike(pair.charAt(0), pair.charAt(1))).toBe(false),
  );

  it("folds exactly the characters that look alike, directly or over one between", () => {
    for (const a of all) {
      for (const b of all) {
        const together = folded[codeOf(a)] === folded[codeOf(b)];
        expect(together, a + b).toBe(foldedText(a) === foldedText(b));
        expect(looksAlike(a, b), a + b).toBe(together);
      }
    }
  });
});
