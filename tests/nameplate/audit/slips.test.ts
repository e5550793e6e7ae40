import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseMotors } from "../../../src/catalogue/motors-csv.ts";
import { auditNameplate } from "../../../src/nameplate/audit.ts";
import { heldShare, studySlips } from "./slip-study.ts";

// The figures of a larger run: npx tsx tests/nameplate/audit/report-slips.ts 20000

const { motors } = parseMotors(readFileSync(new URL("../../../data/motors.csv", import.meta.url), "utf8"));
const study = studySlips(600, motors);

describe("one slip seeded into a true label", () => {
  test("true labels are doubted in at most 1 % of cases", () => {
    expect(study.falseAlarms.length / study.labels).toBeLessThanOrEqual(0.01);
  });

  test("of slips that would change the verdict, at least 90 % are caught or leave it undecided", () => {
    expect(study.total.changing).toBeGreaterThan(300);
    expect(heldShare(study.total)).toBeGreaterThanOrEqual(0.9);
  });

  test("that holds without the easy ones too: swapped and look-alike digits by themselves", () => {
    expect(heldShare(study.byKind.swap)).toBeGreaterThanOrEqual(0.9);
    expect(heldShare(study.byKind["look-alike"])).toBeGreaterThanOrEqual(0.9);
  });

  test("a lost decimal point hardly ever passes", () => {
    expect(study.byKind.decimal.caught / study.byKind.decimal.slips).toBeGreaterThanOrEqual(0.98);
  });

  test("hp and service factor exchanged never change a verdict: their product is the same", () => {
    expect(study.byKind.exchanged.slips).toBeGreaterThan(300);
    expect(study.byKind.exchanged.changing).toBe(0);
  });

  test("most slips come with the right proposal", () => {
    expect(study.total.proposedRight / study.total.caught).toBeGreaterThanOrEqual(0.75);
  });
});

test("every motor of the demo stock passes the audit", () => {
  expect(motors.length).toBeGreaterThan(100);
  expect(motors.filter(({ label }) => auditNameplate(label).length > 0).map(({ sku }) => sku)).toEqual([]);
});
