import { describe, expect, test } from "vitest";
import { auditNameplate } from "../../src/nameplate/audit.ts";
import { nameplateSchema } from "../../src/nameplate/vocabulary.ts";
import { drawnRatings, sampleLabel, sampleRows } from "../../src/pictures/label/sample.ts";
import { labelPicture, numberedLabel } from "../../src/pictures/label.ts";
import { colours } from "../../src/pictures/style.ts";
import { knowledge } from "../conversation/knowledge.ts";
import { wording } from "./examples.ts";
import { elements, placedWords } from "./placed-words.ts";

describe("the figures on the drawn label teach nothing false", () => {
  const { hp, serviceFactor, totalHp, volts, amps, serviceFactorAmps, rpm, hz, kw } = sampleLabel;

  test("they are ratings, and nothing in them is doubtful", () => {
    expect(() => nameplateSchema.parse(sampleLabel)).not.toThrow();
    expect(auditNameplate(sampleLabel)).toEqual([]);
  });

  // Total horsepower = hp x service factor: U.S. EPA data dictionary of the pool pump data set.
  test("total horsepower is horsepower times service factor", () =>
    expect(hp * serviceFactor).toBeCloseTo(totalHp, 2));

  // 1 hp = 745.7 W: NIST SP 811, appendix B.8.
  test("kW is the same power as HP", () => expect((hp * 745.7) / 1000).toBeCloseTo(kw, 2));

  // A dual-voltage winding in series takes half the current of one in parallel (textbook).
  test("amps halve as volts double", () => {
    expect(volts[1] / volts[0]).toBe(2);
    expect(amps[0] / amps[1]).toBe(2);
    expect(serviceFactorAmps[0] / serviceFactorAmps[1]).toBe(2);
  });

  // Synchronous speed = 120 f / poles (textbook); induction motors slip some percent behind it.
  test("the speed is that of a two-pole motor", () => {
    const slip = 1 - rpm[0] / ((120 * hz[0]) / 2);
    expect(slip).toBeGreaterThan(0);
    expect(slip).toBeLessThan(0.1);
  });

  test("what is printed reads back as the same values", () => {
    for (const { rating, caption, value } of sampleRows.flat()) {
      const read = knowledge.understand(`${caption} ${value}`).reading.readings;
      expect(
        read.map((one) => [one.rating, one.value]),
        caption,
      ).toContainEqual([rating, sampleLabel[rating]]);
    }
  });
});

describe("the asked-for rating", () => {
  const marks = (svg: string) => elements(svg, "rect").filter(({ stroke }) => stroke === colours.signal);

  test.each(drawnRatings)("%s is marked, alone, by number and outline as well as by colour", (rating) => {
    const picture = labelPicture([rating], wording);
    expect(marks(picture.svg)).toHaveLength(1);
    const { value } = sampleRows.flat().find((field) => field.rating === rating)!;
    const [mark] = marks(picture.svg);
    const inside = placedWords(picture).filter(
      ({ left, right, baseline }) =>
        left > Number(mark!["x"]) &&
        right < Number(mark!["x"]) + Number(mark!["width"]) &&
        baseline > Number(mark!["y"]) &&
        baseline < Number(mark!["y"]) + Number(mark!["height"]),
    );
    expect(inside.map(({ text }) => text)).toContain(value);
    expect(placedWords(picture).filter(({ text }) => text === "1" && rating !== "phase")).toHaveLength(
      rating === "phase" ? 0 : 3,
    );
  });

  test("several are told apart by number, in the order they were asked", () => {
    const picture = labelPicture(["frame", "hp"], wording);
    const lines = placedWords(picture).filter(({ top }) => top > 340);
    const legend = lines.map(({ text }) => text).join(" ");
    expect(legend).toMatch(/1 FR, also FRAME.* 2 HP, also H\.P\./);
    expect(picture.alt).toContain("frame, horsepower");
  });
});

test("the numbered label numbers every entry once", () => {
  const numbers = placedWords(numberedLabel(drawnRatings, wording))
    .filter(({ fill }) => fill === colours.white)
    .map(({ text }) => Number(text));
  expect(numbers).toEqual(drawnRatings.map((_, index) => index + 1));
});
