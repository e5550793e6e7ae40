/** Values for the `{blanks}` of a text. */
export type Values = Readonly<Record<string, string | number>>;

/** The files of `intents/answers/`, one group of texts each. */
export const wordingGroups = [
  "replies",
  "questions",
  "safety",
  "cautions",
  "explain",
  "reasons",
  "doubts",
  "work",
  "brief",
  "desk",
  "telegram",
  "pictures",
] as const;
export type WordingGroup = (typeof wordingGroups)[number];

export type Texts = Readonly<Record<WordingGroup, Readonly<Record<string, string>>>>;

/** Looks texts up. */
export interface Wording {
  /** The text `key` of `group`, blanks unfilled. Throws {@link WordingError} when there is none. */
  readonly text: (group: WordingGroup, key: string) => string;
  readonly has: (group: WordingGroup, key: string) => boolean;
  /** The text with its blanks filled. Throws {@link WordingError} on an unknown key or an unfilled blank. */
  readonly say: (group: WordingGroup, key: string, values?: Values) => string;
}

/** A text is missing or has a blank nobody fills: a mistake in `intents/`, not of the customer. */
export class WordingError extends Error {
  override readonly name = "WordingError";
  readonly group: WordingGroup;
  readonly key: string;

  constructor(group: WordingGroup, key: string, problem: string) {
    super(`intents/answers/${group}.json, key "${key}": ${problem}`);
    this.group = group;
    this.key = key;
  }
}

const BLANK = /\{([a-zA-Z]{1,40})\}/g;

/** The names of the blanks in a text. */
export function blanksOf(text: string): readonly string[] {
  return [...text.matchAll(BLANK)].map((found) => found[1] ?? "");
}

export function createWording(texts: Texts): Wording {
  const has = (group: WordingGroup, key: string) => Object.hasOwn(texts[group], key);
  const text = (group: WordingGroup, key: string) => {
    const found = has(group, key) ? texts[group][key] : undefined;
    if (found === undefined) throw new WordingError(group, key, "there is no such text");
    return found;
  };
  return {
    has,
    text,
    say: (group, key, values = {}) =>
      fillBlanks(text(group, key), (blank) => {
        if (Object.hasOwn(values, blank)) return values[blank];
        throw new WordingError(group, key, `nothing fills the blank {${blank}}`);
      }),
  };
}

/** The text with each `{blank}` replaced by what `resolve` gives for it. */
export function fillBlanks(text: string, resolve: (blank: string) => string | number | undefined): string {
  return text.replace(BLANK, (_, blank: string) => String(resolve(blank)));
}
