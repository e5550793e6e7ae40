import { describe, expect, test } from "vitest";
import { codeLetter, isCodeLetter, kvaBand, lockedRotorAmps } from "../../src/engineering/code-letters.ts";
import { auditNameplate } from "../../src/nameplate/audit.ts";

// NEMA MG 1 10.37.2, the same as NFPA 70 (NEC) Table 430.7(B): locked-rotor kVA per hp, both limits as
// printed. Some pages misprint H with J's band or shift every letter by one; these are the standard's.
const printed: readonly (readonly [letter: string, from: number, to: number])[] = [
  ["A", 0, 3.14],
  ["B", 3.15, 3.54],
  ["C", 3.55, 3.99],
  ["D", 4.0, 4.49],
  ["E", 4.5, 4.99],
  ["F", 5.0, 5.59],
  ["G", 5.6, 6.29],
  ["H", 6.3, 7.09],
  ["J", 7.1, 7.99],
  ["K", 8.0, 8.99],
  ["L", 9.0, 9.99],
  ["M", 10.0, 11.19],
  ["N", 11.2, 12.49],
  ["P", 12.5, 13.99],
  ["R", 14.0, 15.99],
  ["S", 16.0, 17.99],
  ["T", 18.0, 19.99],
  ["U", 20.0, 22.39],
];

describe("locked-rotor code letters", () => {
  test.each(printed)("%s runs from %s to %s kVA per hp", (letter, from, to) => {
    expect([codeLetter(from), codeLetter(to)]).toEqual([letter, letter]);
  });

  test("V starts at 22.4 and has no upper limit", () => {
    expect([codeLetter(22.4), codeLetter(60)]).toEqual(["V", "V"]);
  });

  test("I, O and Q are not used, and a label that shows one is doubted", () => {
    for (const letter of ["I", "O", "Q"]) {
      expect(isCodeLetter(letter)).toBe(false);
      expect(auditNameplate({ kvaCode: letter })).toMatchObject([
        { check: "code-letter", severity: "doubtful" },
      ]);
    }
    for (const [letter] of printed) expect(auditNameplate({ kvaCode: letter })).toEqual([]);
  });

  test("middle of G, 10 hp, 460 V three-phase: about 59.5 kVA and 75 A (public starting-current calculator)", () => {
    const { from } = kvaBand("G");
    const middle = (from + 6.29) / 2;
    expect(middle * 10).toBeCloseTo(59.5, 0);
    expect(lockedRotorAmps(middle, 10, 460, 3)).toBeCloseTo(75, 0);
  });
});
