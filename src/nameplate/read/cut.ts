import { trim } from "./chunks.ts";
import { readDigits, vulgarFraction } from "./digits.ts";
import { isGluedWord, mendWord, type Segment, segment } from "./segment.ts";
import { type Chunk, fold, type Token } from "./token.ts";
import { unfinishedFigure } from "./unfinished.ts";

/** What one unbroken run of characters may be made of besides letters and digits. */
const core = /[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞](?:[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞.,/_'’+&*–—-]*[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞])?/u;

/** Half-open pieces of one chunk: cores of letters and digits between other marks. */
export function cutChunk(
  text: string,
  from: number,
  to: number,
  glued: boolean,
  wide: boolean,
  tokens: Token[],
): void {
  const common = new Common(glued, wide, trim(text, from, to));
  const unfinished = unfinishedFigure(text, from, to);
  if (unfinished) {
    const { start, end, shownEnd } = unfinished;
    for (let at = from; at < start; at++) pushMark(text, at, common.next(), tokens);
    tokens.push({ kind: "partial", norm: text.slice(start, end), start, end, ...common.next() });
    if (end < shownEnd) cutWords(text, end, shownEnd, common, tokens);
    for (let at = shownEnd; at < to; at++) pushMark(text, at, common.next(), tokens);
    return;
  }
  let at = from;
  while (at < to) {
    const rest = text.slice(at, to);
    const match = core.exec(rest);
    const start = match ? at + match.index : to;
    for (let mark = at; mark < start; mark++) {
      if (isPoint(text, mark) && mark === start - 1 && /\d/.test(text[start] ?? "")) continue;
      pushMark(text, mark, common.next(), tokens);
    }
    if (!match) return;
    const end = start + match[0].length;
    const dotted = start > at && isPoint(text, start - 1) && /\d/.test(text[start] ?? "");
    cutCore(text, dotted ? start - 1 : start, end, common, tokens);
    at = end;
  }
}

/** A point of its own, not the end of a row of dots. */
const isPoint = (text: string, at: number) => text[at] === "." && text[at - 1] !== ".";

/** What the pieces of one chunk have in common: only the first may have white space before it. */
class Common {
  #glued: boolean;
  #wide: boolean;
  readonly #chunk: Chunk;

  constructor(glued: boolean, wide: boolean, chunk: Chunk) {
    this.#glued = glued;
    this.#wide = wide;
    this.#chunk = chunk;
  }

  next(): Pick<Token, "glued" | "wide" | "chunk"> {
    const piece = { glued: this.#glued, wide: this.#wide, chunk: this.#chunk };
    this.#glued = true;
    this.#wide = false;
    return piece;
  }
}

function pushMark(
  text: string,
  at: number,
  common: Pick<Token, "glued" | "wide" | "chunk">,
  tokens: Token[],
): void {
  const character = text[at] ?? "";
  const norm = character === "–" || character === "—" || character === "−" ? "-" : character;
  tokens.push({ kind: "mark", norm, start: at, end: at + 1, ...common });
}

function cutCore(text: string, start: number, end: number, common: Common, tokens: Token[]): void {
  const run = text.slice(start, end);
  if (!/[\d½¼¾⅓⅔⅛⅜⅝⅞]/.test(run) && !/^[lI]\.[lISOB]/.test(run)) {
    cutWords(text, start, end, common, tokens);
    return;
  }
  // "S.F.-1.27", "S.F.....1.10": dots or a dash lead from the abbreviation to its figure.
  const led = /^((?:\p{L}\.){2,4})([-._]*)(?=\d)/u.exec(run);
  if (led) {
    const figure = start + led[0].length;
    cutWords(text, start, start + (led[1]?.length ?? 0), common, tokens);
    for (let at = start + (led[1]?.length ?? 0); at < figure; at++) pushMark(text, at, common.next(), tokens);
    cutCore(text, figure, end, common, tokens);
    return;
  }
  const mended = mendWord(run);
  if (mended !== undefined) {
    tokens.push({
      kind: "word",
      norm: mended,
      upper: run === run.toUpperCase(),
      start,
      end,
      ...common.next(),
    });
    return;
  }
  if (/^[0-9]{1,2}(?:st|nd|rd|th)$/i.test(run)) {
    tokens.push({ kind: "word", norm: fold(run), upper: false, start, end, ...common.next() });
    return;
  }
  // "2-pole", "12-year-old": a figure and plain words, unlike a part number.
  const compound = /^\d{1,4}(?=(?:-\p{Ll}{3,12}){1,3}$|-(?:something|blank|algo)-\p{L}$)/u.exec(run);
  const segments = segment(run);
  if (segments) {
    for (const piece of segments) pushSegment(text, start, piece, common, tokens);
    return;
  }
  if (compound) {
    const cut = start + compound[0].length;
    cutCore(text, start, cut, common, tokens);
    cutWords(text, cut, end, common, tokens);
    return;
  }
  // A comma or a slash between things that stand for themselves parts them; in a part number it does not.
  const parts = splitAt(run, /,(?!\d)|,(?<!\d,)/);
  const dashed = splitAt(run, /-/);
  // "2HP-230V-60HZ-1PH-INS.B": entries of a label joined by dashes, not a part number.
  const entries = dashed.filter(({ start: from, end: to }) =>
    /^\d[\d./]*(?:HP|V|HZ|PH|RPM|A|SF)$/i.test(run.slice(from, to)),
  );
  const dots = entries.length >= 3 ? dashed : splitAt(run, /[.](?=\p{L}{3})/u);
  const pieces = parts.length > 1 ? parts : dots;
  if (pieces.length > 1) {
    for (const [index, piece] of pieces.entries()) {
      if (index > 0) pushMark(text, start + piece.start - 1, common.next(), tokens);
      if (piece.end > piece.start) cutCore(text, start + piece.start, start + piece.end, common, tokens);
    }
    return;
  }
  tokens.push({ kind: "code", norm: fold(run), start, end, ...common.next() });
}

function splitAt(run: string, separator: RegExp): { start: number; end: number }[] {
  const parts: { start: number; end: number }[] = [];
  let start = 0;
  for (const match of run.matchAll(new RegExp(separator, `${separator.flags.replace("g", "")}g`))) {
    parts.push({ start, end: match.index });
    start = match.index + 1;
  }
  parts.push({ start, end: run.length });
  return parts;
}

/** Letters only: words, the marks between them, and dotted abbreviations (`S.F.`) as one word. */
function cutWords(text: string, start: number, end: number, common: Common, tokens: Token[]): void {
  const run = text.slice(start, end);
  if (/^[a-z]+$/.test(run)) {
    tokens.push({ kind: "word", norm: run, upper: false, start, end, ...common.next() });
    return;
  }
  if (/^(?:\p{L}\.){1,4}\p{L}?$/u.test(run)) {
    const norm = fold(run).replaceAll(".", "");
    tokens.push({ kind: "word", norm, upper: run === run.toUpperCase(), start, end, ...common.next() });
    return;
  }
  const labelled = /^(CODE|INSCL|INSCLASS|INS|CLASS|CL|INSUL|KVACODE|KVA)([A-HJ-NPR-V])$/.exec(run);
  if (labelled) {
    const cut = start + (labelled[1]?.length ?? 0);
    const common1 = common.next();
    tokens.push({
      kind: "word",
      norm: fold(text.slice(start, cut)),
      upper: true,
      start,
      end: cut,
      ...common1,
    });
    tokens.push({
      kind: "word",
      norm: fold(text.slice(cut, end)),
      upper: true,
      start: cut,
      end,
      ...common.next(),
    });
    return;
  }
  for (const match of run.matchAll(/[\p{L}\p{N}]+(?:['’][\p{L}]+)*|./gu)) {
    const from = start + match.index;
    const to = from + match[0].length;
    if (!/[\p{L}\p{N}]/u.test(match[0])) pushMark(text, from, common.next(), tokens);
    else {
      const folded = fold(match[0]);
      const owned = folded.replace(/['’]s$/, "");
      // "the kW's worn off", but "neighbor's" keeps its s.
      const norm =
        owned !== folded &&
        owned.length <= 5 &&
        !/^(?:it|that|there|he|she|what|who|here|let|one)$/.test(owned) &&
        isGluedWord(owned)
          ? owned
          : folded.replace(/['’]/g, "");
      tokens.push({
        kind: "word",
        norm,
        upper: match[0] === match[0].toUpperCase(),
        start: from,
        end: to,
        ...common.next(),
      });
    }
  }
}

function pushSegment(text: string, offset: number, piece: Segment, common: Common, tokens: Token[]): void {
  const start = offset + piece.start;
  const end = offset + piece.end;
  const raw = text.slice(start, end);
  if (piece.kind === "mark") {
    pushMark(text, start, common.next(), tokens);
    return;
  }
  if (piece.kind === "fraction") {
    const value = vulgarFraction(raw) ?? 0;
    tokens.push({
      kind: "number",
      form: "fraction",
      value,
      lookalikes: 0,
      norm: raw,
      start,
      end,
      ...common.next(),
    });
    return;
  }
  if (piece.kind === "number") {
    const digits = readDigits(piece.norm);
    if (!digits) return;
    tokens.push({
      kind: "number",
      form: "digits",
      lookalikes: piece.lookalikes,
      ...digits,
      start,
      end,
      ...common.next(),
    });
    return;
  }
  tokens.push({
    kind: "word",
    norm: fold(raw),
    upper: raw === raw.toUpperCase(),
    start,
    end,
    ...common.next(),
  });
}
