import { describe, expect, test } from "vitest";
import { impliedMount, shaftHeightIn } from "../../src/engineering/frames.ts";
import {
  is208System,
  supplySystem,
  voltageDeviation,
  withinVoltageBand,
} from "../../src/engineering/voltage.ts";

describe("NEMA MG 1 12.44: within 10 percent of rated voltage", () => {
  test("230 V motors: 207 to 253 V (industry article on nameplate precision)", () => {
    expect([206, 207, 253, 254].map((supply) => withinVoltageBand(230, supply))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  test("460 V motors: 414 to 506 V (engplatform.com)", () => {
    expect([413, 414, 506, 507].map((supply) => withinVoltageBand(460, supply))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  test("the limits belong to the band for every standard rating", () => {
    for (const rated of [110, 115, 120, 200, 208, 220, 230, 240, 380, 400, 415, 460, 480]) {
      expect(withinVoltageBand(rated, (rated * 9) / 10)).toBe(true);
      expect(withinVoltageBand(rated, (rated * 11) / 10)).toBe(true);
      expect(withinVoltageBand(rated, (rated * 9) / 10 - 0.5)).toBe(false);
      expect(withinVoltageBand(rated, (rated * 11) / 10 + 0.5)).toBe(false);
    }
  });
});

describe("system and rated voltages (NEMA MG 1 10.30 with ANSI C84.1)", () => {
  // 120 V systems carry 115 V motors, 208 V systems 200 V, 240 V systems 230 V, 480 V systems 460 V.
  test.each([
    [120, 115],
    [208, 200],
    [240, 230],
    [480, 460],
  ])("a %s V system suits a motor rated %s V", (system, rated) => {
    expect(withinVoltageBand(rated, system)).toBe(true);
    expect(supplySystem(system)).toBe(system);
    expect(supplySystem(rated)).toBe(system);
  });

  test("208 V lies just inside the band of a 230 V motor, so it is told apart", () => {
    expect(withinVoltageBand(230, 208)).toBe(true);
    expect(voltageDeviation(230, 208)).toBeLessThan(-0.09);
    expect([197, 198, 208, 219, 220].map(is208System)).toEqual([false, true, true, true, false]);
  });
});

describe("frame numbers (NEMA MG 1 Part 4, dimension D in inches)", () => {
  test.each([
    [42, 2.625],
    [48, 3.0],
    [56, 3.5],
    [145, 3.5],
    [213, 5.25],
  ])("frame %s stands %s in high", (frame, inches) => {
    expect(shaftHeightIn(frame)).toBe(inches);
  });

  test("C is keyed, J is threaded, both on the same round face (NEMA MG 1 Part 4 and 18.119 ff., sections from memory)", () => {
    expect(impliedMount("56C")).toEqual({ face: "round", shaft: "keyed" });
    expect(impliedMount("56J")).toEqual({ face: "round", shaft: "threaded" });
  });

  test("Y is taken as square and threaded (common practice, no source)", () => {
    expect(impliedMount("48Y")).toEqual({ face: "square", shaft: "threaded" });
    expect(impliedMount("56Y")).toEqual({ face: "square", shaft: "threaded" });
  });

  test("a frame without letters implies neither face nor shaft", () => {
    expect(impliedMount("56")).toEqual({});
  });
});
