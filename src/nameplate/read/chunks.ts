import type { Chunk } from "./token.ts";

/** White space between runs of characters. */
export const gap = /[\s\u00a0\u200b\ufeff]/;

/** A run of characters up to the next white space, and whether commas part it into cells. */
export interface Run {
  readonly end: number;
  readonly row: boolean;
}

/** The run that starts here. */
export function runFrom(text: string, start: number): Run {
  let end = start;
  while (end < text.length && !gap.test(text[end] ?? "")) end++;
  const run = text.slice(start, Math.min(end, start + longestRow));
  const parts = run.split(",");
  const commasOfFigures =
    parts.length > 1 &&
    parts.every(
      (part, at) =>
        (at === 0 || /^\d{1,2}(?!\d)/.test(part)) &&
        (at === parts.length - 1 || /\d$/.test(part)) &&
        (at === 0 || at === parts.length - 1 || /[\p{L}/-]/u.test(part)),
    );
  const decimals =
    (commasOfFigures && /\p{L}\d|\d-\d/u.test(run)) ||
    /[;|]/.test(run) ||
    /^[^,]*\d,\d{1,2}(?:\/\d+,\d{1,2}){1,4}[^,]*$/.test(run);
  const commas = run.match(/,(?!\d{3}(?!\d)|$)/g)?.length ?? 0;
  return { end, row: commas >= 3 && !decimals };
}

const longestRow = 400;

/** A chunk ends with its run, or at a mark that parts the cells of a table. */
export function chunkEnd(text: string, start: number, run: Run): number {
  for (let at = start; at < run.end; at++) {
    const character = text[at] ?? "";
    if (character === "|" || character === ";") return Math.max(at, start + 1);
    if (character !== ",") continue;
    const figures = /\d/.test(text[at - 1] ?? "") && /\d/.test(text[at + 1] ?? "");
    if (run.row || !figures) return Math.max(at, start + 1);
  }
  return run.end;
}

/** A stretch of text without the punctuation at its ends. */
export function trim(text: string, from: number, to: number): Chunk {
  let start = from;
  let end = to;
  while (start < end && /[^\p{L}\p{N}]/u.test(text[start] ?? "")) start++;
  while (end > start && /[^\p{L}\p{N}]/u.test(text[end - 1] ?? "")) end--;
  return { start, end, text: text.slice(start, end) };
}
