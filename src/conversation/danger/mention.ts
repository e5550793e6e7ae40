import type { Hazard } from "../../nameplate/reading.ts";
import type { Token } from "./tokens.ts";

/** Words that may tell of a danger: token indices, `to` exclusive; `head` carries the danger. */
export interface Mention {
  readonly hazard: Hazard;
  readonly from: number;
  readonly to: number;
  readonly head: number;
}

/** True when the mention is no danger here and now, for the one reason the function is named after. */
export type Context = (
  tokens: readonly Token[],
  mention: Mention,
  /** Where mentions start, this one among them: token indices. */
  starts: ReadonlySet<number>,
) => boolean;

/** Index of the first word of the sentence that holds the word at `at`, at most `most` words back. */
export function sentenceStart(tokens: readonly Token[], at: number, most = 30): number {
  let i = at;
  while (i > 0 && at - i < most && tokens[i]?.gap !== "sentence") i -= 1;
  return i;
}

/** Index after the last word of the sentence that holds the word at `at`, at most `most` words on. */
export function sentenceEnd(tokens: readonly Token[], at: number, most = 30): number {
  let i = at + 1;
  while (i < tokens.length && i - at < most && tokens[i]?.gap !== "sentence") i += 1;
  return i;
}

/** True if one of the words stands between the two indices (`to` exclusive). */
export function hasWord(
  tokens: readonly Token[],
  from: number,
  to: number,
  words: ReadonlySet<string>,
): boolean {
  for (let i = Math.max(0, from); i < Math.min(to, tokens.length); i += 1) {
    if (words.has(tokens[i]?.word ?? "")) return true;
  }
  return false;
}

/** Writes a word list on one line. */
export function words(list: string): ReadonlySet<string> {
  return new Set(list.split(" "));
}
