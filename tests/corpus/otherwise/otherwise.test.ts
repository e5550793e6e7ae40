import { describe, expect, test } from "vitest";
import { loadReadings } from "../score/messages.ts";
import { compare } from "./compare.ts";

/** Every sixth message is enough to notice a step back; `report.ts` looks at all. */
const STEP = 6;
/** Of a hundred messages said otherwise so many may be read otherwise: some words weigh, whatever a rule means. */
const MOST_CHANGED = 0.03;

describe("a message said otherwise is read the same", () => {
  const compared = compare(loadReadings().filter((_, at) => at % STEP === 0));
  test.each(compared.map((one) => [one.way, one] as const))("%s", (_, { tried, changes }) => {
    expect(tried).toBeGreaterThan(3);
    const most = Math.max(1, MOST_CHANGED * tried);
    expect(changes.length, changes.map(({ text }) => text).join("\n")).toBeLessThanOrEqual(most);
  });
});
