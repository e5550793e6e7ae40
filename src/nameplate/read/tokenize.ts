import { chunkEnd, gap, type Run, runFrom } from "./chunks.ts";
import { cutChunk } from "./cut.ts";
import { digitLike } from "./digits.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Cuts a message into typed pieces, in one pass. */
export function tokenize(message: string): Token[] {
  // A raised dot between figures is a decimal point.
  const text = message
    .replace(/(?<=\d)[·•](?=\d)/g, ".")
    .replace(/[⁄∕]/g, "/")
    // "3'450"
    .replace(/(?<=(?<![\d'])\d{1,2})'(?=\d{3}(?!\d))/g, ",")
    // The S of SF taken for a five: "5F 1.65", "5FA 9.6".
    .replace(/(?<![\p{L}\d.,/-])5(?=[.]?FA?[.]?[ :=]{1,2}[1lI]?\d?[.,]\d)/gu, "S");
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

const counted = new Set(["hp", "ph", "phase", "horsepower", "phases"]);

/** A voltage of look-alikes only, after its name: `VOLTS llS`. */
function voltsInLetters(text: string, tokens: readonly Token[], at: number): Token | undefined {
  const token = tokens[at];
  if (token?.kind !== "word" || token.end - token.start !== 3) return undefined;
  const name = tokens[isMark(tokens[at - 1], ":", "=", ".") ? at - 2 : at - 1];
  if (!isWord(name, "volts", "volt", "v", "vac", "voltage", "voltios", "voltaje")) return undefined;
  const digits = [...text.slice(token.start, token.end)].map((letter) => digitLike(letter) ?? "x").join("");
  const value = Number(digits);
  if (Number.isNaN(value) || suits("volts", value) < 2) return undefined;
  const { start, end, glued, wide, chunk } = token;
  return {
    kind: "number",
    form: "digits",
    value,
    norm: digits,
    lookalikes: 3,
    start,
    end,
    glued,
    wide,
    chunk,
  };
}

/** A lone `l` or `I` beside HP or PH on a worn label is a one: `HP I`, `l HP`. */
function readLoneOnes(text: string, tokens: readonly Token[]): Token[] {
  return tokens.map((token, at) => {
    const volts = voltsInLetters(text, tokens, at);
    if (volts) return volts;
    if (token.kind !== "word" || token.end - token.start !== 1 || digitLike(text[token.start]) !== "1")
      return token;
    const after = tokens[at + 1];
    let back = at - 1;
    while (isMark(tokens[back], ".", ":", "=", "-", "_", "|")) back -= 1;
    const lead = tokens[back];
    const named =
      lead?.kind === "word" &&
      counted.has(lead.norm) &&
      (lead.upper || text[token.start] === "l" || isMark(tokens[at - 1], ":", "="));
    const speech = after?.kind === "word" && !after.upper && !counted.has(after.norm);
    const united =
      after?.kind === "word" && counted.has(after.norm) && (text[token.start] === "l" || after.upper);
    const letter = lead?.kind === "word" && /^(?:code|kva|ins|cl|class|codigo|clase)$/.test(lead.norm);
    if (letter || (!(named && !(speech && text[token.start] === "I")) && !united)) return token;
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
