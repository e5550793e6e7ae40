import { describe, expect, test } from "vitest";
import { judgeMotor } from "../../../src/matching/match.ts";
import { goodMotor, judge, oldLabel, someDay, stocked } from "../judging.ts";

const recorded = { replaces: ["QX-120 B", "R7"] };

describe("number on record", () => {
  test("spaces, hyphens and letter case do not matter", () => {
    for (const modelNumbers of [["qx120b"], ["QX 120-B"], ["nothing", "R-7"]]) {
      expect(judge("record", { old: { modelNumbers } }, stocked({}, recorded)).outcome).toBe("holds");
    }
  });

  test("another number, or none, leaves the rule open and asks for nothing", () => {
    expect(judge("record", { old: { modelNumbers: ["QX-121"] } }, stocked({}, recorded))).toMatchObject({
      outcome: "not-known",
      needs: [],
    });
    expect(judge("record", { old: { modelNumbers: ["-"] } }, stocked({}, { replaces: ["-"] })).outcome).toBe(
      "not-known",
    );
  });

  test("no number on record does not hold a drop-in up", () => {
    const question = { nameplate: oldLabel, site: { supplyVolts: 240 }, on: someDay };
    expect(judgeMotor(question, goodMotor).verdict).toBe("drop-in");
  });

  test("a record never makes a motor fit that the ratings rule out, and the desk hears of it", () => {
    const old = { ...oldLabel, modelNumbers: ["R7"] };
    const wrong = { ...goodMotor, ...recorded, label: { ...goodMotor.label, frame: "56J" } };
    const judged = judgeMotor({ nameplate: old, site: { supplyVolts: 240 }, on: someDay }, wrong);
    expect(judged.verdict).toBe("no-fit");
    expect(judged.findings.find(({ rule }) => rule === "record")).toMatchObject({
      outcome: "rules-out",
      reason: "record.contradicted",
      values: { oldNumber: "R7" },
    });
  });
});
