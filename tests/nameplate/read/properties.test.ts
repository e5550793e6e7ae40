import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";
import { type RatingName, ratings, showRating } from "../../../src/nameplate/vocabulary.ts";
import { distractors, nameplates, rendering } from "./plates.ts";

const read = (text: string) => valuesOf(readMessage(text));
const fixed = { seed: 20261125 };

describe("whatever the rendering", () => {
  test("a label reads back to the same nameplate in any order, layout, separators and case", () => {
    const rendered = nameplates.chain((plate) => rendering(plate).map((text) => ({ plate, text })));
    fc.assert(
      fc.property(rendered, ({ plate, text }) => {
        expect(read(text), text).toEqual({ nameplate: plate, site: {}, unreadable: [] });
      }),
      { ...fixed, numRuns: 600 },
    );
  });

  test("reading is idempotent on its own echo", () => {
    fc.assert(
      fc.property(nameplates, (plate) => {
        const lines = Object.entries(plate).map(([key, value]) => {
          const name = key as RatingName;
          return `${ratings[name].title}: ${showRating(name, value as never)}`;
        });
        const echo = lines.join("\n");
        expect(read(echo), echo).toEqual({ nameplate: plate, site: {}, unreadable: [] });
      }),
      { ...fixed, numRuns: 200 },
    );
  });

  test("a sentence about something else changes no reading, before or after", () => {
    const labelled = fc.record({
      plate: nameplates,
      distractor: fc.constantFrom(...distractors),
      first: fc.boolean(),
    });
    fc.assert(
      fc.property(labelled, ({ plate, distractor, first }) => {
        const label = Object.entries(plate)
          .map(
            ([key, value]) =>
              `${ratings[key as RatingName].title}: ${showRating(key as RatingName, value as never)}`,
          )
          .join(", ");
        const text = first ? `${distractor} ${label}` : `${label}. ${distractor}`;
        expect(read(text).nameplate, text).toEqual(plate);
      }),
      { ...fixed, numRuns: 250 },
    );
  });

  test("look-alike characters in figures are resolved", () => {
    const worn = (text: string) => text.replaceAll("1", "l").replaceAll("0", "O");
    const plain = fc.record({
      volts: fc.constantFrom("115/230", "208-230", "230"),
      rpm: fc.constantFrom("3450", "1725"),
      amps: fc.constantFrom("10.4", "19.2/9.6", "12.0/6.0"),
    });
    fc.assert(
      fc.property(plain, ({ volts, rpm, amps }) => {
        const straight = `VOLTS ${volts} RPM ${rpm} AMPS ${amps}`;
        const text = `VOLTS ${worn(volts)} RPM ${worn(rpm)} AMPS ${worn(amps)}`;
        expect(read(text), text).toEqual(read(straight));
      }),
      fixed,
    );
  });
});

describe("whatever the input", () => {
  const pieces = fc.array(
    fc.oneof(
      fc.string({ unit: "binary", maxLength: 12 }),
      fc.constantFrom(
        "HP",
        "1.5",
        "SF",
        "115/230",
        "V",
        "\n",
        "\t",
        "not",
        "?",
        "no wait",
        "can't read",
        "56Y",
        "one",
        "and a half",
        "l.5",
        "-",
        "/",
        "$",
        "breaker",
        "20",
        "amps",
        "¿",
        "½",
      ),
    ),
    { maxLength: 40 },
  );

  test("reading never throws, and every span points at its words", () => {
    fc.assert(
      fc.property(
        pieces.map((parts) => parts.join(" ")),
        (text) => {
          const { readings, unreadable } = readMessage(text, { expecting: ["hp", "frame", "amps"] });
          for (const { words, span } of [...readings, ...unreadable])
            expect(text.slice(span.start, span.end)).toBe(words);
        },
      ),
      { ...fixed, numRuns: 600 },
    );
  });

  test("every value satisfies the vocabulary's schema", () => {
    fc.assert(
      fc.property(
        pieces.map((parts) => parts.join(" ")),
        (text) => {
          for (const { rating, value } of readMessage(text).readings)
            expect(
              ratings[rating].schema.safeParse(value).success,
              `${rating} ${JSON.stringify(value)} in ${JSON.stringify(text)}`,
            ).toBe(true);
        },
      ),
      { ...fixed, numRuns: 600 },
    );
  });

  test("words that are also names of the language's own objects are words like others", () => {
    for (const word of Object.getOwnPropertyNames(Object.prototype))
      for (const text of [word, `hp ${word}`, `one ${word} five`, `HP,${word},V\n1,2,230`])
        for (const { value } of readMessage(text, { expecting: ["phase", "breakerPoles", "shaft"] }).readings)
          expect(["number", "string", "object"], text).toContain(typeof value);
  });

  test.each([
    ["empty", ""],
    ["blank", " \n\t "],
    ["control characters", "\u0000\u0007\u001b[31m"],
    ["a lone surrogate", "\ud83d"],
    ["markup", "<script>alert(1)</script><b>"],
    ["another script", "мотор ポンプ 电机"],
  ])("%s reads as nothing", (_, text) => {
    expect(readMessage(text)).toEqual({ readings: [], unreadable: [] });
  });
});
