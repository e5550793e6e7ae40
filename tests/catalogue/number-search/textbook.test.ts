import { describe, expect, it } from "vitest";
import { levenshtein } from "../../bench/number-search/searches.ts";
import { corruptions, editDistance } from "./textbook.ts";

// The examples every textbook gives (Levenshtein): kitten, sitting: 3; Saturday, Sunday: 3. From memory.
describe("the references the search is held against", () => {
  it.each([
    ["kitten", "sitting", 3],
    ["Saturday", "Sunday", 3],
    ["", "abc", 3],
    ["same", "same", 0],
  ])("%s and %s are %i edits apart", (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
    if (a !== "") expect(levenshtein(a, b)).toBe(distance);
  });

  it("counts a swap of neighbours as one edit, the bit-parallel scan of the benchmark as two", () => {
    expect(editDistance("abcd", "acbd")).toBe(1);
    expect(levenshtein("abcd", "acbd")).toBe(2);
  });

  it("corrupts by one edit only", () => {
    for (const typed of corruptions("QUILL12")) expect(editDistance("QUILL12", typed)).toBe(1);
  });
});
