import { describe, expect, test } from "vitest";
import { finerIntents } from "../../../src/conversation/intents/names.ts";
import { intentNames } from "../../../src/conversation/intents.ts";
import { definitions, intentsOf } from "./matcher.ts";

test("every intent has its file", () => {
  expect(definitions.map(({ intent }) => intent).toSorted()).toEqual([...intentNames].toSorted());
});

describe.each(definitions)("$intent", ({ intent, examples, leaves }) => {
  const finer = finerIntents.has(intent);
  const takes = (text: string) => (finer ? intentsOf(text).includes(intent) : intentsOf(text)[0] === intent);

  test("takes its examples", () => {
    expect(examples.filter((text) => !takes(text))).toEqual([]);
  });

  test("leaves its neighbours' sentences alone", () => {
    expect(leaves.filter(takes)).toEqual([]);
  });
});
