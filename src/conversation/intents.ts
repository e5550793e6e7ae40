import type { MessageReading } from "../nameplate/reading.ts";
import type { IntentDefinition } from "./intents/definition.ts";
import { learn } from "./intents/model.ts";
import type { IntentName } from "./intents/names.ts";
import { normalize } from "./intents/normalize.ts";
import { createPhraseBook } from "./intents/phrases.ts";
import { rank } from "./intents/rank.ts";
import { createRespell } from "./intents/respell.ts";
import { language } from "./intents/trade-words.ts";
import { variants } from "./intents/variants.ts";
import { weigh } from "./intents/weigh.ts";

export type { IntentDefinition } from "./intents/definition.ts";
export { type IntentName, intentNames } from "./intents/names.ts";

/** One thing a message wants, with the words it shows by (lower case, spelling repaired; empty for `other`). */
export interface IntentMatch {
  readonly intent: IntentName;
  readonly words: string;
}

/** Where in the message an intent shows. */
export interface Evidence extends IntentMatch {
  /** Position in words from the start of the message. */
  readonly at: number;
  /** The whole message, or a whole part between marks, says this and nothing else. */
  readonly whole: boolean;
}

/** Something that examples can speak for: a word, a figure, an emoji. */
const speaks = /[\p{L}\p{N}\p{Extended_Pictographic}]/u;

/** Longer messages are looked at here and at their end, where requests stand. */
const HEAD_CHARACTERS = 1200;
const TAIL_CHARACTERS = 600;

/**
 * Compiles what people say into a matcher: (message, its readings) -> intents, most likely first, never empty.
 * The matcher never throws.
 */
export function createIntentMatcher(
  definitions: readonly IntentDefinition[],
): (text: string, seen: MessageReading) => readonly IntentMatch[] {
  const intentOf = new Map<string, IntentName[]>();
  for (const { intent, patterns } of definitions) {
    for (const match of patterns.flatMap(variants)) {
      intentOf.set(match, [...(intentOf.get(match) ?? []), intent]);
    }
  }
  const net = language.buildNet([...intentOf.keys()].map((match) => ({ match })));
  const phrases = createPhraseBook(definitions);
  const respell = createRespell(definitions);
  const likelihoods = learn(
    definitions.flatMap(({ intent, phrases: short = [], examples }) =>
      [...short, ...examples].map((said) => ({ intent, plain: normalize(said, respell) })),
    ),
  );

  return (text, seen) => {
    const read =
      text.length > HEAD_CHARACTERS + TAIL_CHARACTERS
        ? `${text.slice(0, HEAD_CHARACTERS)}\n${text.slice(-TAIL_CHARACTERS)}`
        : text;
    const plain = normalize(read, respell);
    const said = phrases(plain);
    const found = said.settled ? said.evidence : [...said.evidence, ...swept(plain)];
    const ranked = rank(found, plain, seen);
    return said.settled || !speaks.test(plain) ? ranked : weigh(likelihoods, ranked, seen, plain);
  };

  function swept(plain: string): Evidence[] {
    const document = language(plain);
    const starts: number[] = [];
    let words = 0;
    for (const terms of document.docs) {
      starts.push(words);
      words += terms.length;
    }
    return document.sweep(net).found.flatMap((one) => {
      const { match, view } = one as { match: string; view: ReturnType<typeof language> };
      const [sentence = 0, start = 0] = view.fullPointer[0] ?? [];
      const at = (starts[sentence] ?? 0) + start;
      return (intentOf.get(match) ?? []).map((intent) => ({ intent, words: view.text(), at, whole: false }));
    });
  }
}
