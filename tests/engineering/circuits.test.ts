import { expect, test } from "vitest";
import {
  isStandardBreaker,
  motorCircuit,
  nextStandardAmps,
  tableCurrentAmps,
} from "../../src/engineering/circuits.ts";

test("between two rows the table is read in proportion", () => {
  expect(tableCurrentAmps(1.25, 230, 1)).toBe(9);
  expect(tableCurrentAmps(2.5, 230, 1)).toBe(14.5);
});

test("outside the table there is no figure", () => {
  expect(tableCurrentAmps(0.1, 230, 1)).toBeUndefined();
  expect(tableCurrentAmps(15, 230, 1)).toBeUndefined();
  expect(tableCurrentAmps(0.25, 230, 3)).toBeUndefined();
  expect(tableCurrentAmps(1, 115, 3)).toBeUndefined();
  expect(motorCircuit(15, 230, 1)).toBeUndefined();
});

test("wire beyond 6 AWG is left to the electrician", () => {
  expect(motorCircuit(10, 115, 1)).toMatchObject({
    conductorMinAmps: 125,
    awg60C: undefined,
    awg75C: undefined,
  });
});

test("the next standard size is never below the figure", () => {
  for (let amps = 1; amps <= 200; amps += 0.5) expect(nextStandardAmps(amps)).toBeGreaterThanOrEqual(amps);
  expect(nextStandardAmps(201)).toBeUndefined();
});

test("10 A is a breaker since 2023, 55 A and 18 A are none", () => {
  expect([10, 15, 20, 18, 55].map(isStandardBreaker)).toEqual([true, true, true, false, false]);
});
