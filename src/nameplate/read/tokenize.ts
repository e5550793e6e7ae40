import { digitLike, readDigits, vulgarFraction } from "./digits.ts";
import { isGluedWord, mendWord, type Segment, segment } from "./segment.ts";
import { type Chunk, fold, type Token } from "./token.ts";

/** What one unbroken run of characters may be made of besides letters and digits. */
const core = /[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞](?:[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞.,/_'’+&*–—-]*[\p{L}\p{N}½¼¾⅓⅔⅛⅜⅝⅞])?/u;
const gap = /[\s\u00a0\u200b\ufeff]/;
/** A number of which a character is missing (`1.?`, `2_0`, `34??`, `1.x`), and the unit glued to it. */
const partial =
  /^((?=\D{0,3}\d|\?)[0-9.,/-]{0,12}(?:_+|\?{2,6}|\?(?=[\d/.,-])|(?<=[.,/-])\?|(?<=\d)\*+|(?<=\d[.,])[xX]{1,2}(?![a-z])|(?<=\d)[xX]{2})[0-9.,/?_*-]{0,12})(\p{L}{0,8})$/u;

/** Cuts a message into typed pieces, in one pass. */
export function tokenize(message: string): Token[] {
  // A raised dot between figures is a decimal point.
  const text = message.replace(/(?<=\d)[·•](?=\d)/g, ".");
  const tokens: Token[] = [];
  let glued = false;
  let wide = false;
  let at = 0;
  let run: Run = { end: 0, row: false };
  while (at < text.length) {
    const character = text[at] ?? "";
    if (character === "\n" || character === "\r") {
      let end = at;
      while (end < text.length && /\s/.test(text[end] ?? "")) end++;
      const blank = (text.slice(at, end).match(/\n|\r(?!\n)/g)?.length ?? 0) > 1;
      tokens.push({
        kind: "break",
        start: at,
        end,
        norm: "\n",
        glued: false,
        wide: false,
        chunk: { start: at, end, text: "" },
        blank,
      });
      at = end;
      glued = false;
      wide = false;
      continue;
    }
    if (gap.test(character)) {
      let end = at;
      while (end < text.length && gap.test(text[end] ?? "") && text[end] !== "\n" && text[end] !== "\r")
        end++;
      wide ||= character === "\t" || end - at > 1;
      glued = false;
      at = end;
      continue;
    }
    if (at >= run.end) run = runFrom(text, at);
    const end = chunkEnd(text, at, run);
    cutChunk(text, at, end, glued, wide, tokens);
    at = end;
    glued = true;
    wide = false;
  }
  return readLoneOnes(text, tokens);
}

/** A run of characters up to the next white space, and whether commas part it into cells. */
interface Run {
  readonly end: number;
  readonly row: boolean;
}

function runFrom(text: string, start: number): Run {
  let end = start;
  while (end < text.length && !gap.test(text[end] ?? "")) end++;
  const run = text.slice(start, Math.min(end, start + longestRow));
  const decimals = /[;|]/.test(run) || /^[^,]*\d,\d{1,2}(?:\/\d+,\d{1,2}){1,4}[^,]*$/.test(run);
  const commas = run.match(/,(?!\d{3}(?!\d)|$)/g)?.length ?? 0;
  return { end, row: commas >= 3 && !decimals };
}

const longestRow = 400;

/** A chunk ends with its run, or at a mark that parts the cells of a table. */
function chunkEnd(text: string, start: number, run: Run): number {
  for (let at = start; at < run.end; at++) {
    const character = text[at] ?? "";
    if (character === "|" || character === ";") return Math.max(at, start + 1);
    if (character !== ",") continue;
    const figures = /\d/.test(text[at - 1] ?? "") && /\d/.test(text[at + 1] ?? "");
    if (run.row || !figures) return Math.max(at, start + 1);
  }
  return run.end;
}

/** Half-open pieces of one chunk: cores of letters and digits between other marks. */
function cutChunk(
  text: string,
  from: number,
  to: number,
  glued: boolean,
  wide: boolean,
  tokens: Token[],
): void {
  const trimmed = trim(text, from, to);
  let first = true;
  const common = () => {
    const piece = { glued: first ? glued : true, wide: first && wide, chunk: trimmed };
    first = false;
    return piece;
  };
  const shown = text.slice(from, to).replace(/^["'“”(:]{1,3}|["'“”),;:!.]{1,3}$/g, "");
  const asked = /^[\d.,/-]*\d\?+$/.test(shown) && !/^\d{2}\?\?$|^\d{3}\?$/.test(shown);
  const unread = shown.length <= 32 && /\d/.test(shown) && !asked ? partial.exec(shown)?.[1] : undefined;
  if (unread !== undefined) {
    const start = text.indexOf(shown, from);
    const end = start + unread.length;
    for (let at = from; at < start; at++) pushMark(text, at, common(), tokens);
    tokens.push({ kind: "partial", norm: unread, start, end, ...common() });
    if (end < start + shown.length) cutWords(text, end, start + shown.length, common, tokens);
    for (let at = start + shown.length; at < to; at++) pushMark(text, at, common(), tokens);
    return;
  }
  let at = from;
  while (at < to) {
    const rest = text.slice(at, to);
    const match = core.exec(rest);
    const start = match ? at + match.index : to;
    for (let mark = at; mark < start; mark++) {
      if (text[mark] === "." && mark === start - 1 && /\d/.test(text[start] ?? "")) continue;
      pushMark(text, mark, common(), tokens);
    }
    if (!match) return;
    const end = start + match[0].length;
    const dotted = start > at && text[start - 1] === "." && /\d/.test(text[start] ?? "");
    cutCore(text, dotted ? start - 1 : start, end, common, tokens);
    at = end;
  }
}

type Common = () => Pick<Token, "glued" | "wide" | "chunk">;

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
  const mended = mendWord(run);
  if (mended !== undefined) {
    tokens.push({ kind: "word", norm: mended, upper: run === run.toUpperCase(), start, end, ...common() });
    return;
  }
  if (/^[0-9]{1,2}(?:st|nd|rd|th)$/i.test(run)) {
    tokens.push({ kind: "word", norm: fold(run), upper: false, start, end, ...common() });
    return;
  }
  // "2-pole", "12-year-old": a figure and plain words, unlike a part number.
  const compound = /^\d{1,4}(?=(?:-\p{Ll}{3,12}){1,3}$)/u.exec(run);
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
  const pieces = parts.length > 1 ? parts : splitAt(run, /[.](?=\p{L}{3})/u);
  if (pieces.length > 1) {
    for (const [index, piece] of pieces.entries()) {
      if (index > 0) pushMark(text, start + piece.start - 1, common(), tokens);
      if (piece.end > piece.start) cutCore(text, start + piece.start, start + piece.end, common, tokens);
    }
    return;
  }
  tokens.push({ kind: "code", norm: fold(run), start, end, ...common() });
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
  if (/^(?:\p{L}\.){1,4}\p{L}?$/u.test(run)) {
    const norm = fold(run).replaceAll(".", "");
    tokens.push({ kind: "word", norm, upper: run === run.toUpperCase(), start, end, ...common() });
    return;
  }
  const labelled = /^(CODE|INS|CLASS|CL|INSUL|KVA)([A-HJ-NPR-V])$/.exec(run);
  if (labelled) {
    const cut = start + (labelled[1]?.length ?? 0);
    const common1 = common();
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
      ...common(),
    });
    return;
  }
  for (const match of run.matchAll(/[\p{L}\p{N}]+(?:['’][\p{L}]+)*|./gu)) {
    const from = start + match.index;
    const to = from + match[0].length;
    if (!/[\p{L}\p{N}]/u.test(match[0])) pushMark(text, from, common(), tokens);
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
        ...common(),
      });
    }
  }
}

function pushSegment(text: string, offset: number, piece: Segment, common: Common, tokens: Token[]): void {
  const start = offset + piece.start;
  const end = offset + piece.end;
  const raw = text.slice(start, end);
  if (piece.kind === "mark") {
    pushMark(text, start, common(), tokens);
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
      ...common(),
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
      ...common(),
    });
    return;
  }
  tokens.push({ kind: "word", norm: fold(raw), upper: raw === raw.toUpperCase(), start, end, ...common() });
}

