import type { Candidate } from "./candidate.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** How many tokens after one number the next one may start. */
const reach = 12;
/** So many characters two numbers of one maker have in common at the beginning. */
const family = 3;
const shortest = 4;
const longest = 30;

/**
 * "88-4417 and 88-4417A", "TR-20B, and under that TR-21B": after a model or part number, what "and" joins to it and can
 * be nothing else, and what looks like it.
 */
export function moreNumbers(tokens: readonly Token[], candidates: readonly Candidate[]): Candidate[] {
  return candidates.flatMap((candidate): Candidate[] => {
    const [first] = candidate.claims;
    if (candidate.claims.length !== 1 || first?.rating !== "modelNumbers" || first.value === undefined)
      return [];
    const claims = [first];
    let end = candidate.end;
    for (let at = end; at < Math.min(tokens.length, end + reach); at++) {
      const token = tokens[at];
      if (!token || token.kind === "break" || isMark(token, ".", ";", "?", "!")) break;
      if (isWord(token, "pump", "bomba", "serial", "serie", "not", "no", "instead")) break;
      const { chunk } = token;
      if (!/\d/.test(chunk.text) || tokens[at - 1]?.chunk.start === chunk.start) continue;
      const joined = token.kind === "code" && chunk.text.length >= shortest && isJoint(tokens, end, at);
      if (chunk.text.length > longest || !(joined || areAlike(String(first.value), chunk.text))) break;
      const start = at;
      while ((tokens[at + 1]?.start ?? chunk.end) < chunk.end) at += 1;
      end = at + 1;
      claims.push({ ...first, value: chunk.text, start, end });
    }
    const score = candidate.score + 3 * (claims.length - 1);
    return claims.length > 1 ? [{ start: candidate.start, end, score, claims }] : [];
  });
}

/** Nothing but "and", "&" or "y" stands between. */
function isJoint(tokens: readonly Token[], from: number, to: number): boolean {
  const between = tokens.slice(from, to).filter((token) => !isMark(token, ","));
  const [joint] = between;
  return between.length === 1 && (isWord(joint, "and", "y", "plus") || isMark(joint, "&", "+", "/"));
}

/** One begins with the whole of the other, or both with the same characters and go on in the same pattern. */
function areAlike(one: string, other: string): boolean {
  const [first, second] = [one.toUpperCase(), other.toUpperCase()];
  if (second.length < shortest || first.slice(0, family) !== second.slice(0, family)) return false;
  if (patternOf(first) === patternOf(second)) return true;
  return !/^\d+$/.test(second) && (first.startsWith(second) || second.startsWith(first));
}

const patternOf = (text: string) => text.replace(/\p{L}/gu, "A").replace(/\d/g, "0");
