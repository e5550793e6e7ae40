import { describe, expect, test } from "vitest";
import { auditNameplate, checks } from "../../../src/nameplate/audit.ts";
import { doubted, ordinary } from "./examples.ts";

describe("ordinary labels raise no doubt", () => {
  test.each(ordinary)("$why", ({ nameplate, site }) => {
    expect(auditNameplate(nameplate, site)).toEqual([]);
  });
});

describe("what cannot be true is doubted", () => {
  test.each(doubted)("$reason: $why", ({ reason, nameplate, site, ratings, proposal, severity }) => {
    const doubts = auditNameplate(nameplate, site);
    const doubt = doubts.find((found) => found.reason.replace("-proposed", "") === reason);
    expect(doubt, JSON.stringify(doubts)).toBeDefined();
    expect(doubt?.ratings.slice(0, ratings.length)).toEqual(ratings);
    expect(doubt?.proposal?.value).toEqual(proposal);
    if (severity) expect(doubt?.severity).toBe(severity);
  });

  test("every reason of every check has an example", () => {
    const shown = new Set(doubted.map(({ reason }) => reason));
    expect(checks.flatMap(({ reasons }) => reasons).filter((reason) => !shown.has(reason))).toEqual([]);
  });

  test("every check has a name of its own and a source", () => {
    expect(new Set(checks.map(({ name }) => name)).size).toBe(checks.length);
    for (const { source } of checks) expect(source.length).toBeGreaterThan(10);
  });
});
