import { expect, test } from "vitest";
import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";
import { judge } from "../judging.ts";

const old: Nameplate = { volts: [115, 230], serviceFactorAmps: [16, 8] };
const judged = (fresh: Nameplate, supplyVolts: number | undefined = 240, plate = old) =>
  judge("current", { old: plate, site: { supplyVolts } }, fresh);

test("dual-voltage amps stand 2 to 1, as in NEC Table 430.248 (1 hp: 16 A at 115 V, 8 A at 230 V)", () => {
  expect(judged({ volts: [115, 230], serviceFactorAmps: [16, 8] }, 120).values).toEqual({
    oldAmps: 16,
    newAmps: 16,
  });
  expect(judged({ volts: [230], serviceFactorAmps: [8] }, 240).values).toEqual({ oldAmps: 8, newAmps: 8 });
});

// Two per cent for label rounding: common practice, no source.
test.each([
  [8, "holds"],
  [8.16, "holds"],
  [8.17, "needs-work"],
  [7, "holds"],
])("8 A replaced by %s A %s", (amps, outcome) => {
  expect(judged({ volts: [230], serviceFactorAmps: [amps] }).outcome).toBe(outcome);
});

test("exactly 2 % above still holds, though the binary quotient is a hair more", () => {
  const plate = { volts: [230], amps: [4.1] };
  expect(judged({ volts: [230], amps: [4.182] }, 240, plate).outcome).toBe("holds");
});

test("a higher current is for an electrician: NEC 430.22(A) and 430.52 size wire and breaker", () => {
  const finding = judged({ volts: [230], serviceFactorAmps: [10] });
  expect(finding.work).toEqual([{ key: "electrician-circuit", values: { oldAmps: 8, newAmps: 10 } }]);
});

test("full-load and service-factor amps are never compared with each other", () => {
  expect(judged({ volts: [230], amps: [7] })).toMatchObject({ outcome: "not-known", needs: ["amps"] });
});

test("one pair above is enough, even where the other is below", () => {
  const both = { volts: [230], amps: [7], serviceFactorAmps: [8] };
  expect(judged({ volts: [230], amps: [6], serviceFactorAmps: [9] }, 240, both).outcome).toBe("needs-work");
});

test("amps that do not pair one to one with the volts are not compared", () => {
  expect(judged({ volts: [115, 208, 230], serviceFactorAmps: [16, 8] }).outcome).toBe("not-known");
});

test("the rated voltage nearest the supply counts", () => {
  const low = { volts: [208, 230], serviceFactorAmps: [8.8, 8] };
  expect(judged(low, 208).values).toEqual({ oldAmps: 8, newAmps: 8.8 });
  expect(judged(low, 240).values).toEqual({ oldAmps: 8, newAmps: 8 });
});

test("without the supply the amps cannot be compared", () => {
  const finding = judge("current", { old }, { volts: [230], serviceFactorAmps: [8] });
  expect(finding).toMatchObject({ outcome: "not-known", needs: ["supplyVolts"] });
});
