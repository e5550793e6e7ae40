import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import type { Name } from "./naming.ts";
import { suits } from "./plausible.ts";
import { valuesOf } from "./propose.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** A stretch of tokens: a line, or a cell of it. */
export interface Cell {
  readonly start: number;
  readonly end: number;
}

const fewestCells = 3;

/**
 * Tables with a separator: a line of column heads and, under it, a line with as many cells. Unlike `columns`,
 * heads that name no rating and empty cells keep their place.
 */
export function grid(tokens: readonly Token[], names: readonly (readonly Name[])[]): Candidate[] {
  const candidates: Candidate[] = [];
  // The rule under the heads of a table holds nothing: |---|---|.
  const lines = linesOf(tokens).filter(({ start, end }) =>
    tokens.slice(start, end).some(({ kind }) => kind !== "mark"),
  );
  for (let row = 0; row + 1 < lines.length; row++) {
    const [line, below] = [lines[row], lines[row + 1]];
    if (!line || !below) continue;
    for (const separator of [",", ";", "|", "wide"]) {
      const [heads, cells] = [cellsOf(tokens, line, separator), cellsOf(tokens, below, separator)];
      if (heads.length < fewestCells || heads.length !== cells.length) continue;
      const claims: Claim[] = [];
      for (const [index, head] of heads.entries()) {
        const cell = cells[index];
        const rating = cell && cell.end > cell.start ? headOf(tokens, names, head) : undefined;
        const claim = rating && cell ? cellValue(tokens, rating, cell) : undefined;
        if (claim) claims.push(claim);
      }
      if (claims.length < 2) continue;
      const score = claims.reduce((sum, claim) => sum + claim.score, 0);
      candidates.push({ start: line.start, end: below.end, score: score + 0.5 * heads.length, claims });
    }
  }
  return candidates;
}

/** The lines of a text, empty ones left out. */
export function linesOf(tokens: readonly Token[]): Cell[] {
  const lines: Cell[] = [];
  let start = 0;
  for (let at = 0; at <= tokens.length; at++) {
    if (at < tokens.length && tokens[at]?.kind !== "break") continue;
    if (at > start) lines.push(withoutProse(tokens, { start, end: at }));
    start = at + 1;
  }
  return lines;
}

/** A line without the sentences before and after its figures: "Good evening. HP | SF", "3450 | 56Y. My pump died." */
function withoutProse(tokens: readonly Token[], line: Cell): Cell {
  let { start, end } = line;
  const figure = ({ kind }: Token) => kind === "number" || kind === "code" || kind === "partial";
  const stops = (at: number) =>
    isMark(tokens[at], ".", "!", "?") && !tokens[at + 1]?.glued && at + 1 < line.end;
  for (let at = line.start + 1; at < line.end; at++) {
    if (!stops(at)) continue;
    if (!tokens.slice(line.start, at).some(figure) && tokens.slice(line.start, at).every(isSpeech))
      start = at + 1;
    else if (
      end === line.end &&
      !tokens.slice(at, line.end).some(({ wide }) => wide) &&
      isProse(tokens, at, line.end)
    )
      end = at;
  }
  return { start, end };
}

const isSpeech = ({ kind, wide }: Token) => kind === "word" || (kind === "mark" && !wide);

/** At least three words in a row from here, or nothing but words to the end: no cell. */
function isProse(tokens: readonly Token[], from: number, end: number): boolean {
  const isTalk = ({ kind, norm }: Token) => kind === "word" && norm.length > 1;
  const rest = tokens.slice(from + 1, end);
  return (
    rest.slice(0, 3).filter(({ kind }) => kind === "word").length === 3 ||
    (rest.some(isTalk) && rest.every((token) => isTalk(token) || isMark(token, "?", "!", ".")))
  );
}

/** The cells of a line, by a mark between them or by wide gaps (`wide`). */
export function cellsOf(tokens: readonly Token[], line: Cell, separator: string): Cell[] {
  const cells: Cell[] = [];
  let start = line.start;
  for (let at = line.start; at < line.end; at++) {
    const token = tokens[at];
    if (separator === "wide" ? token?.wide && at > line.start : isMark(token, separator)) {
      // A rule drawn at the edge of the table opens no cell.
      if (at > line.start || separator === "wide") cells.push({ start, end: at });
      start = separator === "wide" ? at : at + 1;
    }
  }
  if (start < line.end) cells.push({ start, end: line.end });
  return cells;
}

