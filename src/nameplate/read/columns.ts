import type { Candidate, Claim } from "./candidate.ts";
import { insideFigure } from "./judge.ts";
import type { Name } from "./naming.ts";
import { valuesOf } from "./propose.ts";
import { isMark, isWord, type Token } from "./token.ts";

const most = 18;

/**
 * Columns: a run of at least two names, then as many values in the same order, on the next line or further on.
 * A name run may be cut in more than one way (SF AMPS | SF, AMPS): each cut is tried.
 */
export function columns(tokens: readonly Token[], names: readonly (readonly Name[])[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++) {
    if ((names[at]?.length ?? 0) === 0 || joinsRun(tokens, names, at)) continue;
    for (const run of runsFrom(tokens, names, at)) {
      if (run.length < 2) continue;
      const last = run.at(-1);
      const found = last ? fill(tokens, run, last.end) : undefined;
      if (found) candidates.push({ start: at, ...found });
      const ahead = last ? valuesAhead(tokens, run, at) : undefined;
      if (ahead) candidates.push({ ...ahead, end: last?.end ?? at });
    }
  }
  return candidates;
}

/** True when a name ends right before this one, so that the run began earlier. */
function joinsRun(tokens: readonly Token[], names: readonly (readonly Name[])[], at: number): boolean {
  let before = at - 1;
  while (before >= 0 && between(tokens[before])) before -= 1;
  for (let start = Math.max(0, before - 3); start <= before; start++)
    if (names[start]?.some((name) => name.end === before + 1)) return true;
  return false;
}

function between(token: Token | undefined): boolean {
  return (
    isWord(token, "and", "y") ||
    (token?.kind === "break" && !token.blank) ||
    isMark(token, "|", ",", "/", "-", ":", ";", "&", "_", "+", "\\") ||
    (isMark(token, ".") && Boolean(token?.chunk.text.includes(".")))
  );
}

/** The cuts of a run of names: the longest names first, and every other cut while there are few. */
function runsFrom(tokens: readonly Token[], names: readonly (readonly Name[])[], at: number): Name[][] {
  const complete: Name[][] = [];
  let open: Name[][] = [[]];
  for (let step = 0; step < most && open.length > 0; step++) {
    const longer: Name[][] = [];
    for (const run of open) {
      const from = run.at(-1)?.end ?? at;
      let next = from;
      while (run.length > 0 && between(tokens[next])) next += 1;
      const options = (names[next] ?? []).filter(
        (option) => !run.some((name) => name.rating === option.rating),
      );
      // What looks like a name on the next line may be a value ("A9917" under SERIAL).
      const lineEnds = tokens.slice(from, next).some(({ kind }) => kind === "break");
      if (run.length > 1 && (options.length === 0 || lineEnds)) complete.push(run);
      for (const option of options.toSorted((a, b) => b.end - a.end)) longer.push([...run, option]);
    }
    open = longer.slice(0, 12);
  }
  return [...complete, ...open].slice(0, 16);
}

function fill(
  tokens: readonly Token[],
  run: readonly Name[],
  from: number,
): Omit<Candidate, "start"> | undefined {
  const claims: Claim[] = [];
  // Names parted by slashes have their values parted by slashes: HP/SF/V, 1/1.25/230.
  const slashed = isMark(tokens[run[0]?.end ?? 0], "/");
  let at = afterHeading(tokens, from);
  let score = 0;
  for (const [index, name] of run.entries()) {
    let skipped = 0;
    // The values of a longer run may stand below an empty line.
    if (index === 0 && run.length >= 3 && tokens[at]?.kind === "break") at += 1;
    while (
      between(tokens[at]) ||
      (index === 0 && tokens[at]?.kind === "break") ||
      isMark(tokens[at], '"', "=", "(", ")", ">") ||
      isWord(tokens[at], "are", "is", "son", "es", "were")
    ) {
      at += 1;
      skipped += 1;
    }
    if (skipped > 6) return undefined;
    const blank = emptyCell(tokens, at);
    if (blank) {
      claims.push({ rating: name.rating, value: undefined, start: at, end: blank, score: 1 });
      at = blank;
      continue;
    }
    const parsed = valuesOf(name.rating, tokens, at, undefined, -0.3)
      .filter(({ fit, end }) => fit > -1.3 && (slashed || !insideFigure(tokens, end)))
      .sort((a, b) => b.fit - a.fit)[0];
    if (!parsed) return undefined;
    const worth = 2 + parsed.fit;
    claims.push({
      rating: name.rating,
      value: parsed.half ? undefined : parsed.value,
      start: at,
      end: parsed.end,
      score: worth,
    });
    score += worth;
    at = parsed.end;
    if (index === 0 && at > from && tokens[at] === undefined && run.length > 1) return undefined;
  }
  return { end: at, score: score - 0.2, claims };
}

/** "3450 / 60 / 1 for rpm, hz and phase": the values before their names, in the same order. */
function valuesAhead(
  tokens: readonly Token[],
  run: readonly Name[],
  at: number,
): Omit<Candidate, "end"> | undefined {
  let end = at;
  while (isWord(tokens[end - 1], "the", "in", "los", "las", "el")) end -= 1;
  if (
    !isWord(tokens[end - 1], "for", "are", "as", "being", "para", "son", "respectively") &&
    !isMark(tokens[end - 1], "=")
  )
    return undefined;
  end -= 1;
  for (let start = end - 1; start >= Math.max(0, end - 5 * run.length); start--) {
    if (tokens[start]?.kind !== "number" || insideFigure(tokens, start)) continue;
    const found = fill(tokens, run, start);
    if (found?.end === end) return { start, score: found.score + 1, claims: found.claims };
  }
  return undefined;
}

/** "Left column: HP, Volts. Right column: 1, 230": a few words and a colon may stand before the values. */
function afterHeading(tokens: readonly Token[], from: number): number {
  for (let at = from; at < from + 9; at++) {
    const token = tokens[at];
    if (isMark(token, ":") && at > from) return at + 1;
    if (token?.kind === "number" && at > from && underHeading(tokens, at)) return at;
    const told =
      at > from + 2 && isWord(tokens[at - 1], "reads", "read", "says", "say", "are", "is", "has", "goes");
    if (told && token?.kind === "number") return at;
    if (token?.kind !== "word" && token?.kind !== "break" && !isMark(token, ".", ",", ":")) break;
  }
  return from;
}

/** "right column 1.5 1.1", "then underneath 1.5": words of place lead straight to the values. */
function underHeading(tokens: readonly Token[], at: number): boolean {
  return isWord(
    tokens[at - 1],
    ...[
      "column",
      "columns",
      "row",
      "line",
      "side",
      "underneath",
      "under",
      "below",
      "beneath",
      "them",
      "it",
      "columna",
    ],
    ...["abajo", "debajo", "then", "values", "numbers"],
  );
}

/** A cell that holds a dash, a question mark or nothing readable. */
function emptyCell(tokens: readonly Token[], at: number): number | undefined {
  let end = at;
  while (isMark(tokens[end], "?", "_", "*")) end += 1;
  return end > at ? end : undefined;
}
