import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseMotors } from "../../../src/catalogue/motors-csv.ts";
import { plainText } from "../../../src/catalogue/number-search/plain.ts";
import {
  createNumberSearch,
  numberFormatsSchema,
  stockNumbers,
} from "../../../src/catalogue/number-search.ts";
import { corruptions } from "./textbook.ts";

const demo = (name: string) => readFileSync(new URL(`../../../data/${name}`, import.meta.url), "utf8");
const formats = numberFormatsSchema.parse(JSON.parse(demo("number-formats.json")));
const entries = [...stockNumbers(parseMotors(demo("motors.csv")).motors)];
const { search, explain } = createNumberSearch(entries, formats);
const numbers = [...new Set(entries.map(({ number }) => number))];

describe("the formats of the demo's makers", () => {
  it("fit every number of the demo stock, and all of it identifies the motor", () => {
    expect(numbers.length).toBeGreaterThan(300);
    for (const number of numbers) {
      const read = explain(number);
      expect(read?.format.kind, number).toBe("model");
      expect(
        read?.parts.every(({ identifies }) => identifies),
        number,
      ).toBe(true);
    }
  });

  it("say which characters identify the motor", () =>
    expect(explain("thimble-k-806 batch 7f")).toMatchObject({
      format: { maker: "Umberthwaite Coilworks" },
      parts: [
        { text: "THIMBLE", identifies: true },
        { text: "K", identifies: true },
        { text: "806", identifies: true },
        { text: "BATCH7F", identifies: false, means: "casting of the body" },
      ],
    }));

  it.each([
    ["QUILL-103 mauve", "QUILL-103", "format"],
    ["TRIVET 136 issue 4", "TRIVET-136", "format"],
    ["MOSS-415-WW-203", "MOSS-415", "format"],
    ["QU1LL-103 mauve", "QUILL-103", "part"],
    ["QUILL-lO3 mauve", "QUILL-103", "look-alike"],
  ])("%s leads to %s", (typed, number, how) => {
    expect(search(typed)).toMatchObject({ kind: "found", number, how });
  });

  it.each(["HEN 001234", "HEN-0O1234", "2024 TOOT 00418", "umble kq 8812", "MOON 07 24"])(
    "%s is a serial number or date code",
    (typed) => expect(search(typed)).toMatchObject({ kind: "serial", by: "format" }),
  );
  it("give way to a number of the stock that looks alike", () => {
    const { search: within } = createNumberSearch([{ number: "HEN-8O1234", sku: "PIE-1" }], formats);
    expect(within("HEN-801234")).toMatchObject({ kind: "found", number: "HEN-8O1234" });
    expect(within("HEN-801235")).toMatchObject({ kind: "serial" });
  });
  it("know a serial number by its place behind the model number", () =>
    expect(search("TRIVET-136 HEN 001234")).toMatchObject({
      kind: "found",
      number: "TRIVET-136",
      how: "exact",
    }));

  it("let every number of the stock be found or asked about after one slip", () => {
    for (const number of numbers.filter((_, n) => n % 6 === 0)) {
      for (const typed of corruptions(plainText(number), [..."047AKX"])) {
        const result = search(typed);
        expect(["found", "choose", "many"], `${number} as ${typed}`).toContain(result.kind);
      }
    }
  });
});

describe("a file of formats", () => {
  const part = { means: "all of it", identifies: true, digits: [3, 3] };
  const format = {
    maker: "Bootjack & Ladle",
    name: "model",
    kind: "model",
    means: "three figures",
    parts: [part],
  };
  const parse = (changed: object) => numberFormatsSchema.safeParse([{ ...format, ...changed }]);

  it("is taken when sound", () => expect(parse({}).success).toBe(true));
  it.each([
    ["no part that identifies", { parts: [{ ...part, identifies: false }] }],
    ["a part without content", { parts: [{ means: "?", identifies: true }] }],
    ["a part with two contents", { parts: [{ ...part, letters: [1, 1] }] }],
    ["lengths the wrong way round", { parts: [{ ...part, digits: [3, 2] }] }],
    ["a word with a sign in it", { parts: [{ means: "?", identifies: true, words: ["A.*"] }] }],
    ["an unknown kind", { kind: "colour" }],
    [
      "parts of loose length that take long to compare",
      { parts: Array(4).fill({ ...part, digits: [1, 12] }) },
    ],
  ])("is refused with %s", (_, changed) => expect(parse(changed).success).toBe(false));
});
