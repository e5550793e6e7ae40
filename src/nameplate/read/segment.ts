import { digitLike, isDigit, readDigits, vulgarFraction } from "./digits.ts";
import { everydayWords } from "./everyday.ts";
import { swapped } from "./spelling.ts";
import { names } from "./words/names.ts";
import { poleWords } from "./words/site.ts";
import { foreignUnits } from "./words/units.ts";
import { valuePhrases } from "./words/values.ts";

/** One part of a run of characters without spaces, such as `HP1.5SF1.1`. */
export type Segment =
  | { readonly kind: "word" | "mark" | "fraction"; readonly start: number; readonly end: number }
  | {
      readonly kind: "number";
      readonly start: number;
      readonly end: number;
      readonly norm: string;
      readonly lookalikes: number;
    };

/** Words that may be run together with figures: every word of the lexicon. */
const unitsAsWords = ["volt", "volts", "amps", "hertz", "phase", "horse", "frame"];
const gluedWords = new Set<string>();
for (const phrases of [
  ...Object.values(names),
  ...valuePhrases.map(([, , phrases]) => phrases),
  foreignUnits,
  ...Object.values(poleWords),
  [
    "c",
    "f",
    "deg",
    "min",
    "mins",
    "hr",
    "hrs",
    "h",
    "bolt",
    "bolts",
    "motor",
    "only",
    "x",
    "and",
    "or",
    "ish",
    "kwh",
    "kilowatt",
    "kw",
    "to",
    "at",
    "max",
    "no",
    "y",
    "o",
    "and",
  ],
])
  for (const phrase of phrases)
    for (const word of phrase.split(" ")) if (/^[\p{L}]+$/u.test(word)) gluedWords.add(word);
// Letters exchanged in a hurry, `3450prm`: mended with the other slips.
for (const word of ["rpm", ...unitsAsWords])
  for (const slip of swapped(word)) if (!everydayWords.has(slip)) gluedWords.add(slip);
// Spanish horsepower; glued to a frame number it would be C and V: `56CV115`.
gluedWords.delete("cv");
/** One-letter words that may follow a figure they are glued to. */
const gluedAfter = new Set(["v", "a", "w", "c", "f", "ø", "x", "h"]);
/** One-letter words that may stand before a figure they are glued to (`V115`, `A9.6`). */
const gluedBefore = new Set(["v", "a"]);
const longestWord = 16;
const longestRun = 300;

/** Letters that end a frame designation, by the customary frame numbers (NEMA MG 1 part 4: two or three digits). */
const frameNumber = /^(?:42|48|56|66|140|143|145|182|184)$/;
const frameLetters = /^(?:Y[ZN]?|J[MP]?|CZ?|Z|HC|H|N|R|T[CY]?|S)/i;

/** True for a word of the trade that may be run together with figures. */
export function isGluedWord(word: string): boolean {
  return gluedWords.has(word);
}

const lookalikeLetters: Readonly<Record<string, string>> = { 0: "o", 1: "i", 5: "s", 8: "b" };

/** A label word with look-alike figures in it, mended: V0LTS, M0DEL, AMP5. */
export function mendWord(run: string): string | undefined {
  if (run.length < 4 || run.length > longestWord || !/^\p{L}[\p{L}0158]*$/u.test(run) || !/[0158]/.test(run))
    return undefined;
  const letters = run.toLowerCase().replace(/[0158]/g, (figure) => lookalikeLetters[figure] ?? figure);
  const other = run
    .toLowerCase()
    .replace(/1/g, "l")
    .replace(/[058]/g, (figure) => lookalikeLetters[figure] ?? figure);
  return [letters, other].find((word) => gluedWords.has(word));
}

interface Step {
  readonly cost: number;
  readonly from: number;
  readonly segment: Segment | undefined;
}

/** The cheapest ways found so far to cut a run up to each of its places. */
class Cuts {
  readonly #best: (Step | undefined)[];
  #at = 0;

  constructor(length: number) {
    this.#best = new Array(length + 1).fill(undefined);
    this.#best[0] = { cost: 0, from: -1, segment: undefined };
  }

  /** Goes on from this place; false when no cut leads to it. */
  standAt(at: number): boolean {
    this.#at = at;
    return this.#best[at] !== undefined;
  }

  /** The last piece of the cheapest cut up to here. */
  get previous(): Segment | undefined {
    return this.#best[this.#at]?.segment;
  }

