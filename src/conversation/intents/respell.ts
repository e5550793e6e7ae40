import { editDistance } from "../../nameplate/read/spelling.ts";
import { isKnown } from "../danger/lexicon.ts";
import type { IntentDefinition } from "./definition.ts";
import { language } from "./trade-words.ts";

const LONGEST = 16;

function isEnglish(word: string): boolean {
  const { one } = language.model() as { one: { lexicon: Readonly<Record<string, unknown>> } };
  return Object.hasOwn(one.lexicon, word);
}

function lettersOf(word: string): string {
  return [...word].sort().join("");
}

/**
 * Repairs words towards those the intents are said with: one slip, two in a long word. Words of the English
 * lexicon and words that some pattern knows stay as they are.
 */
export function createRespell(definitions: readonly IntentDefinition[]): (word: string) => string {
  const known = new Set<string>();
  for (const { patterns, phrases = [], examples } of definitions) {
    for (const word of [...patterns, ...phrases, ...examples]
      .join(" ")
      .toLowerCase()
      .match(/\p{L}+/gu) ?? []) {
      known.add(word);
    }
  }
  const byFirstLetter = new Map<string, string[]>();
  for (const word of [...known].sort()) {
    if (word.length < 4) continue;
    byFirstLetter.set(word.charAt(0), [...(byFirstLetter.get(word.charAt(0)) ?? []), word]);
  }
  return (word) => {
    if (word.length < 4 || word.length > LONGEST || known.has(word) || isKnown(word) || isEnglish(word)) {
      return word;
    }
    const most = word.length >= 8 ? 2 : 1;
    let best = word;
    let bestEdits = most + 1;
    for (const candidate of byFirstLetter.get(word.charAt(0)) ?? []) {
      if (Math.abs(candidate.length - word.length) > most) continue;
      // Short words have too many neighbours: only swapped letters are repaired.
      if (candidate.length < 5 && lettersOf(candidate) !== lettersOf(word)) continue;
      const distance = editDistance(word, candidate, most);
      const closer = distance < bestEdits || (distance === bestEdits && candidate.length === word.length);
      if (distance <= most && closer && (distance < bestEdits || best.length !== word.length)) {
        best = candidate;
        bestEdits = distance;
      }
    }
    return best;
  };
}
