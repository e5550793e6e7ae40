import { describe, expect, test } from "vitest";
import type { StockMotor } from "../../../src/matching/types.ts";
import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";
import { judge, stocked } from "../judging.ts";

const judged = (label: Nameplate, facts: Partial<StockMotor> = {}, on = "2026-06-01") =>
  judge("sale", { on }, stocked(label, facts));
const single = (totalHp: number): Nameplate => ({ totalHp, rpm: [3450], phase: 1 });

describe("10 CFR 431.485: bands by total horsepower and date of manufacture", () => {
  test.each([
    [0.5, "2025-09-29", "holds"],
    [1.0, "2027-09-27", "holds"],
    [1.0, "2027-09-28", "rules-out"],
    [1.149, "2025-10-01", "holds"],
    [1.15, "2025-09-28", "holds"],
    [1.15, "2025-09-29", "rules-out"],
    [1.65, "2026-01-25", "rules-out"],
    [5.0, "2025-09-29", "rules-out"],
    [5.01, "2026-01-01", "holds"],
  ])("%s total hp, single-speed, made %s: %s", (totalHp, madeOn, outcome) => {
    expect(judged(single(totalHp), { madeOn }, "2028-01-01").outcome).toBe(outcome);
  });

  test("two-speed is not variable-speed: Title 20 section 1602(g) wants steps of 100 rpm or finer", () => {
    const made = { madeOn: "2026-01-25" };
    expect(judged({ totalHp: 1.65, rpm: [3450, 1725] }, made).outcome).toBe("rules-out");
    expect(judged({ totalHp: 1.65, rpm: [3450, 600], speedKind: "variable" }, made).outcome).toBe("holds");
  });

  test.each([
    [68.9, "rules-out"],
    [69, "holds"],
    [undefined, "not-known"],
  ])("0.49 total hp at %s %% efficiency, made after the date: %s", (efficiencyPct, outcome) => {
    expect(judged(single(0.49), { madeOn: "2025-09-29", efficiencyPct }).outcome).toBe(outcome);
  });
});

describe("dates and scope that are not clear go to the desk", () => {
  test("no date in stock: free until the band's date has passed", () => {
    expect(judged(single(1.65), {}, "2025-09-29").outcome).toBe("holds");
    expect(judged(single(1.65), {}, "2025-09-30")).toMatchObject({
      outcome: "needs-work",
      reason: "sale.date-unknown",
    });
    expect(judged(single(1), {}, "2026-06-01").outcome).toBe("holds");
  });

  test("a variable-speed motor meets the rule whatever its date", () => {
    expect(judged({ totalHp: 1.65, speedKind: "variable" }, {}, "2026-06-01").outcome).toBe("holds");
  });

  test("three-phase motors may lie outside 10 CFR 431.481(b)", () => {
    const threePhase: Nameplate = { ...single(1.65), phase: 3 };
    expect(judged(threePhase, { madeOn: "2026-01-25" })).toMatchObject({
      outcome: "needs-work",
      reason: "sale.scope-unclear",
    });
    expect(judged(threePhase, { madeOn: "2025-09-28" }).outcome).toBe("holds");
  });
});
