import { describe, expect, test } from "vitest";
import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";
import { judge } from "../judging.ts";

const judged = (old: Nameplate, fresh: Nameplate) => judge("total-horsepower", { old }, fresh);

describe("total horsepower", () => {
  test("1.5 hp up-rated (x 1.10) stands in for 1.0 hp full-rated (x 1.65): both 1.65 (printed on a trade page)", () => {
    const finding = judged({ hp: 1, serviceFactor: 1.65 }, { hp: 1.5, serviceFactor: 1.1 });
    expect(finding).toMatchObject({
      outcome: "holds",
      reason: "total-horsepower.up-rated-for-full-rated",
      values: { oldTotalHp: 1.65, newTotalHp: 1.65, oldHp: 1, newHp: 1.5 },
    });
  });

  test("the words full-rated and up-rated part at a service factor of 1.27 (common practice, no source)", () => {
    const reason = (old: Nameplate, fresh: Nameplate) => judged(old, fresh).reason.split(".")[1];
    expect(reason({ hp: 1.5, serviceFactor: 1.1 }, { hp: 1, serviceFactor: 1.65 })).toBe(
      "full-rated-for-up-rated",
    );
    expect(reason({ hp: 1.3, serviceFactor: 1.27 }, { hp: 1.5, serviceFactor: 1.1 })).toBe(
      "matches-other-hp",
    );
    expect(reason({ hp: 1.29, serviceFactor: 1.28 }, { hp: 1.5, serviceFactor: 1.1 })).toBe(
      "up-rated-for-full-rated",
    );
    expect(reason({ hp: 1, serviceFactor: 1.65 }, { totalHp: 1.65 })).toBe("matches");
  });

  test("the same hp printed on both labels is not the same motor: 1.0 x 1.65 against 1.0 x 1.10", () => {
    const fullRated = { hp: 1, serviceFactor: 1.65 };
    const upRated = { hp: 1, serviceFactor: 1.1 };
    expect(judged(fullRated, upRated).outcome).toBe("rules-out");
    expect(judged(upRated, fullRated).outcome).toBe("needs-work");
  });

  // U.S. EPA list of certified pool pumps: 2.5 x 1.04 printed 2.6; 0.75 x 1.67 printed 1.25; 3 x 1.32 printed 3.96.
  test.each([
    [2.5, 1.04, 2.6],
    [0.75, 1.67, 1.25],
    [3, 1.32, 3.96],
  ])("a label with %s hp x %s matches the published total %s", (hp, serviceFactor, totalHp) => {
    expect(judged({ hp, serviceFactor }, { totalHp }).outcome).toBe("holds");
    expect(judged({ totalHp }, { hp, serviceFactor }).outcome).toBe("holds");
  });

  // Limits 0.98 and 1.10, inclusive: common practice, no source.
  test.each([
    [1.65, 1.616, "rules-out"],
    [1.65, 1.617, "holds"],
    [0.92, 0.9016, "holds"],
    [0.67, 0.6566, "holds"],
    [1.65, 1.815, "holds"],
    [1.65, 1.816, "needs-work"],
    [1, 1.1, "holds"],
    [3, 3.3, "holds"],
    [0.5045, 0.55495, "holds"], // exactly 1.10, though the binary quotient is a hair above
  ])("old %s, new %s: %s", (old, fresh, outcome) => {
    expect(judged({ totalHp: old }, { totalHp: fresh }).outcome).toBe(outcome);
  });

  test("more power asks for an impeller and diffuser and for a look at filter and pipes", () => {
    const finding = judged({ totalHp: 1.65 }, { totalHp: 2.6 });
    expect(finding.work.map(({ key }) => key)).toEqual(["impeller-and-diffuser", "flow-limits"]);
  });

  test("a printed total wins over hp x service factor", () => {
    expect(judged({ hp: 1.5, serviceFactor: 1.65, totalHp: 1.65 }, { totalHp: 1.65 }).outcome).toBe("holds");
  });

  test("hp alone is not enough; a service factor is never assumed (NEMA MG 1 12.51 leaves pool motors out)", () => {
    expect(judged({ hp: 1.5 }, { totalHp: 1.65 })).toMatchObject({
      outcome: "not-known",
      reason: "total-horsepower.service-factor-unknown",
      needs: ["serviceFactor", "totalHp"],
    });
    expect(judged({ serviceFactor: 1.1 }, { totalHp: 1.65 }).needs).toEqual(["hp", "totalHp"]);
    expect(judged({}, { totalHp: 1.65 }).needs).toEqual(["hp", "serviceFactor", "totalHp"]);
    expect(judged({ totalHp: 1.65 }, { hp: 1.65 })).toMatchObject({ outcome: "not-known", needs: [] });
  });

  test("kW converts at 745.7 W (NIST SP 811) and says that it is a deduction", () => {
    const finding = judged({ kw: 1.11855, serviceFactor: 1.1 }, { hp: 1.5, serviceFactor: 1.1 });
    expect(finding).toMatchObject({ outcome: "holds", inferred: true, values: { oldTotalHp: 1.65 } });
  });
});
