import type { Candidate } from "./candidate.ts";
import { isLabelWord } from "./naming.ts";
import { isOrdinary } from "./ordinary.ts";
import { isMark, isWord, type Token } from "./token.ts";

const mostWords = 4;

/** "It's a Pebblewick 90 pump": capitalised words and a figure right before "pump" are the pump's own name. */
export function nameBeforePump(tokens: readonly Token[], at: number): Candidate[] {
  if (!isWord(tokens[at], "pump") || isWord(tokens[at + 1], "motor", "motors", "model")) return [];
  const figure = tokens[at - 1];
  const figured = figure?.kind === "number" ? figure.form === "digits" : figure?.kind === "code";
  if (!figured || figure?.end === tokens[at]?.start) return [];
  let start = at - 1;
  while (start > 0 && at - start <= mostWords && isName(tokens[start - 1], tokens[start - 2])) start -= 1;
  if (start === at - 1 || !isWord(tokens[start - 1], "a", "an", "the", "my", "our", "its", "un", "una"))
    return [];
  return [
    { start, end: at + 1, score: 7, claims: [{ rating: "pumpModel", value: "", start, end: at, score: 4 }] },
  ];
}

function isName(token: Token | undefined, before: Token | undefined): boolean {
  if (token?.kind !== "word" || isLabelWord(token.norm) || isOrdinary(token.norm) || isMark(before, "."))
    return false;
  return /^\p{Lu}\p{Ll}{2,}/u.test(token.chunk.text);
}
