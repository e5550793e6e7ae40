import type { RatingName } from "../vocabulary.ts";
import type { Name } from "./naming.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";

/** Words that join a name to its value. */
const copulas = new Set(
  list(`
  is, are, was, says, say, said, reads, read, shows, show, of, at, its, it, the, a, an, as, be,
  number, numbers, no, rating, rated, on, i, see, looks, like, maybe, about, around, es, son, dice,
  de, el, la, los, las, que, del, like, listed, printed, marked, stamped, equals, equal, seems,
  think, which, for, that, would, appears, to, prob, probably, definitely, exactly, value, en, con,
  creo, parece, here, there, just, only, both, either, between, entre, nominal, size, line, field,
  box, part, got, have, get, im, pretty, sure, also, shown, given, by, and, y, say, goes, comes,
  out, hay, trae, viene, my, this, motor, label, has, marcado, marca, aparece, sale, pone, letter, letra, though,
  actually, now, max, rating, temp
`),
);

/** True for a small word such as "is" or "of", which is no part of a value. */
export function isCopula(word: string): boolean {
  return copulas.has(word);
}

export interface Link {
  /** The token at which a value may start. */
  readonly at: number;
  readonly cost: number;
}

const reach = 9;

/**
 * The places after a name where its value may stand, with the cost of the way there. A figure ends the way;
 * so does the name of another rating, unless a colon list says otherwise.
 */
export function linksAfter(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  name: Name,
): Link[] {
  const links: Link[] = [];
  const isNumber = name.rating === "modelNumbers" || name.rating === "serialNumber";
  let cost = 0;
  let words = 0;
  for (let at = name.end; at < tokens.length && at - name.end < reach; at++) {
    const token = tokens[at];
    if (!token) break;
    links.push({ at, cost });
    if (token.kind === "number" || token.kind === "partial" || token.kind === "code") break;
    if (isNumber && endsSentence(tokens, at)) break;
    const step = stepCost(token, at === name.end, words);
    if (step === undefined) break;
    if (token.kind === "word") {
      const named = names[at] ?? [];
      const longest = named.reduce<Name | undefined>(
        (best, other) => (best && best.end >= other.end ? best : other),
        undefined,
      );
      const same = longest?.rating === name.rating;
      if (!same && named.some((other) => !other.weak && other.rating !== name.rating)) break;
      words += same ? 0 : 1;
      cost += same ? 0.05 : step * (name.weak ? 2 : 1);
    } else cost += step;
    if (cost > 3) break;
  }
  return links;
}

/** "They are the same model. Mine has …": a word with a capital begins something else. */
function endsSentence(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  // "Ser. No." is short for one name.
  const whole = (tokens[at - 1]?.norm.length ?? 0) >= 5;
  return (
    whole &&
    isMark(tokens[at], ".") &&
    next?.kind === "word" &&
    !next.glued &&
    /^[A-Z][a-z]/.test(next.chunk.text)
  );
}

function stepCost(token: Token, first: boolean, words: number): number | undefined {
  if (token.kind === "break") return token.blank ? 1.6 : 0.7;
  if (token.kind === "word") return copulas.has(token.norm) ? 0.12 + words * 0.04 : 0.6;
  if (isMark(token, ":", "=")) return -0.3;
  if (
    isMark(
      token,
      "#",
      ">",
      "|",
      "(",
      ")",
      '"',
      "“",
      "”",
      "-",
      "'",
      "[",
      "]",
      "~",
      "…",
      "_",
      "<",
      "{",
      "}",
      "%",
      "*",
      "`",
      "→",
    )
  )
    return token.glued && first ? 0.05 : 0.1;
  // Dot leaders: "HP......1.5".
  if (isMark(token, ".", "_", "-") && token.glued && !first) return 0.02;
  if (isMark(token, ".")) return first && token.glued ? 0.05 : 0.5;
  if (isMark(token, ",")) return 0.8;
  if (isMark(token, ";", "!", "?")) return 1.5;
  if (isMark(token, "$", "@", "/")) return 1.2;
  return 0.6;
}

/** Words that may stand between a value and the name after it: "9.6 for the amps". */
const backward = new Set(
  list(`
  for, on, at, near, the, is, are, as, of, in, its, next, to, beside, under, below, whats, what, right, max, de, para, total, rated, nominal, full, even, flat, y, motor, es,
  it, word, words, says, say, said, reads, shows, goes, with, by, after, listed, printed, written, stamped, where,
  el, la, los, las, son, en, dice, lo, que, junto, va
`),
);

/** The place after dot leaders, where there are any: "230 ..... V". */
export function afterLeaders(tokens: readonly Token[], from: number): number {
  let at = from;
  while (isMark(tokens[at], ".", "_", "-", "…") && at - from < 40) at += 1;
  return at - from >= 3 || isMark(tokens[from], "…") ? at : from;
}

/** The cost of reading a value's name after it, from where the value ends; undefined when too far. */
export function linkBack(tokens: readonly Token[], end: number, name: Name): number | undefined {
  // "a 230 with a V", "8.9 con una A"
  const withLetter =
    isWord(tokens[end], "with", "con") && isWord(tokens[end + 1], "a", "an", "una") && name.start === end + 2;
  if (withLetter && name.upper) return 0.2;
  let cost = 0;
  for (let at = end; at < name.start; at++) {
    const token = tokens[at];
    if (token?.kind === "break" && !token.blank && cost < 0.5) cost += 0.8;
    else if (
      isMark(token, "-", "°", '"', "'", ")", "”", "+") &&
      at === end &&
      (token?.norm !== "-" || token.glued)
    )
      cost += 0.1;
    else if (at === end && at + 1 === name.start && isMark(token, "=", "(") && leadsBack(tokens, at, name))
      cost += 0.2;
    else if (isMark(token, "<", "←") || (isMark(token, "-") && isMark(tokens[at - 1], "<"))) cost += 0.1;
    else if (token?.kind === "word" && backward.has(token.norm)) cost += at > end ? 0.2 : 0.5;
    else return undefined;
  }
  const counted = name.rating === "phase" && isWord(tokens[end], "for") && end + 1 === name.start;
  return name.weak && cost > 0.3 && !counted ? undefined : cost;
}

/** "1.5=hp" set close, "1.5 (hp)". */
function leadsBack(tokens: readonly Token[], at: number, name: Name): boolean {
  if (isMark(tokens[at], "(")) return isMark(tokens[name.end], ")");
  return tokens[at]?.glued === true && tokens[name.start]?.glued === true;
}

/** Ratings whose name customarily follows the figure as its unit; the others' name leads. */
export const unitFollows: ReadonlySet<RatingName> = new Set([
  "hp",
  "kw",
  "volts",
  "amps",
  "rpm",
  "hz",
  "phase",
  "capacitorUf",
  "totalHp",
]);
