import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { foreignUnits, valuePhrases } from "./lexicon.ts";
import { one } from "./one.ts";
import { PhraseBook } from "./phrases.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";

const values = new PhraseBook<{ rating: RatingName; value: string | number; phrase: string }>({
  colons: true,
});
for (const [rating, value, phrases] of valuePhrases)
  for (const phrase of phrases) values.add(phrase, { rating, value, phrase });

/** One-word values that are everyday words too: not with a word of these before or after. */
const everyday = new Set(
  list(`
  square, squared, round, threads, continuous, circular, cont, continua, continuo, variable
`),
);
const notAfter = new Set(
  list(`
  feet, foot, ft, inch, inches, pool, d, year, trip, here, up, off, about, noise, noisy, sound, hum, pools,
  spa, table, box, shape, tub
`),
);
const notBefore = new Set(
  list(`
  year, all, other, first, second, next, way, go, turn, per
`),
);

/** "square flange", "single phase", "threaded", "CONT": values that name themselves. */
export function selfNaming(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++)
    for (const match of values.matchesAt(tokens, at))
      for (const { rating, value, phrase } of match.found) {
        if (isEveryday(tokens, match.start, match.end, phrase)) continue;
        if (
          value === "through-bolt" &&
          !/bolt|tornillo|perno/.test(phrase) &&
          !boltsNear(tokens, match.start)
        )
          continue;
        const score = 2.4 + 0.3 * (match.end - match.start);
        const claim = {
          rating,
          value: value as RatingValue<RatingName>,
          start: match.start,
          end: match.end,
          score,
        };
        candidates.push({ start: match.start, end: match.end, score, claims: [claim] });
      }
  return candidates;
}

/** A value word that means something else here: "square feet", "all year round", a key "3/16 square". */
function isEveryday(tokens: readonly Token[], start: number, end: number, phrase: string): boolean {
  if (!everyday.has(phrase)) return false;
  const [previous, next] = [tokens[start - 1], tokens[end]];
  const before = tokens.slice(Math.max(0, start - 5), start);
  const size =
    isMark(tokens[start - 2], "/") && before.some((token) => isWord(token, "key", "inches", "inch"));
  if (phrase === "square" && size) return true;
  // "round two" counts rounds.
  if (phrase === "round" && next?.kind === "number" && next.value <= 3) return true;
  return (
    (next?.kind === "word" && notAfter.has(next.norm)) ||
    (previous?.kind === "word" && notBefore.has(previous.norm))
  );
}

/** "four bolts that go all the way through": what goes through must be bolts. */
function boltsNear(tokens: readonly Token[], at: number): boolean {
  return tokens
    .slice(Math.max(0, at - 12), at + 8)
    .some((token) => isWord(token, "bolt", "bolts", "screws", "rods", "tornillos", "pernos"));
}

const units = new PhraseBook<true>().addAll(foreignUnits, true);
const monthWords = new Set(
  list(`
  jan, january, feb, february, march, apr, april, may, june, july, aug, august, sept, september,
  oct, october, nov, november, dec, december, enero, febrero, marzo, abril, mayo, junio, julio,
  agosto, septiembre, octubre, noviembre, diciembre
`),
);
const yearWords = new Set(
  list(`
  in, since, from, circa, year, around, ca, back, until, till, en, desde, del, summer, early, late,
  by, before, after, of, bought, built, installed, replaced, about
`),
);