  offer(piece: Segment, cost: number): void {
    const total = (this.#best[this.#at]?.cost ?? 0) + cost;
    const there = this.#best[piece.end];
    if (!there || total < there.cost) this.#best[piece.end] = { cost: total, from: this.#at, segment: piece };
  }

  /** The pieces of the cheapest cut of the whole run; undefined when there is none. */
  whole(): Segment[] | undefined {
    const segments: Segment[] = [];
    for (let at = this.#best.length - 1; at > 0; ) {
      const step = this.#best[at];
      if (!step?.segment) return undefined;
      segments.push(step.segment);
      at = step.from;
    }
    return segments.reverse();
  }
}

/**
 * The cheapest way to cut a run of letters, digits and separators wholly into figures and words of the trade;
 * undefined when some of it is neither, as in a model number. Time grows linearly with the length.
 */
export function segment(run: string): Segment[] | undefined {
  if (run.length > longestRun) return undefined;
  const cuts = new Cuts(run.length);
  for (let at = 0; at < run.length; at++) {
    if (!cuts.standAt(at)) continue;
    const character = run[at] ?? "";
    const { previous } = cuts;
    if (vulgarFraction(character) !== undefined)
      cuts.offer({ kind: "fraction", start: at, end: at + 1 }, 0.5);
    if (/[-/.,_'+&–—]/.test(character) && (previous?.kind !== "mark" || run[at - 1] === character))
      cuts.offer({ kind: "mark", start: at, end: at + 1 }, 0.1);
    if (previous?.kind !== "number" && previous?.kind !== "fraction") offerNumbers(run, at, cuts);
    offerWords(run, at, previous, cuts);
  }
  return cuts.whole();
}

function offerNumbers(run: string, start: number, cuts: Cuts): void {
  let norm = "";
  let lookalikes = 0;
  let digits = 0;
  for (let at = start; at < run.length && at - start < 14; at++) {
    const character = run[at] ?? "";
    if (at === start && character === "." && run[at - 1] === ".") break;
    const digit = digitLike(character);
    if (digit !== undefined) {
      norm += digit;
      if (isDigit(character)) digits++;
      else lookalikes++;
      if (isDigit(run[at + 1])) continue;
      const dotted =
        /^.\..{1,2}$/.test(run.slice(start, at + 1)) &&
        (run.length <= 5 || /\d[^/]{0,4}\/$/.test(run.slice(Math.max(0, start - 7), start)));
      // In `l-1/2` the first one is a letter too.
      const ofFraction = norm === "1" && at === start && /^[-/]/.test(run.slice(at + 1)) && /\d/.test(run);
      if ((digits > 0 || ofFraction || dotted) && readDigits(norm))
        cuts.offer(
          { kind: "number", start, end: at + 1, norm, lookalikes },
          0.5 + 0.8 * lookalikes + (isDotOfName(run, start, norm) ? 0.3 : 0),
        );
    } else if ((character === "." || character === ",") && digitLike(run[at + 1]) !== undefined)
      norm += character;
    else break;
  }
}

/** In `FR.56Y` and `V.230` the dot belongs to the name, in `HP.75` to the figure. */
function isDotOfName(run: string, start: number, norm: string): boolean {
  return /^\.(?:\d{3,}|48|56)/.test(norm) && start > 0 && /[\p{L}.]/u.test(run[start - 1] ?? "");
}

function offerWords(run: string, start: number, previous: Segment | undefined, cuts: Cuts): void {
  const afterNumber = previous?.kind === "number" || previous?.kind === "fraction";
  const number = previous?.kind === "number" ? previous.norm : "";
  // An unusual number is still a frame with its letter right behind it: "58Y".
  const unusual = /^[456]\d$/.test(number) && /^[YJ](?![\p{L}\d])/iu.test(run.slice(start, start + 2));
  if (unusual) cuts.offer({ kind: "word", start, end: start + 1 }, 0.8);
  const hyphened =
    previous?.kind === "mark" && /(?:^|\D)(?:48|56)-$/.test(run.slice(Math.max(0, start - 4), start));
  if (frameNumber.test(number) || hyphened) {
    const letters = frameLetters.exec(run.slice(start, start + 3))?.[0];
    if (letters)
      for (let n = letters.length; n > 0; n--) cuts.offer({ kind: "word", start, end: start + n }, 0.3);
  }
  let word = "";
  for (let at = start; at < run.length && at - start < longestWord; at++) {
    const character = run[at] ?? "";
    if (!/\p{L}/u.test(character)) break;
    word += character.toLowerCase().normalize("NFD").charAt(0);
    if (!gluedWords.has(word)) continue;
    if (word.length === 1 && !(afterNumber ? gluedAfter : gluedBefore).has(word)) continue;
    cuts.offer({ kind: "word", start, end: at + 1 }, word.length === 1 ? 0.9 : 0.5);
  }
  const label = previous?.kind === "word" ? run.slice(previous.start, previous.end).toLowerCase() : "";
  const next = run[start + 1];
  const letters = /^(?:code|kva)$/.test(label) ? /[A-HJ-NPR-V]/ : /[ABEFHN]/;
  if (/^(?:ins|insul|cl|class|code|kva|clase)$/.test(label) && letters.test(run[start] ?? ""))
    if (next === undefined || !/[a-z]/.test(next))
      cuts.offer(
        { kind: "word", start, end: start + 1 },
        /^(?:ins|insul)$/.test(label) ? 0.4 : /[A-Z]/.test(next ?? "") ? 1.4 : 0.8,
      );
  // A frame letter before its number: `Y56`.
  if (/[YJC]/i.test(run[start] ?? "") && /^(?:48|56)(?!\d)/.test(run.slice(start + 1, start + 4)))
    cuts.offer({ kind: "word", start, end: start + 1 }, 0.9);
}
