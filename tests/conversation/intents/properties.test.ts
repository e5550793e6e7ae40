import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { intentDefinitionSchema } from "../../../src/conversation/intents/definition.ts";
import { finerIntents } from "../../../src/conversation/intents/names.ts";
import { variants } from "../../../src/conversation/intents/variants.ts";
import { intentNames } from "../../../src/conversation/intents.ts";
import { definitions, intentsOf, match } from "./matcher.ts";

const seed = { seed: 20_260_102, numRuns: 150 };
const anyText = fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.string({ maxLength: 400 }));

test("never throws and always names at least one intent, none twice", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const names = match(text, { readings: [], unreadable: [] }).map(({ intent }) => intent);
      expect(names.length).toBeGreaterThan(0);
      expect(new Set(names).size).toBe(names.length);
      expect(finerIntents.has(names[0] ?? "other")).toBe(false);
    }),
    seed,
  );
});

describe("order", () => {
  test("what must be obeyed, then questions, then statements, then small talk", () => {
    expect(intentNames.slice(0, 17)).toEqual([
      ...["forget", "restart", "person"],
      ...["hours", "savings", "price", "bigger", "explain"],
      ...["correction", "ratings", "unreadable", "dont-know"],
      ...["no", "yes", "thanks", "greeting", "other"],
    ]);
  });

  test.each([
    ["hi, how much would it save me?", ["savings", "greeting"]],
    ["thanks, it says 56J and 3450 rpm", ["ratings", "thanks"]],
    ["hp is 1.5 but I can't read the frame", ["ratings", "unreadable"]],
    ["I can't read any of this, let me talk to a person", ["person", "unreadable"]],
    ["would a variable speed one save me money", ["savings"]],
    ["no, it's 230 volts", ["correction"]],
  ])("%s", (text, first) => {
    expect(intentsOf(text).slice(0, first.length)).toEqual(first);
  });

  test("a finer question follows `other`", () => {
    expect(intentsOf("is it legal to sell that?")).toEqual(["other", "legal"]);
  });
});

describe("files are checked when they are read", () => {
  const good = definitions.find(({ intent }) => intent === "price");
  const bad = (change: object) => intentDefinitionSchema.safeParse({ ...good, ...change }).error?.issues[0];

  test("an unknown intent, key or tag is refused by name", () => {
    expect(bad({ intent: "prise" })?.path).toEqual(["intent"]);
    expect(bad({ pattern: [] })?.message).toContain("pattern");
    expect(bad({ patterns: ["how #Much"] })?.message).toContain("#Much");
  });

  test("brackets inside brackets are refused: they would never match", () => {
    expect(bad({ patterns: ["(how (much|many))"] })?.path).toEqual(["patterns", 0]);
    expect(bad({ patterns: ["(how much"] })?.path).toEqual(["patterns", 0]);
  });

  test("too few examples are refused", () => {
    expect(bad({ examples: ["price?"] })?.path).toEqual(["examples"]);
  });
});

describe("patterns are written so that the matcher, which never goes back, finds them", () => {
  test.each([
    ["go .? .? up", ["go .{0,2} up"]],
    ["talk (to)? .? #Staff", ["talk .{0,2} #Staff"]],
    ["how much * .?", ["how much"]],
    ["when * (open|get back|#Staff)", ["when * (open)", "when * get back", "when * #Staff"]],
    ["(can|may) i", ["(can|may) i"]],
  ])("%s", (written, expected) => {
    expect(variants(written)).toEqual(expected);
  });
});
