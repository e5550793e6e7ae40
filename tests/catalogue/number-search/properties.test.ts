import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plainText } from "../../../src/catalogue/number-search/plain.ts";
import { createNumberSearch, type NumberResult } from "../../../src/catalogue/number-search.ts";
import { corruptions, editDistance, foldedText } from "./textbook.ts";

const runs = { seed: 2026, numRuns: 60 };
const searchOf = (numbers: readonly string[]) =>
  createNumberSearch(numbers.map((number) => ({ number, sku: `PIE-${number}` }))).search;

const offered = (result: NumberResult): readonly string[] => {
  if (result.kind === "found") return [result.number];
  return result.kind === "choose" ? result.candidates.map(({ number }) => number) : [];
};
/** Numbers with many near ones among them: few characters, most of them look-alikes. */
const crowded = fc.uniqueArray(
  fc.string({ unit: fc.constantFrom(..."0O17I5S68BAX"), minLength: 4, maxLength: 8 }),
  {
    minLength: 1,
    maxLength: 40,
  },
);
const sparse = fc.uniqueArray(
  fc.string({
    unit: fc.constantFrom(..."0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"),
    minLength: 7,
    maxLength: 12,
  }),
  { minLength: 1, maxLength: 40 },
);

describe("any number, any slip", () => {
  it("finds a number after every corruption of one character, or asks, unless a surer number is in the way", () => {
    const holds = fc.property(fc.oneof(crowded, sparse), fc.nat(), (numbers, which) => {
      const search = searchOf(numbers);
      const meant = numbers[which % numbers.length]!;
      for (const typed of corruptions(meant, [..."0O18BXQ"])) {
        const result = search(typed);
        if (result.kind === "many" || offered(result).includes(meant)) continue;
        const [surer] = offered(result);
        expect(surer, `${meant} typed as ${typed}`).toBeDefined();
        const alike = foldedText(surer ?? "") === foldedText(typed);
        expect(alike, `${meant} typed as ${typed} gave ${surer}`).toBe(true);
      }
    });
    fc.assert(holds, runs);
  });

  it("offers exactly the numbers one edit away when nothing is exact, alike, or a part", () => {
    const holds = fc.property(crowded, fc.nat(), fc.nat(), (numbers, which, slip) => {
      const meant = numbers[which % numbers.length]!;
      const all = [...corruptions(meant, [..."0O18BXQ"])];
      const typed = all[slip % all.length]!;
      const result = searchOf(numbers)(typed);
      const hows = result.kind === "choose" ? result.candidates.map(({ how }) => how) : [];
      if (result.kind === "found") hows.push(result.how);
      if (hows.length === 0 || hows.some((how) => how !== "near")) return;
      expect(new Set(offered(result))).toEqual(
        new Set(numbers.filter((one) => editDistance(one, typed) === 1)),
      );
    });
    fc.assert(holds, { ...runs, numRuns: 1500 });
  });

  it("calls exact only what has the same letters and digits, and then always", () => {
    const holds = fc.property(
      crowded,
      fc.string({ unit: fc.constantFrom(..."0O17I5S68BAX- "), maxLength: 9 }),
      (numbers, typed) => {
        const result = searchOf(numbers)(typed);
        const exact = numbers.filter((number) => number === plainText(typed));
        expect(result.kind === "found" && result.how === "exact" ? [result.number] : []).toEqual(exact);
      },
    );
    fc.assert(holds, { ...runs, numRuns: 2000 });
  });

  it("asks a question whose answers tell the candidates apart", () => {
    const holds = fc.property(
      crowded,
      fc.string({ unit: fc.constantFrom(..."017B8X"), minLength: 4, maxLength: 8 }),
      (numbers, typed) => {
        const result = searchOf(numbers)(typed);
        if (result.kind !== "choose") return;
        const { at, options } = result.separates;
        expect(options.length).toBeGreaterThan(1);
        expect(options.flatMap((option) => option.numbers).sort()).toEqual([...offered(result)].sort());
        for (const { character, numbers: own } of options) {
          for (const number of own) {
            expect(plainText(number).at(at.from === "start" ? at.position - 1 : -at.position) ?? "").toBe(
              character,
            );
          }
        }
      },
    );
    fc.assert(holds, { ...runs, numRuns: 1500 });
  });

  it("never throws, whatever is typed or stocked", () => {
    const anyText = fc.oneof(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.string({ unit: "grapheme", maxLength: 90 }),
    );
    const holds = fc.property(fc.array(anyText, { maxLength: 20 }), anyText, (numbers, typed) => {
      const search = searchOf(numbers);
      for (const one of [typed, ...numbers]) {
        expect(["none", "found", "choose", "many", "serial"]).toContain(search(one).kind);
      }
    });
    fc.assert(holds, { ...runs, numRuns: 300 });
  });
});

describe("the work of one search", () => {
  it("is cut short on stock that all looks alike, and then claims nothing", () => {
    const numbers = Array.from({ length: 2 ** 14 }, (_, n) =>
      n.toString(2).padStart(14, "0").replaceAll("1", "O"),
    );
    const search = searchOf(numbers);
    expect(search("O0O0O0O0O0O0O0")).toMatchObject({ kind: "found", how: "exact" });
    const result = search("Q0O0O0O0O0O0O0");
    expect(result.kind).toBe("many");
    if (result.kind === "many") expect(result.count).toBeLessThan(10_000);
  });

  it("claims nothing either when it has not looked at every look-alike, or every piece", () => {
    const worn = Array.from({ length: 2 ** 13 }, (_, n) =>
      n.toString(2).padStart(13, "0").replaceAll("1", "7").replaceAll("0", "1"),
    );
    expect(searchOf(worn)("I".repeat(13)).kind).toBe("many");
    const pieces = Array.from({ length: 100 }, (_, n) => `MOSS-7${100 + n}-K`);
    expect(searchOf(["MOSS-1000-K", ...pieces])("MOSS-1").kind).toBe("many");
  });

  it("is nothing for a text too long to be a number", () => {
    const search = searchOf(["QUILL-4821K"]);
    for (const typed of ["S/N ".repeat(1e6), " ".repeat(1e6), "no.".repeat(1e6), "\ufdfa".repeat(200)]) {
      expect(["none", "serial"]).toContain(search(typed).kind);
    }
  });
});
