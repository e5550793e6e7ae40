import { describe, expect, test } from "vitest";
import { play } from "./homeowner.ts";
import { homeowners } from "./homeowners.ts";

describe("evenings with a dead pump", () => {
  test.each(homeowners.map((homeowner) => [homeowner.who, homeowner] as const))("%s", (_, homeowner) => {
    const { steps, messages } = play(homeowner);
    const last = steps.at(-1)!;
    if (homeowner.ends === "photo") expect(last.replies.join("\n")).toMatch(/photo/);
    else expect(last.assessment.match?.verdict).toBe(homeowner.ends);
    expect(last.thread.case.state).toBe("waiting");
    expect(messages).toBeLessThanOrEqual(5);
    for (const times of Object.values(last.thread.asked)) expect(times).toBeLessThanOrEqual(2);
  });

  test("every message fits a phone screen", () => {
    for (const homeowner of homeowners) {
      for (const { replies } of play(homeowner).steps) {
        for (const reply of replies) expect(reply.length).toBeLessThanOrEqual(1000);
      }
    }
  });

  test("the median evening takes two messages", () => {
    const counts = homeowners.map((homeowner) => play(homeowner).messages).sort((a, b) => a - b);
    expect(counts[Math.floor(counts.length / 2)]).toBeLessThanOrEqual(2);
  });
});
