import { describe, expect, test } from "vitest";
import { tableCurrentAmps } from "../../src/engineering/circuits.ts";
import { impliedEfficiencyTimesPowerFactor } from "../../src/engineering/power.ts";
import { balanceBand } from "../../src/nameplate/audit/checks/power-balance.ts";
import { auditNameplate } from "../../src/nameplate/audit.ts";

// NFPA 70 (National Electrical Code) Table 430.248, full-load currents of single-phase motors, amperes.
// Copied from public copies of the table that agree with each other (1999 to 2023 editions).
const singlePhase: readonly (readonly [
  hp: number,
  at115: number,
  at200: number,
  at208: number,
  at230: number,
])[] = [
  [1 / 6, 4.4, 2.5, 2.4, 2.2],
  [1 / 4, 5.8, 3.3, 3.2, 2.9],
  [1 / 3, 7.2, 4.1, 4.0, 3.6],
  [1 / 2, 9.8, 5.6, 5.4, 4.9],
  [3 / 4, 13.8, 7.9, 7.6, 6.9],
  [1, 16, 9.2, 8.8, 8.0],
  [1.5, 20, 11.5, 11.0, 10],
  [2, 24, 13.8, 13.2, 12],
  [3, 34, 19.6, 18.7, 17],
  [5, 56, 32.2, 30.8, 28],
  [7.5, 80, 46.0, 44.0, 40],
  [10, 100, 57.5, 55.0, 50],
];

// NFPA 70 (NEC) Table 430.250, three-phase motors. One chart in circulation still prints an older edition's
// lower figures for 1/2 to 1-1/2 hp (1 hp at 230 V: 3.6 A); four copies agree on these.
const threePhase: readonly (readonly [
  hp: number,
  at200: number,
  at208: number,
  at230: number,
  at460: number,
])[] = [
  [1 / 2, 2.5, 2.4, 2.2, 1.1],
  [3 / 4, 3.7, 3.5, 3.2, 1.6],
  [1, 4.8, 4.6, 4.2, 2.1],
  [1.5, 6.9, 6.6, 6.0, 3.0],
  [2, 7.8, 7.5, 6.8, 3.4],
  [3, 11.0, 10.6, 9.6, 4.8],
  [5, 17.5, 16.7, 15.2, 7.6],
  [7.5, 25.3, 24.2, 22, 11],
  [10, 32.2, 30.8, 28, 14],
];

describe("NEC Table 430.248", () => {
  test.each(singlePhase)("gives the current of %s hp, single-phase", (hp, at115, at200, at208, at230) => {
    expect([115, 200, 208, 230].map((volts) => tableCurrentAmps(hp, volts, 1))).toEqual([
      at115,
      at200,
      at208,
      at230,
    ]);
  });

  test("its columns serve 110 to 120 and 220 to 240 V (note to the table)", () => {
    expect([110, 120].map((volts) => tableCurrentAmps(1, volts, 1))).toEqual([16, 16]);
    expect([220, 240].map((volts) => tableCurrentAmps(1, volts, 1))).toEqual([8, 8]);
    expect(tableCurrentAmps(1, 277, 1)).toBeUndefined();
  });

  const residential = singlePhase.filter(([hp]) => hp >= 0.5 && hp <= 3);
  test.each(residential)(
    "a label that prints the table's current for %s hp is not doubted",
    (hp, at115, _at200, _at208, at230) => {
      expect(
        auditNameplate({ hp, serviceFactor: 1, phase: 1, volts: [115, 230], amps: [at115, at230] }),
      ).toEqual([]);
    },
  );

  test.each(residential)(
    "three times the table's current for %s hp is doubted",
    (hp, _at115, _at200, _at208, at230) => {
      const doubts = auditNameplate({ hp, serviceFactor: 1, phase: 1, volts: [230], amps: [3 * at230] });
      expect(doubts.flatMap(({ ratings }) => ratings)).toContain("amps");
    },
  );

  test("efficiency times power factor that the table implies lies inside the audit's band", () => {
    // Rounded figures derived from the table at 230 V, from 0.331 at 1/2 hp to 0.572 at 3 hp.
    for (const [hp, , , , at230] of residential) {
      const product = impliedEfficiencyTimesPowerFactor(hp, 230, at230);
      expect(product).toBeGreaterThan(balanceBand.low);
      expect(product).toBeLessThan(balanceBand.high);
    }
  });
});

describe("NEC Table 430.250", () => {
  test.each(threePhase)("gives the current of %s hp, three-phase", (hp, at200, at208, at230, at460) => {
    expect([200, 208, 230, 460].map((volts) => tableCurrentAmps(hp, volts, 3))).toEqual([
      at200,
      at208,
      at230,
      at460,
    ]);
  });

  test.each(threePhase.filter(([hp]) => hp <= 3))(
    "a three-phase label that prints the table's current for %s hp is not doubted",
    (hp, _at200, _at208, at230, at460) => {
      expect(
        auditNameplate({ hp, serviceFactor: 1, phase: 3, volts: [230, 460], amps: [at230, at460] }),
      ).toEqual([]);
    },
  );
});
