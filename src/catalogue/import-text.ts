import { TextDecoder } from "node:util";
import type { RowError } from "./table.ts";

/** A file is not text in an encoding that can be read; says where. */
export class EncodingFault extends Error {
  override readonly name = "EncodingFault";
  readonly fault: RowError;

  constructor(line: number, value: string) {
    super("not UTF-8");
    const expected = 'UTF-8 text; save the sheet as "CSV UTF-8"';
    this.fault = { line, column: "", value, expected };
  }
}

/**
 * Bytes as text with one kind of line break, in pieces: UTF-8, or UTF-16 where its byte-order mark says so.
 * Throws {@link EncodingFault} at bytes that are neither.
 */
export async function* textOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined;
  let line = 1;
  let heldBack = "";
  for await (const chunk of chunks) {
    decoder ??= new TextDecoder(encodingOf(chunk), { fatal: true });
    const text = `${heldBack}${decodeOrTell(decoder, chunk, line)}`;
    // A CR at the end may be the first half of a CR LF.
    heldBack = text.endsWith("\r") ? "\r" : "";
    const whole = oneLineBreak(heldBack === "" ? text : text.slice(0, -1));
    line += countLines(whole);
    if (whole !== "") yield whole;
  }
  const last = `${heldBack}${decoder === undefined ? "" : decodeOrTell(decoder, undefined, line)}`;
  if (last !== "") yield oneLineBreak(last);
}

const oneLineBreak = (text: string) => (text.includes("\r") ? text.replaceAll(/\r\n?/g, "\n") : text);

function decodeOrTell(decoder: TextDecoder, chunk: Uint8Array | undefined, line: number): string {
  try {
    return decoder.decode(chunk, { stream: chunk !== undefined });
  } catch {
    const seen = new TextDecoder("utf-8").decode(chunk);
    const before = oneLineBreak(seen.slice(0, Math.max(0, seen.indexOf("\ufffd"))));
    const row = before.slice(before.lastIndexOf("\n") + 1);
    throw new EncodingFault(line + countLines(before), `${row.slice(-40)}\ufffd`);
  }
}

function encodingOf([first, second]: Uint8Array): string {
  if (first === 0xff && second === 0xfe) return "utf-16le";
  return "utf-8";
}

function countLines(text: string): number {
  let lines = 0;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lines++;
  return lines;
}
