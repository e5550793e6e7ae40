import { describe, expect, test } from "vitest";
import { inputPower, runningCost, slowSpeedSaving } from "../../src/engineering/running-cost.ts";

describe("input power", () => {
  test("comes from total hp and efficiency when the label prints one", () => {
    const power = inputPower({ totalHp: 1.65, efficiencyPct: 75, volts: 230, amps: 9.6 });
    expect(power).toMatchObject({ from: "efficiency", assumptions: [{ name: "loadHp", value: 1.65 }] });
    expect(power?.kw).toBeCloseTo(1.64, 2);
  });

  test("else from volts and amps, and says that the power factor is assumed", () => {
    const power = inputPower({ volts: 230, amps: 10 });
    expect(power).toMatchObject({
      from: "volts-and-amps",
      assumptions: [{ name: "powerFactor", basis: "assumed" }],
    });
    expect(power!.kw).toBeLessThan(2.3);
  });

  test("a printed power factor is used and called stated", () => {
    expect(inputPower({ volts: 230, amps: 10, powerFactor: 0.9 })).toMatchObject({
      kw: 2.07,
      assumptions: [{ name: "powerFactor", value: 0.9, basis: "stated" }],
    });
  });

  test("three-phase takes the square root of three more", () => {
    const single = inputPower({ volts: 230, amps: 10, powerFactor: 0.9 })!.kw;
    expect(inputPower({ volts: 230, amps: 10, powerFactor: 0.9, phase: 3 })!.kw / single).toBeCloseTo(
      1.732,
      3,
    );
  });

  test("is not invented from horsepower alone", () => {
    expect(inputPower({ totalHp: 1.65 })).toBeUndefined();
    expect(inputPower({ volts: 230 })).toBeUndefined();
  });
});

describe("a year's cost", () => {
  const power = inputPower({ volts: 230, amps: 10, powerFactor: 1 })!;

  test("is kW x hours x 365 x price", () => {
    const cost = runningCost(power, { hoursPerDay: 10, pricePerKwh: 0.31 });
    expect(cost.kwhPerYear).toBeCloseTo(2.3 * 10 * 365, 6);
    expect(cost.usdPerYear).toBeCloseTo(2.3 * 10 * 365 * 0.31, 6);
  });

  test("shows each figure it rests on, stated or assumed", () => {
    const basis = (usage: Parameters<typeof runningCost>[1]) =>
      Object.fromEntries(runningCost(power, usage).assumptions.map(({ name, basis }) => [name, basis]));
    expect(basis({})).toMatchObject({ hoursPerDay: "assumed", pricePerKwh: "assumed" });
    expect(basis({ hoursPerDay: 6 })).toMatchObject({ hoursPerDay: "stated", pricePerKwh: "assumed" });
  });
});

describe("half speed for the same water", () => {
  const full = runningCost(inputPower({ volts: 230, amps: 10, powerFactor: 1 })!, {
    hoursPerDay: 8,
    pricePerKwh: 0.2,
  });

  test("runs twice as long and saves up to 61 percent, not the seven-eighths of theory", () => {
    const saving = slowSpeedSaving(full);
    expect(saving.slowHoursPerDay).toBe(16);
    expect(saving.upToUsdPerYear / full.usdPerYear).toBeCloseTo(0.61, 2);
  });

  test("cannot run longer than the day", () => {
    const long = runningCost({ kw: 2, from: "efficiency", assumptions: [] }, { hoursPerDay: 18 });
    expect(slowSpeedSaving(long).slowHoursPerDay).toBe(24);
  });

  test("saves nothing at full speed", () => {
    expect(slowSpeedSaving(full, 1).upToUsdPerYear).toBeCloseTo(0, 9);
  });
});
