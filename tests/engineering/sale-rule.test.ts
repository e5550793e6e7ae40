import { describe, expect, test } from "vitest";
import { judgeSale, type SaleQuestion } from "../../src/engineering/sale-rule.ts";

const question: SaleQuestion = {
  totalHp: 1.65,
  speedKind: "single",
  efficiencyPct: undefined,
  madeOn: undefined,
  phase: 1,
  on: "2026-12-01",
};

describe("a motor of unknown date", () => {
  test("is free until its band's date has passed, then the desk looks", () => {
    expect(judgeSale({ ...question, on: "2025-09-29" }).kind).toBe("not-yet-in-force");
    expect(judgeSale({ ...question, on: "2025-09-30" }).kind).toBe("date-unknown");
    expect(judgeSale({ ...question, totalHp: 1 }).kind).toBe("not-yet-in-force");
  });

  test("is free whatever its date when it has what the band needs", () => {
    expect(judgeSale({ ...question, speedKind: "variable" }).kind).toBe("meets");
    expect(judgeSale({ ...question, totalHp: 0.4, efficiencyPct: 72 }).kind).toBe("meets");
  });
});

describe("a motor made after the date", () => {
  const late = { ...question, madeOn: "2026-01-15" };

  test("three-phase: scope uncertain, the desk decides", () => {
    expect(judgeSale({ ...late, phase: 3 }).kind).toBe("scope-unclear");
    expect(judgeSale({ ...late, phase: 3, madeOn: "2024-01-15" }).kind).toBe("made-before");
  });

  test("without the property that decides: not known", () => {
    expect(judgeSale({ ...late, speedKind: undefined }).kind).toBe("property-unknown");
    expect(judgeSale({ ...late, totalHp: 0.4 }).kind).toBe("property-unknown");
  });
});

test("without total hp there is no band, above 5 no standard", () => {
  expect(judgeSale({ ...question, totalHp: undefined }).kind).toBe("total-hp-unknown");
  expect(judgeSale({ ...question, totalHp: 5.2 }).kind).toBe("no-standard");
});
