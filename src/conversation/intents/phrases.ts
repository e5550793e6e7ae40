import type { Evidence } from "../intents.ts";
import type { IntentDefinition } from "./definition.ts";
import type { IntentName } from "./names.ts";
import { normalize } from "./normalize.ts";

/** Words around a phrase that change nothing: "human pls", "honestly no idea". */
const fillers = new Set(
  "please hmm hm um umm uh er well lol haha hahaha jaja jajaja jeje oh ah so and but then man sir mate bro dude buddy boss maam friend amigo senor senora favor por honestly sorry really just now then guys folks everyone all again very much y pues bueno ay entonces".split(
    " ",
  ),
);

export interface PhrasesSaid {
  readonly evidence: readonly Evidence[];
  /** Every part of the message is a known phrase: nothing is left for the patterns. */
  readonly settled: boolean;
}

function wordsOf(text: string): readonly string[] {
  return text.match(/[\p{L}\p{N}/]+|\$+|\?+|\p{Extended_Pictographic}/gu) ?? [];
}

function strip(words: readonly string[]): readonly string[] {
  let from = 0;
  let to = words.length;
  while (from < to && fillers.has(words[from] ?? "")) from += 1;
  while (to > from && (fillers.has(words[to - 1] ?? "") || /^\?+$/.test(words[to - 1] ?? ""))) to -= 1;
  return words.slice(from, to);
}

/** Looks up whole messages and the parts between marks in the phrase lists of the intents. */
export function createPhraseBook(definitions: readonly IntentDefinition[]): (plain: string) => PhrasesSaid {
  const book = new Map<string, IntentName>();
  for (const { intent, phrases = [] } of definitions) {
    for (const phrase of phrases) {
      const key = wordsOf(normalize(phrase, (word) => word)).join(" ");
      if (!book.has(key)) book.set(key, intent);
    }
  }
  const find = (words: readonly string[]): IntentName | undefined =>
    book.get(words.join(" ")) ?? book.get(strip(words).join(" "));

  return (plain) => {
    const whole = wordsOf(plain);
    const intent = whole.length <= 12 ? find(whole) : undefined;
    if (intent) return { evidence: [{ intent, words: plain, at: 0, whole: true }], settled: true };
    const evidence: Evidence[] = [];
    let settled = true;
    let at = 0;
    for (const part of plain.split(/[.,!?;:\n–—-]+|(?=\p{Extended_Pictographic})/u)) {
      const words = wordsOf(part);
      const found = words.length > 0 && words.length <= 12 ? find(words) : undefined;
      if (found) evidence.push({ intent: found, words: part.trim(), at, whole: true });
      else if (strip(words).length > 0) settled = false;
      at += words.length;
    }
    return { evidence, settled: settled && evidence.length > 0 };
  };
}
