import { expect, test } from "vitest";
import { judge } from "../judging.ts";

// Time rating in minutes or continuous: NEC 430.7(A). That a pool pump needs continuous: common practice, no source.
test.each([
  ["continuous", "holds"],
  [60, "rules-out"],
  [30, "rules-out"],
  [undefined, "not-known"],
] as const)("a stocked motor of %s duty: %s", (duty, outcome) => {
  expect(judge("duty", {}, { duty }).outcome).toBe(outcome);
});

test("a short-time old motor is no reason to sell another", () => {
  expect(judge("duty", { old: { duty: 60 } }, { duty: 60 }).outcome).toBe("rules-out");
});
