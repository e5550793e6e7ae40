import type { Span } from "../../nameplate/reading.ts";
import { conceptsOf, isKnown } from "./lexicon.ts";
import { respell } from "./spelling.ts";

/** One word of a message with its typed meanings. */
export interface Token extends Span {
  /** Lower case, without accents and apostrophes, spelling repaired towards danger words. */
  readonly word: string;
  /** Names of the concepts in the lexicon the word (or the phrase it belongs to) stands for. */
  readonly concepts: ReadonlySet<string>;
  /** What separates it from the word before: nothing, a comma-like mark, the end of a sentence or line. */
  readonly gap: "none" | "comma" | "sentence";
  /** The marks that follow it, up to the next word: a question mark, a colon, a quote. */
  readonly after: string;
}

/** Letters, or a number: "120v" is two words. */
const word = /\p{L}[\p{L}\p{M}'’`´]*|\p{N}+(?:[.,]\p{N}+)?/gu;

function fold(text: string): string {
  return text
    .replace(/(?<=\p{L}{2})in['’]$/iu, "ing")
    .normalize("NFKD")
    .replace(/[\p{M}'’`´]/gu, "")
    .toLowerCase()
    .replace(/(\p{L})\1{2,}/gu, "$1$1");
}

/** "The water's over it" and "the motor's wet" speak of water and motor. */
function wordOf(raw: string): string {
  const stem = /^(.{4,})['’]s$/u.exec(raw)?.[1];
  const folded = fold(stem ?? raw);
  return stem === undefined || isKnown(folded) ? respell(folded) : respell(fold(raw));
}

function gapOf(marks: string): Token["gap"] {
  // Three dots mostly stand for a pause, not for the end of a thought.
  if (/[\n!?;]|(?<![.…])\.(?!\.)|^\.{4,}/u.test(marks)) return "sentence";
  return /[^\s'"’`“”*_]/u.test(marks) ? "comma" : "none";
}

/** Splits a message into typed words; never throws, time grows linearly with the length. */
export function tokenize(text: string): readonly Token[] {
  const found = [...text.matchAll(word)].map((match) => ({
    raw: match[0],
    start: match.index,
    end: match.index + match[0].length,
  }));
  const words = found.map(({ raw }) => wordOf(raw));
  const concepts = conceptsOf(words);
  return found.map(({ start, end }, i) => {
    const previousEnd = found[i - 1]?.end;
    return {
      word: words[i] ?? "",
      start,
      end,
      concepts: concepts[i] ?? new Set<string>(),
      gap: previousEnd === undefined ? "sentence" : gapOf(text.slice(previousEnd, start)),
      after: text.slice(end, Math.min(found[i + 1]?.start ?? text.length, end + 40)),
    };
  });
}