/** Figures of other things: with a unit of their own, money, dates, times of day, telephone numbers. */
export function otherFigures(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  const aside = (start: number, end: number, score: number) =>
    candidates.push({ start, end, score, claims: [] });
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token?.kind !== "number") continue;
    const previous = tokens[at - 1];
    // "30 minute duty": the time before its name.
    const minutes = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
    if (
      isWord(tokens[minutes], "min", "mins", "minute", "minutes") &&
      isWord(tokens[minutes + 1], "duty") &&
      !isMark(previous, ":", "=") &&
      !isWord(previous, "duty")
    )
      candidates.push(one("duty", token.value, at, minutes + 2, at, minutes + 1, 5));
    // "1) HP 1.5 2) SF 1.1": the numbers of a list.
    if (
      isMark(tokens[at + 1], ")") &&
      tokens[at + 1]?.glued &&
      token.norm.length < 3 &&
      !isMark(previous, "(") &&
      !token.glued
    )
      aside(at, at + 2, 5);
    // "there's 2 amps numbers", "two voltages listed: …"
    const several = token.value === 2 || token.value === 3;
    if (several && isWord(previous, "theres", "are", "lists", "hay", "shows", "gives")) {
      const counted = isWord(tokens[at + 1], "amp", "amps", "volt", "volts", "voltages", "rpm", "rpms", "hp");
      const after = tokens[at + 2];
      if (
        counted &&
        (isMark(after, ",", ":", ".") ||
          isWord(after, "numbers", "values", "figures", "ratings", "listed", "lines", "on", "and"))
      )
        aside(at, at + 2, 7);
    }
    // The poles of the motor: "POLES 2 HP 1.5".
    if (
      isWord(previous, "poles", "pole", "polos") &&
      previous?.kind === "word" &&
      previous.upper &&
      token.value <= 12
    )
      aside(at - 1, at + 1, 5.5);
    // "50 amp subpanel", "200 amp service".
    const rated = isWord(tokens[at + 1], "amp", "amps", "a") ? at + 2 : at + 1;
    if (rated === at + 2 && isWord(tokens[rated], ...fittings)) aside(at, rated + 1, 6);
    // Hours of the day: "7p to 7a".
    if (
      isWord(tokens[at + 1], "a") &&
      tokens[at + 1]?.glued &&
      tokens
        .slice(Math.max(0, at - 3), at)
        .some(({ kind, norm }) => kind === "code" && /^\d{1,2}p$/.test(norm))
    )
      aside(at, at + 2, 6);
    if (isMark(previous, "$", "€", "£")) aside(at - 1, at + 1, 6);
    const end = figureEnd(tokens, at);
    const unitAt = isMark(tokens[end], "-") && tokens[end]?.glued ? end + 1 : end;
    const unit = units.longestAt(tokens, unitAt);
    if (unit && !isInsteadOfUnit(tokens, unit.start, unit.end)) aside(at, unit.end, 4.5);
    if (isMark(tokens[end], '"', "”", "'", "%", "″", "′") && tokens[end]?.glued && !quotedBefore(tokens, at))
      aside(at, end + 1, 4.5);
    // A year after a word of time.
    if (
      /^(?:19[5-9]\d|20[0-4]\d)$/.test(token.norm) &&
      previous?.kind === "word" &&
      (yearWords.has(previous.norm) || monthWords.has(previous.norm))
    )
      aside(at, at + 1, 3);
    if (
      previous?.kind === "word" &&
      monthWords.has(previous.norm) &&
      Number.isInteger(token.value) &&
      token.value <= 31
    )
      aside(at, at + 1, 2.5);
    const pattern = [token, ...tokens.slice(at + 1, at + 8)];
    const shape = pattern.map(shapeOf).join("");
    for (const [kind, score] of shapes) {
      const match = kind.exec(shape);
      const speeds = kind.source === "^c-d" && isWord(tokens[at + 3], "rpm", "rpms");
      if (match && !speeds) aside(at, at + match[0].length, score);
    }
  }
  return candidates;
}

const fittings = [
  "panel",
  "subpanel",
  "service",
  "main",
  "mains",
  "plug",
  "receptacle",
  "relay",
  "switch",
  "timer",
  "wire",
  "feed",
  "contactor",
  "cord",
];

/** One letter for each token: digits by their count, marks as they are. */
function shapeOf(token: Token, index: number): string {
  if (index > 0 && token.kind !== "mark" && token.kind !== "number") return "_";
  if (token.kind === "number")
    return token.form === "digits" && /^\d+$/.test(token.norm) ? letterOf(token.norm.length) : "_";
  return token.kind === "mark" && token.norm.length === 1 ? token.norm : "_";
}

const letterOf = (digits: number) => String.fromCharCode(96 + Math.min(digits, 12));

/** Telephone numbers, dates and times of day, as shapes: `c` is a figure of three digits, and so on. */
const shapes: readonly (readonly [RegExp, number])[] = [
  [/^c\)?[-./ ]?c[-./ ]?d/, 6],
  [/^c-d/, 3.5],
  [/^[a]-?c-c-d/, 7],
  [/^[j-l]/, 4],
  [/^[ab][/.-][ab][/.-](?:d|b)(?![/.-])/, 5],
  [/^[ab]:b(?![/-])/, 4],
  [/^d-[ab]-[ab]/, 5],
  [/^[ab]\/d/, 2.5],
];

function figureEnd(tokens: readonly Token[], at: number): number {
  let end = at + 1;
  for (let seen = 0; seen < 5; seen++) {
    const joint = tokens[end];
    const next = tokens[end + 1];
    const space = joint?.kind === "number" && tokens[at]?.kind === "number";
    if (space && joint.kind === "number") {
      end += 1;
      continue;
    }
    const joined = isMark(joint, "-", "/", "x", ",") || isWord(joint, "x", "to", "by", "or", "and");
    if (!joined || next?.kind !== "number") break;
    end += 2;
  }
  return end;
}

const quotedBefore = (tokens: readonly Token[], at: number) => isMark(tokens[at - 1], '"', "“", "'");

/** "in", "am", "k", "m" and "st" are words too; "in" before a word that goes on is no inch. */
function isInsteadOfUnit(tokens: readonly Token[], start: number, end: number): boolean {
  const unit = tokens[start];
  if (end - start > 1 || unit?.kind !== "word") return false;
  const next = tokens[end];
  if (unit.norm === "in")
    return (
      next?.kind === "word" &&
      !unit.glued &&
      !isWord(next, "diameter", "long", "wide", "pipe", "shaft", "x", "thick", "across")
    );
  if (unit.norm === "am") return !unit.glued && next?.kind === "word";
  if (
    list(`
  st, m, k, w, ga, mi, th
`).includes(unit.norm)
  )
    return !unit.glued;
  if (unit.norm === "pin" || unit.norm === "wire" || unit.norm === "bar") return false;
  return false;
}
