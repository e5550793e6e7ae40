import { describe, expect, test } from "vitest";
import { extraSmallMinEfficiencyPct, judgeSale, saleBand } from "../../src/engineering/sale-rule.ts";

// 10 CFR 431.485 (88 FR 66966, 28 September 2023), text current on 20 June 2026: bands of total horsepower,
// and the day of manufacture from which each binds.

describe("size classes of 10 CFR 431.485", () => {
  test("below 0.5 total hp: 69 percent full-load efficiency, made from 2025-09-29", () => {
    expect(saleBand(0.49)).toMatchObject({ madeFrom: "2025-09-29", needs: "efficiency" });
    expect(extraSmallMinEfficiencyPct).toBe(69);
  });

  test("0.5 to below 1.15 total hp: variable speed, made from 2027-09-28", () => {
    for (const totalHp of [0.5, 1, 1.149]) {
      expect(saleBand(totalHp)).toMatchObject({ madeFrom: "2027-09-28", needs: "variable-speed" });
    }
  });

  test("1.15 to 5 total hp inclusive: variable speed, made from 2025-09-29", () => {
    for (const totalHp of [1.15, 1.65, 5]) {
      expect(saleBand(totalHp)).toMatchObject({ madeFrom: "2025-09-29", needs: "variable-speed" });
    }
  });

  test("above 5 total hp: no standard", () => {
    expect(saleBand(5.01)).toBeUndefined();
  });
});

describe("the date of manufacture decides, not the day of sale", () => {
  const single = { speedKind: "single", efficiencyPct: undefined, phase: 1, on: "2028-01-01" } as const;

  test.each([
    [1.15, "2025-09-28", "made-before"],
    [1.15, "2025-09-29", "fails"],
    [1, "2027-09-27", "made-before"],
    [1, "2027-09-28", "fails"],
  ])("a single-speed motor of %s total hp made on %s: %s", (totalHp, madeOn, kind) => {
    expect(judgeSale({ ...single, totalHp, madeOn }).kind).toBe(kind);
  });

  test("two speeds are not variable speed (definition as in California Title 20 section 1602(g))", () => {
    const question = { ...single, totalHp: 1.65, madeOn: "2026-01-01" };
    expect(judgeSale({ ...question, speedKind: "two" }).kind).toBe("fails");
    expect(judgeSale({ ...question, speedKind: "variable" }).kind).toBe("meets");
  });

  test("an extra-small motor needs 69 percent", () => {
    const question = { ...single, totalHp: 0.4, madeOn: "2026-01-01" };
    expect(judgeSale({ ...question, efficiencyPct: 69 }).kind).toBe("meets");
    expect(judgeSale({ ...question, efficiencyPct: 68.9 }).kind).toBe("fails");
  });
});
