import { describe, expect, test } from "vitest";
import { totalHorsepower } from "../../src/engineering/power.ts";
import { auditNameplate } from "../../src/nameplate/audit.ts";

describe("total horsepower = hp x service factor", () => {
  test("1.5 hp x 1.65 = 2.475 (U.S. EPA data dictionary of the pool pump list)", () => {
    expect(totalHorsepower(1.5, 1.65)).toBeCloseTo(2.475, 9);
  });

  test("1 hp x 1.15 = 1.15 (handbook page on service factor, engineeringtoolbox.com)", () => {
    expect(totalHorsepower(1, 1.15)).toBe(1.15);
  });

  test("a full-rated 1.0 x 1.65 equals an up-rated 1.5 x 1.10 (public trade page; common practice)", () => {
    expect(totalHorsepower(1, 1.65)).toBe(1.65);
    expect(totalHorsepower(1.5, 1.1)).toBe(1.65);
  });

  // Rows of the U.S. EPA list "ENERGY STAR Certified Pool Pumps" (data set 2ppn-v3hp). Published totals are
  // cut to two decimals; 0.33 x 1.04 = 0.343 stands there as 0.33.
  const rows = [
    { hp: 2.5, serviceFactor: 1.04, totalHp: 2.6, rpm: [3450], speedKind: "two" },
    { hp: 0.75, serviceFactor: 1.67, totalHp: 1.25, rpm: [1750], speedKind: "two" },
    { hp: 3, serviceFactor: 1.32, totalHp: 3.96, rpm: [3450], speedKind: "variable" },
    { hp: 0.25, serviceFactor: 1.1, totalHp: 0.27, rpm: [1725], speedKind: "two" },
    { hp: 0.33, serviceFactor: 1.04, totalHp: 0.33, rpm: [1725], speedKind: "two" },
  ] as const;

  test.each(rows)(
    "$hp hp x $serviceFactor agrees with the published $totalHp",
    ({ hp, serviceFactor, totalHp }) => {
      expect(Math.abs(totalHorsepower(hp, serviceFactor) - totalHp)).toBeLessThan(0.015);
    },
  );

  test.each(rows)("a published row ($hp hp, $rpm rpm) is not doubted", ({ rpm, ...row }) => {
    expect(auditNameplate({ ...row, rpm: [...rpm] })).toEqual([]);
  });
});
