import { describe, expect, test } from "vitest";
import { auditNameplate } from "../../src/nameplate/audit.ts";

// Facts of the trade. Where no published source was found, the title says "common practice, no source".

describe("labels that the trade holds ordinary are not doubted", () => {
  test("115/230 V, 16.0/8.0 A on 1 hp: amps halve when volts double (same figures in NEC Table 430.248)", () => {
    expect(auditNameplate({ hp: 1, volts: [115, 230], amps: [16, 8] })).toEqual([]);
  });

  test("residential pool motors run from 0.5 to 3 hp (common practice, no source)", () => {
    for (const hp of [0.5, 0.75, 1, 1.5, 2, 2.5, 3]) expect(auditNameplate({ hp })).toEqual([]);
    expect(auditNameplate({ hp: 15 })).not.toEqual([]);
  });

  test("frames 48Y, 56Y, 56J and 56C (seen in public trade text)", () => {
    for (const frame of ["48Y", "56Y", "56J", "56C"]) expect(auditNameplate({ frame })).toEqual([]);
  });

  test("a marked ambient of 50 C (common practice, no source)", () => {
    expect(auditNameplate({ ambientC: 50 })).toEqual([]);
  });

  test("3450 rpm, and 3450/1725 on two speeds (U.S. EPA pool pump list)", () => {
    expect(auditNameplate({ rpm: [3450], hz: [60] })).toEqual([]);
    expect(auditNameplate({ rpm: [3450, 1725], hz: [60] })).toEqual([]);
  });

  test("a variable-speed motor may list a low speed of 450 rpm (U.S. EPA pool pump list)", () => {
    expect(auditNameplate({ rpm: [3450, 450], speedKind: "variable", hz: [60] })).toEqual([]);
  });

  test("amps of a pool label are service-factor amps, though printed as AMPS (public training text)", () => {
    // 1 hp x 1.65 at 230 V: 9.6 A would be weak for 1.0 hp and is ordinary for 1.65.
    expect(auditNameplate({ hp: 1, serviceFactor: 1.65, volts: [115, 230], amps: [19.2, 9.6] })).toEqual([]);
  });
});
