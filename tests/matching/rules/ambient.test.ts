import { expect, test } from "vitest";
import { judge } from "../judging.ts";

// 40 C is the standard ambient (NEMA MG 1 12.42); 50 C on pool motors: common practice, no source.
test.each([
  [50, 50, "holds"],
  [40, 50, "holds"],
  [50, 40, "needs-work"],
  [undefined, 50, "not-known"],
  [50, undefined, "not-known"],
])("old %s C, new %s C: %s", (old, fresh, outcome) => {
  expect(judge("ambient", { old: { ambientC: old } }, { ambientC: fresh }).outcome).toBe(outcome);
});

test("it is asked only where the stock can answer to it", () => {
  expect(judge("ambient", {}, { ambientC: 50 }).needs).toEqual(["ambientC"]);
  expect(judge("ambient", {}, {}).needs).toEqual([]);
});
