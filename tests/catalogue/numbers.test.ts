import { describe, expect, it } from "vitest";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { findByNumber, indexNumbers } from "../../src/catalogue/numbers.ts";

const { motors } = parseMotors(`sku,volts,phase,frame,replaces
PIE-101,230,1,56Y,MOSS-415 QUILL-7
PIE-202,230,1,56J,MOSS-415
MOSS-909,115,1,48Y,PIE-202
`);
const numbers = indexNumbers(motors);
const found = (typed: string) => findByNumber(numbers, typed).map(({ motor, as }) => `${motor.sku} ${as}`);

describe("looking a number up", () => {
  it("finds a stock number however it is spaced, hyphenated or capitalised", () => {
    for (const typed of ["PIE-101", "pie101", " Pie 101 ", "PIE–101"])
      expect(found(typed)).toEqual(["PIE-101 sku"]);
  });

  it("finds every motor recorded for an old number", () =>
    expect(found("moss 415")).toEqual(["PIE-101 replaces", "PIE-202 replaces"]));

  it("puts the motor of that stock number before the one that replaces it", () =>
    expect(found("PIE-202")).toEqual(["PIE-202 sku", "MOSS-909 replaces"]));

  it("gives the number as the catalogue writes it", () =>
    expect(findByNumber(numbers, "quill7")[0]?.number).toBe("QUILL-7"));

  it("finds nothing for part of a number, a slip of one character, or nothing at all", () => {
    for (const typed of ["PIE-10", "PIE-1011", "P1E-101", "", " - "]) expect(found(typed)).toEqual([]);
  });
});
