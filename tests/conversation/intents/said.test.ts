import { describe, expect, test } from "vitest";
import { finerIntents } from "../../../src/conversation/intents/names.ts";
import { intentNames } from "../../../src/conversation/intents.ts";
import { definitions, intentsOf } from "./matcher.ts";

test("every intent has its file", () => {
  expect(definitions.map(({ intent }) => intent).toSorted()).toEqual([...intentNames].toSorted());
});

describe.each(definitions)("$intent", ({ intent, examples, leaves }) => {
  test.each(examples)("takes %s", (text) => {
    if (finerIntents.has(intent)) expect(intentsOf(text)).toContain(intent);
    else expect(intentsOf(text)[0]).toBe(intent);
  });

  test.each(leaves)("leaves %s", (text) => {
    expect(intentsOf(text)[0]).not.toBe(intent);
    if (finerIntents.has(intent)) expect(intentsOf(text)).not.toContain(intent);
  });
});
