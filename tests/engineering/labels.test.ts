import { describe, expect, test } from "vitest";
import { frameParts, impliedMount, isKnownFrame } from "../../src/engineering/frames.ts";
import { labelTotalHp } from "../../src/engineering/power.ts";
import { polesFromRpm, slip } from "../../src/engineering/speed.ts";
import { supplySystem } from "../../src/engineering/voltage.ts";

describe("total horsepower of a label", () => {
  test("the printed figure wins over hp x service factor", () => {
    expect(labelTotalHp({ hp: 0.75, serviceFactor: 1.67, totalHp: 1.25 })).toBe(1.25);
    expect(labelTotalHp({ hp: 1.5, serviceFactor: 1.1 })).toBe(1.65);
  });

  test("hp alone does not tell it", () => {
    expect(labelTotalHp({ hp: 1.5 })).toBeUndefined();
    expect(labelTotalHp({ serviceFactor: 1.5 })).toBeUndefined();
  });
});

describe("frames", () => {
  test("a designation is body and letters", () => {
    expect(frameParts("56Y")).toEqual({ body: 56, letters: "Y" });
    expect(frameParts("145TC")).toEqual({ body: 145, letters: "TC" });
    // NEMA MG 1 Part 4 (from memory): a letter before the number is the maker's own.
    expect(frameParts("S56Y")).toEqual({ body: 56, letters: "Y" });
    expect(frameParts("Y56")).toBeUndefined();
    expect(frameParts("")).toBeUndefined();
  });

  test("Z behind the letter leaves the shaft open", () => {
    expect(impliedMount("56CZ")).toEqual({ face: "round" });
  });

  test("65 and 84 are no bodies, 48 and 56 are", () => {
    expect(["48Y", "56", "65Y", "84Y"].map(isKnownFrame)).toEqual([true, true, false, false]);
  });
});

describe("speeds", () => {
  test("no pole count explains a speed between the bands", () => {
    expect([2850, 3650, 2500, 1500].map((rpm) => polesFromRpm(rpm, 60))).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test("slip is negative above synchronous speed", () => {
    expect(slip(3450, 50, 2)).toBeLessThan(0);
  });
});

test("what people call 110, 115, 220 or 230 is a 120 or 240 V system", () => {
  expect([110, 115, 120, 208, 220, 230, 240, 480, 160].map(supplySystem)).toEqual([
    120,
    120,
    120,
    208,
    240,
    240,
    240,
    480,
    undefined,
  ]);
});
