import { describe, expect, test } from "vitest";
import { judgeMotor } from "../../src/matching/match.ts";
import { changeItems } from "../../src/matching/parts.ts";
import type { Nameplate } from "../../src/nameplate/vocabulary.ts";
import { goodMotor, oldLabel, someDay } from "./judging.ts";

// What a change of motor takes: common practice, no source.
const items = (label: Nameplate) =>
  changeItems(
    judgeMotor(
      { nameplate: oldLabel, site: { supplyVolts: 240 }, on: someDay },
      { ...goodMotor, label: { ...goodMotor.label, ...label } },
    ),
  ).map(({ key, need, kind }) => `${need} ${kind} ${key}`);

describe("what the change takes besides the motor", () => {
  test("a drop-in still takes a new shaft seal and gasket, and never the old capacitor", () => {
    expect(items({})).toEqual(["needed part seal-and-gasket", "needed job own-capacitor"]);
  });

  test("impeller and diffuser go with more power only for those who want the flow", () => {
    expect(items({ totalHp: 2.6 })).toContain("optional part impeller-and-diffuser");
    expect(items({ totalHp: 2.6 })).toContain("optional job flow-limits");
    expect(items({}).join()).not.toContain("impeller");
  });

  test("another body takes a base and clearance", () => {
    expect(items({ frame: "48Y" })).toEqual(
      expect.arrayContaining(["needed part base", "needed job clearance"]),
    );
  });

  test("other speeds take a control, a higher current an electrician", () => {
    expect(items({ rpm: [3450, 1725] })).toContain("needed job control-and-wiring");
    expect(items({ serviceFactorAmps: [20, 10] })).toContain("needed job electrician-circuit");
  });
});
