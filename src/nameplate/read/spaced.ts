import { strayBlanks } from "./scattered.ts";
import type { Token } from "./token.ts";

/** A text and, for each of its characters, where it stood in the original. */
export interface Mapped {
  readonly text: string;
  readonly at: readonly number[];
}

/** A whole line of single characters, but for a sentence before or after it. */
const letterSpaced =
  /(?<=^|[.!?,;][^\S\n]{1,3})(?:[^\s](?:[^\S\n]+(?=\S(?:\s|[.!?,;]|$))|$|(?=[.!?,;](?:\s|$)))){4,}/u;

/**
 * Lines written with a space after every character (`H P 1 . 5`) drawn together, and words and figures with a stray
 * blank in them (`V OLTS 23 0`); undefined when there are none.
 */
export function drawTogether(message: string): Mapped | undefined {
  const dropped = new Set<number>();
  let offset = 0;
  for (const line of message.split("\n")) {
    const spread = line.length < 200 ? letterSpaced.exec(line) : null;
    if (spread)
      for (let column = spread.index; column < spread.index + spread[0].length; column++) {
        if (/\s/.test(line[column] ?? "")) dropped.add(offset + column);
      }
    else for (const column of strayBlanks(line)) dropped.add(offset + column);
    offset += line.length + 1;
  }
  if (dropped.size === 0) return undefined;
  let text = "";
  const at: number[] = [];
  for (let index = 0; index < message.length; index++) {
    if (dropped.has(index)) continue;
    text += message[index];
    at.push(index);
  }
  return { text, at };
}

/** The tokens of a drawn-together text with the offsets of the original. */
export function restoreOffsets(tokens: readonly Token[], { at }: Mapped): Token[] {
  const original = (offset: number) => at[offset] ?? 0;
  return tokens.map((token) => ({
    ...token,
    start: original(token.start),
    end: original(token.end - 1) + 1,
  }));
}
