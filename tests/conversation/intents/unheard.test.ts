import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { finerIntents } from "../../../src/conversation/intents/names.ts";
import { createIntentMatcher, type IntentName } from "../../../src/conversation/intents.ts";
import { readMessage } from "../../../src/nameplate/read.ts";
import { definitions, intentsOf } from "./matcher.ts";
import unheard from "./unheard.json" with { type: "json" };

interface Wish {
  readonly intent: IntentName;
  readonly text: string;
}

function shareRight(wishes: readonly Wish[], firstOf: (text: string) => IntentName | undefined): number {
  return wishes.filter(({ intent, text }) => firstOf(text) === intent).length / wishes.length;
}

/** A quarter of the examples, by a hash of their words, so that the choice does not move when others are added. */
function keptBack(text: string): boolean {
  const words = text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ");
  return (createHash("sha256").update(words).digest()[0] ?? 0) % 4 === 0;
}

test("messages that are among no examples are understood nearly as well", () => {
  const wishes = Object.entries(unheard).flatMap(([intent, texts]) =>
    texts.map((text) => ({ intent: intent as IntentName, text })),
  );
  const examples = new Set(definitions.flatMap((definition) => definition.examples));
  expect(wishes.filter(({ text }) => examples.has(text))).toEqual([]);
  expect(shareRight(wishes, (text) => intentsOf(text)[0])).toBeGreaterThanOrEqual(0.93);
});

test("a quarter of the examples is understood from the other three", () => {
  const learned = definitions.map((definition) => ({
    ...definition,
    examples: definition.examples.filter((text) => !keptBack(text)),
  }));
  const match = createIntentMatcher(learned);
  const wishes = definitions
    .filter(({ intent }) => !finerIntents.has(intent))
    .flatMap(({ intent, examples }) => examples.filter(keptBack).map((text) => ({ intent, text })));
  expect(wishes.length).toBeGreaterThan(500);
  const right = shareRight(wishes, (text) => match(text, readMessage(text))[0]?.intent);
  expect(right).toBeGreaterThanOrEqual(0.91);
});
