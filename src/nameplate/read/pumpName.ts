import type { Candidate } from "./candidate.ts";
import { isOrdinary } from "./ordinary.ts";
import { PhraseBook } from "./phrases.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { pumpWords } from "./words/site.ts";

const pumpNames = new PhraseBook<true>().addAll(pumpWords, true);

/** The pump's own name: the words after "pump is a" up to the end of the clause that look like a name. */
export function pump(tokens: readonly Token[], at: number): Candidate[] {
  const name = pumpNames.longestAt(tokens, at);
  // "a Marisol 2200 (pump model) on a 2-pole breaker"
  if (!name || isMark(tokens[name.end], ")")) return [];
  let start = name.end;
  while (
    isMark(tokens[start], ":", "=", "#", '"', "“") ||
    (isMark(tokens[start], ".") && isWord(tokens[start - 1], "no", "num")) ||
    isWord(tokens[start], "is", "a", "the", "no", "number", "model", "es", "un", "una", "its", "an", "old")
  )
    start += 1;
  let end = start;
  let digits = false;
  while (end < tokens.length && end - start < 9) {
    const token = tokens[end];
    if (
      !token ||
      token.kind === "break" ||
      isMark(token, ",", ".", ";", "|", "(", ")", "!", "?", '"', "”", ":")
    )
      break;
    if (
      token.kind === "word" &&
      /^(?:and|but|with|from|i|the|motor|on|my|its|so|that|y|pero|con|is|has|if|it|que|pump|in|for|or|says|not|the|por|de|el|which)$/.test(
        token.norm,
      )
    )
      break;
    if (token.kind === "code" || token.kind === "number") digits = true;
    end += 1;
  }
  const [first, last] = [tokens[start], tokens[end - 1]];
  if (!first || !last || end === start) return [];
  if (
    tokens.slice(start, end).some((token) => isWord(token, "psi", "max", "gpm", "feet", "years", "gallons"))
  )
    return [];
  const unitAfter = tokens[end - 1];
  const measured =
    end - start <= 2 &&
    unitAfter?.kind === "word" &&
    /^(?:hp|v|volts|volt|rpm|amps|a|horse|thp)$/.test(unitAfter.norm);
  // "THE PUMP IS A SQUARE FLANGE": in a message that shouts, capitals make no name.
  if (first.kind === "word" && first.upper && first.norm.length > 1 && isOrdinary(first.norm)) return [];
  const bareNumber = end - start === 1 && first.kind === "number";
  const named =
    first.kind === "code" || (first.kind === "word" && first.start >= 0 && isCapital(tokens, start));
  if (
    measured ||
    bareNumber ||
    first.kind === "number" ||
    !(named || (digits && end - start === 2 && unitAfter?.kind === "number" && unitAfter.value >= 10))
  )
    return [];
  return [
    { start: name.start, end, score: 9, claims: [{ rating: "pumpModel", value: "", start, end, score: 5 }] },
  ];
}

function isCapital(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return token?.kind === "word" && /^\p{Lu}/u.test(token.chunk.text);
}
