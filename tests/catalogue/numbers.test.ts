import { expect, it } from "vitest";
import { plainNumber } from "../../src/catalogue/numbers.ts";

it("is the same number however it is spaced, hyphenated or capitalised", () => {
  for (const typed of ["PIE-101", "pie101", " Pie 101 ", "PIE–101"])
    expect(plainNumber(typed)).toBe("pie101");
  expect(plainNumber("P1E-101")).not.toBe("pie101");
});
