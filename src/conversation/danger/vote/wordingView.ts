import type { Token } from "../tokens.ts";

/** The words themselves: single, in twos and threes, and four letters of each at a time. */
export function wordingView(tokens: readonly Token[]): ReadonlySet<string> {
  const signs = new Set<string>();
  tokens.forEach(({ word, gap }, i) => {
    const opens = gap === "sentence";
    const before = opens ? "^" : (tokens[i - 1]?.word ?? "^");
    signs.add(word);
    signs.add(`${before} ${word}`);
    if (!opens && i > 1) signs.add(`${tokens[i - 2]?.word} ${before} ${word}`);
    for (let at = 0; at + 4 <= word.length; at += 1) signs.add(`#${word.slice(at, at + 4)}`);
  });
  return signs;
}
