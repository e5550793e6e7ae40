import { expect, test } from "vitest";
import { judge } from "../judging.ts";

// A motor is made for its rated frequency within 5 % (NEMA MG 1 12.44), so 50 and 60 Hz never stand in for each other.
test.each([
  [[60], [60], "holds"],
  [[60], [50, 60], "holds"],
  [[50], [60], "rules-out"],
  [[60], [50], "rules-out"],
  [[50, 60], [60, 50], "holds"],
  [[50, 60], [60], "not-known"],
])("old %j Hz, new %j Hz: %s", (old, fresh, outcome) => {
  expect(judge("frequency", { old: { hz: old } }, { hz: fresh }).outcome).toBe(outcome);
});

test("where nothing is stated the region's 60 Hz is taken, and said so", () => {
  expect(judge("frequency", { old: {} }, { hz: [60] })).toMatchObject({
    outcome: "holds",
    reason: "frequency.region",
    inferred: true,
  });
  expect(judge("frequency", { old: {} }, { hz: [50] })).toMatchObject({
    outcome: "rules-out",
    inferred: true,
  });
  expect(judge("frequency", { old: { hz: [50] } }, {})).toMatchObject({
    outcome: "rules-out",
    inferred: true,
  });
});