const ofPlace: Readonly<Record<string, RatingName>> = {
  "breaker amps": "breakerAmps",
  breaker: "breakerAmps",
  "breaker poles": "breakerPoles",
  poles: "breakerPoles",
  "supply volts": "supplyVolts",
  supply: "supplyVolts",
  "wired volts": "supplyVolts",
  "hours per day": "hoursPerDay",
};

const greetings = [
  "ok",
  "okay",
  "so",
  "hi",
  "hey",
  "hello",
  "well",
  "here",
  "its",
  "anyway",
  "hola",
  "bueno",
];

/** The rating a head names as a whole: "supply volts" is not the label's volts. */
export function headOf(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  head: Cell,
): RatingName | undefined {
  const words = tokens.slice(head.start, head.end).filter(({ kind }) => kind === "word");
  const whole = words.map(({ norm }) => norm).join(" ");
  if (Object.hasOwn(ofPlace, whole)) return ofPlace[whole];
  const sentence = afterSentence(tokens, head);
  for (let start = sentence; start < head.end; start++) {
    if (tokens[start]?.kind === "mark" || isWord(tokens[start], ...greetings)) continue;
    const whole = names[start]?.find((name) =>
      tokens
        .slice(name.end, head.end)
        .every((token) => token.kind === "mark" || isWord(token, "rated", "no", "hp", "rpm", "a", "v")),
    );
    return whole?.rating;
  }
  return undefined;
}

/** "Good evening. HP": a head may have a sentence before it. */
function afterSentence(tokens: readonly Token[], head: Cell): number {
  for (let at = head.end - 1; at > head.start + 1; at--) {
    const before = tokens[at - 1];
    const ends = isMark(before, ".", "!", "?", ",", ":") && !tokens[at]?.glued;
    if (ends && tokens[at - 2]?.kind === "word") return at;
  }
  return head.start;
}

/** A cell may have a sentence after it: "1. I have two dogs". */
function beforeSentence(tokens: readonly Token[], cell: Cell): Cell {
  for (let at = cell.start + 1; at < cell.end; at++)
    if (isMark(tokens[at], ".", "!") && tokens[at]?.glued && !tokens[at + 1]?.glued)
      return { ...cell, end: at };
  return cell;
}

/** What a cell under or beside the name of a rating says of it. */
export function cellValue(tokens: readonly Token[], rating: RatingName, box: Cell): Claim | undefined {
  const cell = beforeSentence(tokens, { ...box, start: afterSentence(tokens, box) });
  let start = cell.start;
  while (start < cell.end && isMark(tokens[start], '"', "'", "|")) start += 1;
  const single = tokens[start];
  if (rating === "breakerPoles" && single?.kind === "number" && single.value <= 3)
    return { rating, value: single.value as RatingValue<RatingName>, start, end: cell.end, score: 4 };
  if (rating === "modelNumbers" || rating === "serialNumber") {
    const last = tokens[cell.end - 1];
    const text = single && last && last.chunk.start === single.chunk.start ? single.chunk.text : undefined;
    return text
      ? { rating, value: text as RatingValue<RatingName>, start, end: cell.end, score: 4 }
      : undefined;
  }
  const whole = valuesOf(rating, tokens, start, undefined, -0.3)
    .filter(({ end }) =>
      tokens.slice(end, cell.end).every((token) => token.kind === "mark" || token.kind === "word"),
    )
    .filter(({ end, fit }) => end <= cell.end && fit > -1.5)
    .toSorted((a, b) => b.end - a.end || b.fit - a.fit)[0];
  if (!whole) return undefined;
  if (rating === "supplyVolts" && single?.kind === "number" && suits(rating, single.value) < 0)
    return undefined;
  return {
    rating,
    value: whole.half ? undefined : whole.value,
    start,
    end: whole.end,
    score: 2.4 + whole.fit,
  };
}
