import type { Token } from "./token.ts";

/** A text and, for each of its characters, where it stood in the original. */
export interface Mapped {
  readonly text: string;
  readonly at: readonly number[];
}

const letterSpaced = /^[^\S\n]*(?:[^\s](?:[^\S\n]+|$)){4,}$/u;

/** Lines written with a space after every character (`H P 1 . 5`) drawn together; undefined when there are none. */
export function drawTogether(message: string): Mapped | undefined {
  const lines = message.split("\n");
  if (!lines.some((line) => line.length < 200 && letterSpaced.test(line))) return undefined;
  let text = "";
  const at: number[] = [];
  let offset = 0;
  for (const [index, line] of lines.entries()) {
    const spaced = line.length < 200 && letterSpaced.test(line);
    for (let column = 0; column < line.length; column++) {
      if (spaced && /\s/.test(line[column] ?? "")) continue;
      text += line[column];
      at.push(offset + column);
    }
    if (index < lines.length - 1) {
      text += "\n";
      at.push(offset + line.length);
    }
    offset += line.length + 1;
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
