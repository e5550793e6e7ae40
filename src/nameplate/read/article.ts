import type { Name } from "./naming.ts";
import type { Parsed } from "./parsed.ts";
import { goTogether, suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** "a" after an ordinary word is the article, not the sign for amps. */
export function isArticle(tokens: readonly Token[], name: Name): boolean {
  const token = tokens[name.start];
  if (name.end > name.start + 1 || token?.norm !== "a" || isMark(tokens[name.end], ":", "=", "-"))
    return false;
  if (isByTheDay(tokens, name)) return true;
  const before = tokens[name.start - 1];
  // "V 115/230 and A 16.0/8.0": a capital inside the sentence is the sign.
  const figure = tokens[name.end];
  if (token.kind === "word" && token.upper && isWord(before, "and", "y", "then") && figure?.kind === "number")
    return false;
  if (before?.kind === "word")
    return before.norm.length > 1 && before.norm !== "the" && !labelWords.has(before.norm);
  // 'labor for "a 1.5"'
  if (isMark(before, '"', "“", "'") && token.kind === "word" && !token.upper) return true;
  return before === undefined && token?.kind === "word" && !token.upper && tokens[name.end]?.kind === "word";
}

/** "8 a day" counts something by the day. */
export function isByTheDay(tokens: readonly Token[], name: Name): boolean {
  const counted = isWord(tokens[name.end], "day", "week", "month", "night", "year", "piece", "dia");
  return counted && isWord(tokens[name.start], "a") && name.end === name.start + 1;
}

/** Spanish "208 a 230": a lone "a" between two figures of one kind joins them; in "9.8 a 3450 rpm" it is the sign. */
export function isJoint(tokens: readonly Token[], name: Name): boolean {
  const [before, token, after] = [tokens[name.start - 1], tokens[name.start], tokens[name.end]];
  if (token?.kind !== "word" || token.norm !== "a" || token.glued) return false;
  if (after?.kind === "number")
    return before?.kind !== "number" || isRange(tokens, name, before.value, after.value);
  // "llegan 220 a la bomba"
  return !token.upper && isWord(after, "la", "el", "los", "las", "mi", "una");
}

/** Two voltages, or two figures as near as two currents that are followed by their unit. */
function isRange(tokens: readonly Token[], name: Name, first: number, second: number): boolean {
  if (suits("volts", first) === 2 && suits("volts", second) === 2) return true;
  const ratio = Math.max(first, second) / Math.min(first, second);
  return (
    ratio < 1.4 &&
    isWord(tokens[name.end + 1], "a", "amp", "amps", "amperios", "rpm", "v", "volts", "voltios")
  );
}

/** "amps 9.2 a 8.8": the "a" joins two currents. */
export function joinsCurrents(tokens: readonly Token[], name: Name): boolean {
  const [before, token, after] = [tokens[name.start - 1], tokens[name.start], tokens[name.end]];
  if (token?.norm !== "a" || token.glued || (token.kind === "word" && token.upper)) return false;
  return (
    name.end === name.start + 1 &&
    before?.kind === "number" &&
    after?.kind === "number" &&
    goTogether("amps", before.value, after.value)
  );
}

/** A lower-case "a" after a comma or at the start may be either. */
export function maybeArticle(tokens: readonly Token[], name: Name): boolean {
  const [before, token, after] = [tokens[name.start - 1], tokens[name.start], tokens[name.end]];
  const letter = token?.kind === "word" && token.norm === "a" && !token.upper && name.end === name.start + 1;
  return (
    letter &&
    !isMark(after, ":", "=") &&
    !after?.glued &&
    before?.kind !== "number" &&
    before?.kind !== "break"
  );
}

/** "a 56J, a 3450, a 1.5": figures counted out with their articles. */
export function oneOfMany(tokens: readonly Token[], name: Name): boolean {
  for (let at = Math.max(0, name.start - 8); at < name.start; at++) {
    const figure = tokens[at + 1];
    if (!isWord(tokens[at], "a") || figure?.kind !== "number" || figure.glued) continue;
    if (suits("amps", figure.value) < 1 || tokens[at + 2]?.glued) return true;
  }
  return false;
}

/** Two values, or one with decimals. */
export function looksLikeCurrent({ value }: Parsed, first: Token | undefined): boolean {
  if (first?.kind === "number" && /[.,]\d/.test(first.norm)) return true;
  const list = Array.isArray(value) ? (value as number[]) : [];
  return list.length > 1 || list.some((amps) => !Number.isInteger(amps));
}

const labelWords = new Set([
  "hp",
  "volts",
  "cont",
  "rpm",
  "hz",
  "ph",
  "square",
  "keyed",
  "threaded",
  "max",
  "vac",
  "continuous",
  "min",
  "mins",
  "deg",
  "amb",
  "phase",
  "speed",
  "round",
]);
