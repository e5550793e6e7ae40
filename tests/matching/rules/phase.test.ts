import { expect, test } from "vitest";
import { judge } from "../judging.ts";

test.each([
  [1, 1, "holds"],
  [3, 3, "holds"],
  [1, 3, "rules-out"],
  [3, 1, "rules-out"],
] as const)("phase %s replaced by %s %s", (old, fresh, outcome) => {
  expect(judge("phase", { old: { phase: old } }, { phase: fresh }).outcome).toBe(outcome);
});

test("a rating of 127 V or less proves single-phase (no three-phase system is so low: common practice, no source)", () => {
  expect(judge("phase", { old: { volts: [115, 230] } }, { phase: 1 })).toMatchObject({
    outcome: "holds",
    inferred: false,
  });
  expect(judge("phase", { old: { volts: [127, 220] } }, { phase: 3 }).outcome).toBe("rules-out");
  expect(judge("phase", { old: { phase: 1 } }, { volts: [115] }).outcome).toBe("holds");
});

test("230 V alone proves nothing, and the label is asked", () => {
  expect(judge("phase", { old: { volts: [230] } }, { phase: 1 })).toMatchObject({
    outcome: "not-known",
    needs: ["phase"],
  });
  expect(judge("phase", { old: {} }, { phase: 1 }).needs).toEqual(["phase", "volts"]);
});

test("what the label says outright wins over the proof", () => {
  expect(judge("phase", { old: { volts: [115], phase: 3 } }, { phase: 3 }).outcome).toBe("holds");
});
