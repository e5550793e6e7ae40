import { context } from "./words/context.ts";
import { electric } from "./words/electric.ts";
import { fire } from "./words/fire.ts";
import { shock } from "./words/shock.ts";
import { expand, type Terms } from "./words/terms.ts";
import { trip } from "./words/trip.ts";
import { water } from "./words/water.ts";

const fields: Readonly<Record<string, Terms>> = {
  ...electric,
  ...shock,
  ...fire,
  ...water,
  ...trip,
  ...context,
};

interface Phrase {
  readonly concept: string;
  readonly words: readonly string[];
}

const single = new Map<string, string[]>();
const phrases = new Map<string, Phrase[]>();

for (const [concept, terms] of Object.entries(fields)) {
  for (const form of new Set(expand(terms))) {
    const words = form.split("_").filter((word) => word !== "");
    const first = words[0];
    if (first === undefined) continue;
    if (words.length > 1) phrases.set(first, [...(phrases.get(first) ?? []), { concept, words }]);
    else single.set(first, [...(single.get(first) ?? []), concept]);
  }
}

/** The concepts of each word; a phrase gives its concept to its first word. */
export function conceptsOf(words: readonly string[]): readonly ReadonlySet<string>[] {
  const result = words.map((word) => new Set(single.get(word)));
  words.forEach((first, i) => {
    for (const { concept, words: phrase } of phrases.get(first) ?? []) {
      if (phrase.every((word, k) => words[i + k] === word)) result[i]?.add(concept);
    }
  });
  return result;
}

/** True for a word the vote has a concept for: nothing to repair. */
export function isKnown(word: string): boolean {
  return single.has(word);
}
