import { describe, expect, test } from "vitest";
import { motorCircuit, nextStandardAmps, overloadPercent } from "../../src/engineering/circuits.ts";

// Worked examples that public sources print; only the figures they print are compared.

describe("branch circuit of one motor", () => {
  test("1 hp at 115 V: 16 A by the table, 20 A conductor (worked procedure on a public electrical forum)", () => {
    // NFPA 70 (NEC) 430.6(A), 430.22(A). The page's 14 AWG holds with 75 deg C terminals, Table 310.16.
    expect(motorCircuit(1, 115, 1)).toMatchObject({ tableAmps: 16, conductorMinAmps: 20, awg75C: 14 });
  });

  test("5 hp at 230 V: 35 A, 10 AWG at 75 C, 70 A breaker (electricianmath.com)", () => {
    // NEC 430.22(A), Table 310.16, 430.52.
    expect(motorCircuit(5, 230, 1)).toMatchObject({
      tableAmps: 28,
      conductorMinAmps: 35,
      awg75C: 10,
      breakerMaxAmps: 70,
      breakerNextStandardAmps: 70,
    });
  });

  test("7.5 hp at 230 V three-phase: 27.5 A, 10 AWG at 60 C, 55 A, so a 60 A breaker (code quiz)", () => {
    // NEC 430.22(A), 430.52, 240.6(A): 55 A is no standard size.
    expect(motorCircuit(7.5, 230, 3)).toMatchObject({
      conductorMinAmps: 27.5,
      awg60C: 10,
      breakerMaxAmps: 55,
      breakerNextStandardAmps: 60,
    });
  });

  test("10 hp at 460 V three-phase: 17.5 A, 14 AWG, 35 A, 16.1 A disconnect (electrakit.com)", () => {
    // NEC 430.22(A), 430.52, 430.110(A).
    expect(motorCircuit(10, 460, 3)).toMatchObject({
      tableAmps: 14,
      conductorMinAmps: 17.5,
      awg75C: 14,
      breakerNextStandardAmps: 35,
      disconnectMinAmps: 16.1,
    });
  });

  test("10 hp at 230 V three-phase: disconnect 32.2 A (sparkshift.app on NEC 430.110)", () => {
    expect(motorCircuit(10, 230, 3)).toMatchObject({ tableAmps: 28, disconnectMinAmps: 32.2 });
  });
});

describe("overload protection, percent of label amps", () => {
  test("13.2 A and service factor 1.15: 16.5 A (electrakit.com on NEC 430.32(A)(1))", () => {
    expect((13.2 * overloadPercent(1.15).basic) / 100).toBeCloseTo(16.5, 9);
  });

  test("service factor 1.12 may be raised to 130 percent (code quiz on NEC 430.32(C))", () => {
    expect(overloadPercent(1.12).raised).toBe(130);
  });

  test("140 percent where the basic setting was 125 (NEC 430.32(C); one calculator page misprints 130/120)", () => {
    expect(overloadPercent(1.15)).toEqual({ basic: 125, raised: 140 });
    expect(overloadPercent(1, 40)).toEqual({ basic: 125, raised: 140 });
  });
});

test("standard sizes to 60 A (NEC Table 240.6(A)): 55 A is none", () => {
  expect([14, 16, 22, 26, 31, 38, 41, 46, 51].map(nextStandardAmps)).toEqual([
    15, 20, 25, 30, 35, 40, 45, 50, 60,
  ]);
});
