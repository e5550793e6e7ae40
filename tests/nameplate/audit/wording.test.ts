import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { auditNameplate, checks } from "../../../src/nameplate/audit.ts";
import { doubted } from "./examples.ts";

const texts: Record<string, string> = JSON.parse(
  readFileSync(new URL("../../../intents/answers/doubts.json", import.meta.url), "utf8"),
);

describe("wording of doubts", () => {
  test("every reason has a text with and without a proposal, and no text is left over", () => {
    const keys = checks.flatMap(({ reasons }) => reasons.flatMap((reason) => [reason, `${reason}-proposed`]));
    expect(Object.keys(texts).sort()).toEqual(keys.sort());
  });

  test.each(doubted)("the text for $reason ($why) has all its blanks filled", ({ nameplate, site }) => {
    for (const { reason, values } of auditNameplate(nameplate, site)) {
      const text = texts[reason]!.replace(/\{(\w+)\}/g, (blank, name: string) =>
        String(values[name] ?? blank),
      );
      expect(text).not.toMatch(/[{}]|undefined|NaN|Infinity/);
      expect(text).not.toMatch(/ {2}|\( | \./);
    }
  });

  test("texts are short, end in a question, and a proposal is named in each that offers one", () => {
    for (const [key, text] of Object.entries(texts)) {
      expect(text.length, key).toBeLessThan(170);
      expect(text, key).toMatch(/\?$/);
      if (key.endsWith("-proposed")) expect(text, key).toContain("{proposed}");
      else expect(text, key).not.toContain("{proposed");
    }
  });
});
