import { describe, expect, test } from "vitest";
import {
  apparentVa,
  impliedEfficiencyTimesPowerFactor,
  inputWatts,
  inputWattsFromEfficiency,
} from "../../src/engineering/power.ts";
import { runningCost } from "../../src/engineering/running-cost.ts";
import { hpFromWatts, wattsFromHp } from "../../src/engineering/units.ts";

// Course figures take 746 W per hp, this project 745.7; hence the tolerances of a few watts.

describe("U.S. Army correspondence course IT0348, motor efficiency", () => {
  test("10 hp, 400 V, 20 A: 8000 W in, 93.25 percent", () => {
    expect(apparentVa(400, 20)).toBe(8000);
    expect(100 * impliedEfficiencyTimesPowerFactor(10, 400, 20)).toBeCloseTo(93.25, 0);
  });

  test("5 hp at 74.6 percent takes 5000 W", () => {
    expect(Math.abs(inputWattsFromEfficiency(5, 74.6) - 5000)).toBeLessThan(5);
  });

  test("4 hp at 80 percent takes 3730 W", () => {
    expect(Math.abs(inputWattsFromEfficiency(4, 80) - 3730)).toBeLessThan(5);
  });

  test("3 hp, 220 V, 15 A: 2238 W out, 3300 W in, so 67.8 percent (the course misprints 37.8) and 4.42 hp in", () => {
    expect(Math.abs(wattsFromHp(3) - 2238)).toBeLessThan(2);
    expect(inputWatts(220, 15, 1)).toBe(3300);
    expect(100 * impliedEfficiencyTimesPowerFactor(3, 220, 15)).toBeCloseTo(67.8, 0);
    expect(hpFromWatts(3300)).toBeCloseTo(4.42, 1);
  });
});

describe("other printed examples", () => {
  test("50 hp at 93 percent: 40,108 W in, 2808 W lost (electrakit.com)", () => {
    const watts = inputWattsFromEfficiency(50, 93);
    expect(Math.abs(watts - 40_108)).toBeLessThan(20);
    expect(Math.abs(watts - wattsFromHp(50) - 2808)).toBeLessThan(5);
  });

  test("10 hp at 92 percent: 8109 W in, 649 W lost (calculatorhub.com)", () => {
    const watts = inputWattsFromEfficiency(10, 92);
    expect(Math.abs(watts - 8109)).toBeLessThan(5);
    expect(Math.abs(watts - wattsFromHp(10) - 649)).toBeLessThan(2);
  });

  test("1/3 hp, 115 V, 6.6 A, power factor 0.62: 759 VA, 470 W, 52.3 percent (engineering note on small motors)", () => {
    expect(apparentVa(115, 6.6)).toBeCloseTo(759, 9);
    const watts = inputWatts(115, 6.6, 0.62);
    expect(Math.abs(watts - 470)).toBeLessThan(1);
    expect((100 * wattsFromHp(0.33)) / watts).toBeCloseTo(52.3, 0);
  });
});

describe("a year's energy", () => {
  test("10.5 kWh a day is about 3,800 kWh a year (Home Energy magazine, 2000)", () => {
    const year = runningCost(
      { kw: 10.5, from: "efficiency", assumptions: [] },
      { hoursPerDay: 1, pricePerKwh: 0.1 },
    );
    expect(Math.abs(year.kwhPerYear - 3800)).toBeLessThan(50);
  });

  test("600 kWh at 12 cents is just over 70 dollars (utility page on pool pumps)", () => {
    const month = runningCost(
      { kw: 600 / 365, from: "efficiency", assumptions: [] },
      { hoursPerDay: 1, pricePerKwh: 0.12 },
    );
    expect(month.usdPerYear).toBeGreaterThan(70);
    expect(month.usdPerYear).toBeLessThan(75);
  });
});
