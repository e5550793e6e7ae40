import type { RatingName } from "../vocabulary.ts";
import { readDigits } from "./digits.ts";
import { goTogether, suits } from "./plausible.ts";
import { names } from "./words/names.ts";
import { valuePhrases } from "./words/values.ts";

/** Ratings whose figures are told apart by their size, so that a gap in one shows. */
const figured: readonly RatingName[] = [
  ...(["hp", "totalHp", "kw", "serviceFactor", "volts", "amps"] as const),
  ...(["serviceFactorAmps", "rpm", "hz"] as const),
];
const ratingOf = new Map<string, RatingName>();
for (const rating of figured)
  for (const phrase of names[rating] ?? [])
    if (!/[^a-z]/.test(phrase) && !ratingOf.has(phrase)) ratingOf.set(phrase, rating);

const labelWords = new Set(
  [...Object.values(names).flat(), ...valuePhrases.flatMap(([, , phrases]) => phrases)].flatMap((phrase) =>
    phrase.split(" "),
  ),
);

const longestLine = 400;

/**
 * Places of the blanks a copying machine or a loose thumb left inside words and figures of a label: `V OLTS 23 0`,
 * `SF 1. 25`, `RPM 3 450`. Only where the whole makes a word or a figure of the trade and its parts do not.
 */
export function strayBlanks(line: string): number[] {
  if (line.length > longestLine || !/\d/.test(line)) return [];
  const inWords = blanksInWords(line);
  const words = without(line, inWords);
  return [...inWords, ...blanksInFigures(words.text).map((at) => words.at[at] ?? at)];
}

/** The line without those of its characters, and where each character left stood. */
function without(line: string, dropped: readonly number[]): { text: string; at: number[] } {
  const gone = new Set(dropped);
  const at = Array.from({ length: line.length }, (_, index) => index).filter((index) => !gone.has(index));
  return { text: at.map((index) => line[index]).join(""), at };
}

/** Capitals cut apart: `V OLTS`, `F R A M E`. One of the parts at least is no word. */
function blanksInWords(line: string): number[] {
  const blanks: number[] = [];
  for (const run of line.matchAll(/(?<![\p{L}\d.'’])[A-Z]{1,8}(?: [A-Z]{1,8}){1,12}(?![\p{L}])/gu)) {
    const parts = run[0].split(" ");
    const starts = parts.map((_, index) => run.index + parts.slice(0, index).join(" ").length + (index && 1));
    for (let from = 0; from < parts.length; from++)
      for (let to = Math.min(parts.length, from + 8); to > from + 1; to--) {
        const pieces = parts.slice(from, to).map((part) => part.toLowerCase());
        const whole = pieces.join("");
        const known = whole === "sf" || whole === "hp" || (whole.length > 2 && labelWords.has(whole));
        if (!known || pieces.every(stands)) continue;
        for (let gap = from + 1; gap < to; gap++) blanks.push((starts[gap] ?? 0) - 1);
        from = to - 1;
        break;
      }
  }
  return blanks;
}

const stands = (part: string) => part.length > 1 && labelWords.has(part);

const stretch =
  /(\p{L}[\p{L}.]{0,14})[ :=#]{0,3}((?:\d[\d.,/]*|[.]\d[\d/]*)(?: [./]?\d[\d.,/]*(?<![.,/])(?![\p{L}\d])){1,3})/gu;

/** "1 .5 HP", "5 6Y": the name comes after, or is none needed. */
const unnamed = /(?<![\d.,/])(?:\d{1,2} \.\d{1,3}(?=\/| ?[A-Za-z])|[45] [68](?=-?[YJCZ]\b))/gu;
/** "3 450 rpm": no motor is rated 450. */
const thousands = /(?<![\d.,/])(?:3 [45]|1 7)\d{2}(?= ?rpm)/giu;

function blanksInFigures(line: string): number[] {
  const blanks: number[] = [];
  const looked = new Set<number>();
  for (const found of line.matchAll(stretch)) {
    const [whole, word = "", figure = ""] = found;
    const rating = ratingOf.get(word.toLowerCase().replaceAll(".", ""));
    const from = found.index + whole.length - figure.length;
    if (rating === undefined || (word.length === 1 && word !== word.toUpperCase())) continue;
    const one =
      !endsNames(line, found.index) && isOneFigure(rating, figure, line.slice(from + figure.length));
    for (let at = 0; at < figure.length; at++) {
      if (figure[at] !== " ") continue;
      looked.add(from + at);
      if (one) blanks.push(from + at);
    }
  }
  const gapOf = (found: RegExpExecArray) => found.index + found[0].indexOf(" ");
  const others = [...line.matchAll(unnamed)].map(gapOf).filter((at) => !looked.has(at));
  return [...blanks, ...others, ...[...line.matchAll(thousands)].map(gapOf)];
}

/** A run of names ends here ("PH AMPS 1 8.2"): the figures after it belong to all of them. */
function endsNames(line: string, at: number): boolean {
  const before = /([A-Za-z.]{1,12})[ ,|/]{1,3}$/.exec(line.slice(Math.max(0, at - 16), at))?.[1];
  const word = before?.toLowerCase().replaceAll(".", "") ?? "";
  return ratingOf.has(word) || /^(?:ph|phase|fr|frame|fase|fases)$/.test(word);
}

/** True when the figure without its blanks is what one would expect, and with them is not. */
function isOneFigure(rating: RatingName, figure: string, after: string): boolean {
  const written = figure.split("/").map((part) => part.trim());
  if (written.length > 3 || !written.every(mayBeOne) || isOfNext(rating, figure, after)) return false;
  const values = written.map((part) => read(part.replaceAll(" ", "")) ?? 0);
  if (!values.every((value) => suits(rating, value) === 2)) return false;
  const [first = 0, second] = values;
  if (second !== undefined && !goTogether(rating, first, second)) return false;
  const pieces = figure.split(/[ /]+/);
  return (
    pieces.some((piece) => /^[.]|[.,]$/.test(piece)) ||
    suits(rating, read(pieces[0] ?? "") ?? 0) < 2 ||
    pieces.some((piece) => suits(rating, read(piece) ?? 0) < 1.4)
  );
}

/** One gap at a point, between whole figures, or before a hundredth; a figure with its decimals is whole: "6.2 115". */
const mayBeOne = (part: string) =>
  !part.includes(" ") || /^\d{0,3}(?: ?[.,] ?\d{1,2}|(?: \d{1,3})[.]?\d{0,2}|[.]\d \d)$/.test(part);

/** The last of the figures belongs to the name after it: "HP 1 .75 KW", "AMPS 8 1 PH". */
function isOfNext(rating: RatingName, figure: string, after: string): boolean {
  // "SF 1.1 3. volts": the number of the next item of a list.
  if (/^[.):]/.test(after) && / \d{1,2}$/.test(figure)) return true;
  const unit = /^ ?([A-Za-z]{1,10})/.exec(after)?.[1]?.toLowerCase() ?? "";
  if (/^(?:ph|phase|fase|fases|mfd|uf)$/.test(unit)) return true;
  const other = ratingOf.get(unit);
  // "HP 1 .5 AMPS 19.2": the current has its own figure.
  if ((other === "amps" || other === "hp") && /^ ?[A-Za-z]{1,10}[ :=]{0,2}[.]?\d/.test(after)) return false;
  const last = read(figure.slice(figure.lastIndexOf(" ") + 1));
  return other !== undefined && other !== rating && last !== undefined && suits(other, last) >= 1.4;
}

function read(written: string): number | undefined {
  const digits = readDigits(written);
  return digits?.thousands ?? digits?.value;
}
