import type { Token } from "./token.ts";
import { names } from "./words/names.ts";
import { valuePhrases } from "./words/values.ts";

const counts: Readonly<Record<string, string>> = { "1": "one", "2": "two", "3": "three" };
const shortest = 7;

/** Phrases of the label by what they are without their spaces: `threephase`, `servicefactor`. */
const phrases = new Map<string, readonly string[]>();
for (const phrase of [...Object.values(names).flat(), ...valuePhrases.flatMap(([, , listed]) => listed)]) {
  const words = phrase.split(" ").map((word) => counts[word] ?? word);
  const whole = words.join("");
  if (words.length > 1 && whole.length >= shortest && /^[a-z]+$/.test(whole) && !phrases.has(whole))
    phrases.set(whole, words);
}

/** Two words of the label written as one are two: `threephase`, `squareflange`. */
export function partGlued(tokens: readonly Token[]): Token[] {
  return tokens.flatMap((token): Token[] => {
    const words = token.kind === "word" ? phrases.get(token.norm) : undefined;
    if (token.kind !== "word" || !words || token.end - token.start !== token.norm.length) return [token];
    let start = token.start;
    return words.map((norm, index) => {
      const piece = { ...token, norm, start, end: start + norm.length };
      start = piece.end;
      return index === 0 ? piece : { ...piece, glued: true, wide: false };
    });
  });
}
