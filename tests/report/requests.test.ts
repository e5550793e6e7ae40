import { describe, expect, test } from "vitest";
import { type DeskCase, openedCase } from "../../src/desk/case.ts";
import type { OutcomeName } from "../../src/desk/outcomes.ts";
import { requestsOf } from "../../src/report/requests.ts";
import { median, waitsOf } from "../../src/report/waits.ts";
import { kim } from "../desk/evening.ts";

const at = "2026-11-24T16:00:00.000Z";

function closed(outcome: OutcomeName, sku: string | null): DeskCase {
  return {
    ...openedCase(1, "ana", { urgency: "pump-down", reason: "verdict-ready", at }),
    standing: { state: "closed", outcome, sku, by: kim, since: at },
  };
}

describe("what an outcome says of the rules", () => {
  test.each([
    ["the motor they put first was sold", "drop-in", "PIE-1", "sold", "PIE-1", "agreed"],
    ["another one was sold", "drop-in", "PIE-1", "sold", "PIE-2", "overruled"],
    ["nothing fitted, and one was sold all the same", "none-fits", null, "sold", "PIE-2", "overruled"],
    ["nothing fitted, and the desk found nothing either", "none-fits", null, "not-stocked", null, "agreed"],
    [
      "one fitted, and the desk would not have it",
      "fits-with-work",
      "PIE-1",
      "not-stocked",
      null,
      "overruled",
    ],
    ["the motor came back as wrong", "drop-in", "PIE-1", "wrong-part", "PIE-1", "overruled"],
    ["the desk's own choice came back", "drop-in", "PIE-1", "wrong-part", "PIE-2", "silent"],
    ["they had left it open", "undecided", null, "sold", "PIE-2", "settled"],
    ["the customer never wrote again", "drop-in", "PIE-1", "no-reply", null, "silent"],
  ] as const)("%s", (_, verdict, sku, outcome, outcomeSku, agreement) => {
    const given = { at, caseId: 1, verdict, sku, messages: 2, request: "{}" };
    expect(requestsOf([given], [closed(outcome, outcomeSku)])).toMatchObject([{ agreement }]);
  });
});

describe("waiting", () => {
  const event = (
    kind: "opened" | "took" | "handed-back" | "reopened" | "closed" | "noted",
    minute: number,
  ) => ({
    caseId: 1,
    at: new Date(Date.parse(at) + minute * 60_000).toISOString(),
    by: null,
    kind,
    text: "",
  });
  const always = () => true;
  const minutes = (...events: ReturnType<typeof event>[]) =>
    waitsOf(events, always).map((wait) => wait.minutes);

  test("runs from the case's opening until a person takes it", () =>
    expect(minutes(event("opened", 0), event("noted", 3), event("took", 12))).toEqual([12]));
  test("begins again when the case comes back onto the desk", () =>
    expect(
      minutes(
        event("opened", 0),
        event("took", 5),
        event("handed-back", 9),
        event("reopened", 30),
        event("took", 70),
      ),
    ).toEqual([5, 40]));
  test("is not over while nobody has taken the case", () =>
    expect(minutes(event("opened", 0))).toEqual([null]));

  // The middle of an odd and of an even number of values, as any textbook of statistics defines the median.
  test.each([
    [[], null],
    [[7], 7],
    [[9, 1, 5], 5],
    [[10, 1, 2, 5], 3.5],
  ])("median of %j is %j", (values, middle) => expect(median(values)).toBe(middle));
});
