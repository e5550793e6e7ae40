import type { Candidate } from "./candidate.ts";
import { shapesAt } from "./figureShapes.ts";
import { one } from "./one.ts";
import { PhraseBook } from "./phrases.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";
import { foreignUnits } from "./words/units.ts";

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
      !insideBrackets(tokens, at) &&
      !token.glued
    )
      aside(at, at + 2, 5);
    // "there's 2 amps numbers", "two voltages listed: …"
    const several = token.value === 2 || token.value === 3;
    if (several && !tokens[at + 1]?.glued && isCounting(previous)) {
      const counted = isWord(tokens[at + 1], "amp", "amps", "volt", "volts", "voltages", "rpm", "rpms");
      const after = tokens[at + 2];
      if (
        counted &&
        (isMark(after, ",", ":", ".") ||
          isWord(
            after,
            "numbers",
            "values",
            "figures",
            "ratings",
            "listed",
            "lines",
            "readings",
            "on",
            "and",
          ))
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
    // "FORM 2A", "REV. 3": what numbers a paper, no rating.
    const lead = isMark(previous, ".", ":", "#") ? tokens[at - 2] : previous;
    if (isWord(lead, ...papers) && token.chunk.start !== lead?.chunk.start && !tokens[at]?.glued) {
      let end = at + 1;
      while ((tokens[end]?.start ?? token.chunk.end) < token.chunk.end) end += 1;
      aside(at, end, 6);
    }
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
    const entry = otherEntry(tokens, at);
    if (entry !== undefined) aside(entry, at + 1, 6);
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
    for (const { end, score } of shapesAt(tokens, at)) aside(at, end, score);
  }
  return candidates;
}

const otherEntries = new PhraseBook<true>().addAll(
  list(`
  power factor, factor de potencia, pf, eff, efficiency, nom eff, nominal efficiency, eficiencia, rendimiento, temp
  rise, temperature rise, weight, peso, brg, bearing, bearings, shaft end bearing, enclosure, ip, cos phi, cos
`),
  true,
);

/** "Power factor is given as 0.92", "EFF 78.5": an entry of the label that is none of the ratings. */
function otherEntry(tokens: readonly Token[], at: number): number | undefined {
  for (let start = at - 1; start >= Math.max(0, at - 7); start--) {
    const name = otherEntries.longestAt(tokens, start);
    if (!name) continue;
    const near = tokens.slice(name.end, at).every(
      (token, i) =>
        isMark(token, ":", "=", "-", "φ") ||
        // "PF....0.92", but "killed the bearings. 1.5hp"
        (isMark(token, ".") && (tokens[name.end + i + 1]?.glued ?? false)) ||
        isWord(token, "is", "given", "as", "of", "es", "de", "at", "printed", "listed"),
    );
    return near ? name.start : undefined;
  }
  return undefined;
}

/** "there's 2 amps numbers", "Two amp lines": the figure counts lines of the label. */
function isCounting(previous: Token | undefined): boolean {
  return (
    previous === undefined ||
    previous.kind === "break" ||
    isMark(previous, ".", "!") ||
    isWord(previous, "theres", "are", "lists", "hay", "shows", "gives", "has", "says")
  );
}

/** An opened bracket before this place is not closed yet. */
function insideBrackets(tokens: readonly Token[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 12); before--) {
    if (isMark(tokens[before], ")")) return false;
    if (isMark(tokens[before], "(")) return true;
  }
  return false;
}

const papers = list(`
  form, rev, revision, lot, batch, invoice, factura, dwg, drawing, page, pagina, ticket, zip
`);

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

/** A quotation was opened before: the mark after the figure closes it and stands for no inches. */
function quotedBefore(tokens: readonly Token[], at: number): boolean {
  let marks = 0;
  for (let before = at - 1; before >= Math.max(0, at - 12) && tokens[before]?.kind !== "break"; before--)
    if (isMark(tokens[before], '"', "“", "”", "'")) marks += 1;
  return marks % 2 === 1;
}

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
  if (unit.norm === "am") return !unit.glued && isWord(next, "i");
  if (
    list(`
  st, m, k, w, ga, mi, th
`).includes(unit.norm)
  )
    return !unit.glued;
  if (unit.norm === "pin" || unit.norm === "wire" || unit.norm === "bar") return false;
  return false;
}
