import { describe, expect, test } from "vitest";
import type { Nameplate, Site } from "../../../src/nameplate/vocabulary.ts";
import { judge } from "../judging.ts";

const judged = (volts: number[], site: Site, old: Nameplate = {}) =>
  judge("supply", { old, site }, { volts });

describe("supply: the wired voltage is stated", () => {
  // NEMA MG 1 12.44: within 10 % of the rated voltage; 230 V gives 207 to 253 V.
  test.each([
    [[230], 253, "holds"],
    [[230], 253.1, "rules-out"],
    [[230], 220, "holds"],
    [[230], 206.9, "rules-out"],
    [[115], 126.5, "holds"],
    [[115], 126.6, "rules-out"],
    [[460], 506, "holds"],
    [[460], 414, "holds"],
    [[230], 240, "holds"],
    [[115], 120, "holds"],
    [[115, 230], 120, "holds"],
    [[115], 240, "rules-out"],
    [[230], 120, "rules-out"],
    [[200], 240, "rules-out"],
  ])("%j V on %s V %s", (volts, supplyVolts, outcome) => {
    expect(judged(volts, { supplyVolts }).outcome).toBe(outcome);
  });

  // 230 V on a 208 V supply sits at -9.6 %, inside the band only while the supply does not sag (ANSI C84.1).
  test.each([
    [[230], 208, "needs-work"],
    [[115, 230], 208, "needs-work"],
    [[208, 230], 208, "holds"],
    [[115, 208, 230], 208, "holds"],
    [[200], 208, "holds"],
    [[200], 198, "holds"],
    [[200], 197.9, "holds"], // below the 208 V systems, but within the band of 200 V
    [[230], 198, "rules-out"],
    [[230], 219.9, "needs-work"],
    [[240], 219.9, "needs-work"],
    [[208], 219.9, "holds"],
    [[208], 220, "holds"],
  ])("%j V on a 208 V system at %s V %s", (volts, supplyVolts, outcome) => {
    expect(judged(volts, { supplyVolts }).outcome).toBe(outcome);
  });
});

describe("supply: not stated, so every supply the old plate allows is tried", () => {
  test("an old 115 V plate can only have had 120 V", () => {
    expect(judged([115, 230], {}, { volts: [115] }).outcome).toBe("holds");
    expect(judged([230], {}, { volts: [115] }).outcome).toBe("rules-out");
  });

  test("an old 230 V plate may have run on 208 or 240 V", () => {
    expect(judged([208, 230], {}, { volts: [230] }).outcome).toBe("holds");
    expect(judged([115], {}, { volts: [230] })).toMatchObject({
      outcome: "rules-out",
      reason: "supply.other-volts-all",
    });
    expect(judged([230], {}, { volts: [230] })).toMatchObject({
      outcome: "not-known",
      needs: ["breakerPoles", "supplyVolts"],
    });
  });

  test("an old 115/230 V plate says nothing for a single-voltage motor", () => {
    expect(judged([230], {}, { volts: [115, 230] }).outcome).toBe("not-known");
    expect(judged([115, 208, 230], {}, { volts: [115, 230] }).outcome).toBe("holds");
  });

  // One pole 120 V, two poles 208 or 240 V: common practice, no source.
  test("breaker poles narrow it down", () => {
    const old = { volts: [115, 230] };
    expect(judged([115, 230], { breakerPoles: 1 }, old).outcome).toBe("holds");
    expect(judged([230], { breakerPoles: 1 }, old).outcome).toBe("rules-out");
    expect(judged([208, 230], { breakerPoles: 2 }, old).outcome).toBe("holds");
    expect(judged([115], { breakerPoles: 2 }, old).outcome).toBe("rules-out");
    expect(judged([115, 230], { breakerPoles: 1 }).outcome).toBe("holds");
  });

  test("a 230 V plate on a single-pole breaker is a contradiction, and only the supply settles it", () => {
    expect(judged([115, 230], { breakerPoles: 1 }, { volts: [230] })).toMatchObject({
      outcome: "not-known",
      reason: "supply.contradiction",
      needs: ["supplyVolts"],
    });
  });

  test("480 V is tried for three-phase plates only", () => {
    expect(judged([230, 460], {}, { volts: [460], phase: 3 }).outcome).toBe("holds");
    expect(judged([230], {}, { volts: [460], phase: 3 }).outcome).toBe("rules-out");
  });
});
