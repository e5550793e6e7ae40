import { split, type Typed } from "./typed.ts";

const blank = (symbol: string) => symbol === "~" || symbol === "#";
const isConcept = (symbol: string) => symbol.startsWith("@");

/** Signs of the order of words: neighbours, and concepts up to four words apart. */
function sequences(sentence: readonly Typed[], signs: Set<string>): void {
  sentence.forEach(({ symbols }, i) => {
    for (const x of symbols) {
      for (let step = 1; step <= 4; step += 1) {
        for (const y of sentence[i + step]?.symbols ?? []) {
          if (step === 1 ? x === "~" && y === "~" : blank(x) || blank(y)) continue;
          signs.add(step === 1 ? `${x} ${y}` : `${x} .. ${y}`);
        }
      }
    }
  });
}

/** Signs of what stands together in a sentence, in any order. */
function companions(sentence: readonly Typed[], signs: Set<string>): void {
  const asked = (sentence.at(-1)?.token.after ?? "").includes("?");
  const bag = new Set<string>();
  for (const { symbols, denied } of sentence) {
    for (const x of symbols) {
      if (!blank(x)) bag.add((denied ? "!" : "") + x);
      signs.add(x);
      if (denied && isConcept(x)) signs.add(`!${x}`);
    }
  }
  for (const x of bag) {
    if (asked) signs.add(`?${x}`);
    for (const y of bag) if (x < y && (x.includes("@") || y.includes("@"))) signs.add(`${x}&${y}`);
  }
}

/** The message as one: signs of its words, their order, and what stands together in a sentence or anywhere. */
export function wholeView(typed: readonly Typed[]): ReadonlySet<string> {
  const signs = new Set<string>();
  for (const sentence of split(typed, (at) => typed[at]?.token.gap === "sentence")) {
    sequences(sentence, signs);
    companions(sentence, signs);
    for (const x of sentence[0]?.symbols ?? []) signs.add(`^${x}`);
    for (const x of sentence.at(-1)?.symbols ?? []) signs.add(`${x}$`);
  }
  const concepts = [...new Set(typed.flatMap(({ symbols }) => symbols.filter(isConcept)))];
  for (const x of concepts) for (const y of concepts) if (x < y) signs.add(`${x}&&${y}`);
  return signs;
}
