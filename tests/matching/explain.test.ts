import { describe, expect, test } from "vitest";
import { decisiveFinding } from "../../src/matching/explain.ts";
import { judgeMotor } from "../../src/matching/match.ts";
import { indexStock } from "../../src/matching/stock-index.ts";
import type { Nameplate } from "../../src/nameplate/vocabulary.ts";
import { drawCase, seeded } from "./generate.ts";
import { goodMotor, oldLabel, someDay } from "./judging.ts";

const why = (label: Nameplate, old: Nameplate = oldLabel) =>
  decisiveFinding(
    judgeMotor(
      { nameplate: old, site: { supplyVolts: 240 }, on: someDay },
      { ...goodMotor, label: { ...goodMotor.label, ...label } },
    ),
  )?.reason;

describe("one finding says why", () => {
  test("a drop-in by its total horsepower", () => {
    expect(why({})).toBe("total-horsepower.up-rated-for-full-rated");
  });

  test("work by what costs most", () => {
    expect(why({ frame: "48Y" })).toBe("mount.other-body");
    expect(why({ frame: "48Y", totalHp: 2.6 })).toBe("total-horsepower.above");
  });

  test("undecided by what the customer can still tell, before what the desk must look up", () => {
    expect(why({}, { ...oldLabel, serviceFactor: undefined })).toBe(
      "total-horsepower.service-factor-unknown",
    );
    expect(why({ frame: "56" }, { ...oldLabel, rpm: undefined })).toBe("speed.unknown");
  });

  test("no fit by what nobody can change", () => {
    expect(why({ frame: "56J", totalHp: 1 })).toBe("mount.other-face");
    expect(why({ totalHp: 1 })).toBe("total-horsepower.below");
  });

  test("a contradicted record is never what the customer hears", () => {
    const question = { nameplate: { ...oldLabel, modelNumbers: ["R7"] }, site: {}, on: someDay };
    const wrong = { ...goodMotor, replaces: ["R7"], label: { ...goodMotor.label, phase: 3 as const } };
    expect(decisiveFinding(judgeMotor(question, wrong))?.reason).toBe("phase.three-for-single");
  });

  test("there is one for every motor", () => {
    const random = seeded(11);
    const silent = Array.from({ length: 3000 }, () => drawCase(random, 1))
      .map(({ question, stock }) => judgeMotor(question, stock[0]!))
      .filter((judged) => decisiveFinding(judged) === undefined);
    expect(silent).toEqual([]);
  });
});

test("the nearest miss comes with its reason", () => {
  const question = { nameplate: oldLabel, site: { supplyVolts: 240 }, on: someDay };
  const weak = { ...goodMotor, sku: "weak", label: { ...goodMotor.label, totalHp: 1.5 } };
  const round = { ...goodMotor, sku: "round", label: { ...goodMotor.label, frame: "56C" } };
  const miss = indexStock([round, weak]).nearestMiss(question);
  expect([miss?.judged.motor.sku, miss?.why.reason]).toEqual(["weak", "total-horsepower.below"]);
  expect(indexStock([goodMotor]).nearestMiss(question)).toBeUndefined();
});