function trim(text: string, from: number, to: number): Chunk {
  let start = from;
  let end = to;
  while (start < end && /[^\p{L}\p{N}]/u.test(text[start] ?? "")) start++;
  while (end > start && /[^\p{L}\p{N}]/u.test(text[end - 1] ?? "")) end--;
  return { start, end, text: text.slice(start, end) };
}

const counted = new Set(["hp", "ph", "phase", "horsepower", "phases"]);

/** A lone `l` or `I` beside HP or PH on a worn label is a one: `HP I`, `l HP`. */
function readLoneOnes(text: string, tokens: readonly Token[]): Token[] {
  return tokens.map((token, at) => {
    if (token.kind !== "word" || token.end - token.start !== 1 || digitLike(text[token.start]) !== "1")
      return token;
    const [before, after] = [tokens[at - 1], tokens[at + 1]];
    const named = before?.kind === "word" && counted.has(before.norm) && before.upper;
    const speech = after?.kind === "word" && !after.upper && !counted.has(after.norm);
    const united =
      after?.kind === "word" && counted.has(after.norm) && (text[token.start] === "l" || after.upper);
    const lead = before?.kind === "mark" ? tokens[at - 2] : before;
    const letter = lead?.kind === "word" && /^(?:code|kva|ins|cl|class|codigo|clase)$/.test(lead.norm);
    if (letter || (!(named && !speech) && !united)) return token;
    const { start, end, glued, wide, chunk } = token;
    return {
      kind: "number",
      form: "digits",
      value: 1,
      norm: "1",
      lookalikes: 1,
      start,
      end,
      glued,
      wide,
      chunk,
    };
  });
}
