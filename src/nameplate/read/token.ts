/** An unbroken run of characters, punctuation at its ends taken off, as typed. */
export interface Chunk {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * The typed pieces a message falls into. Offsets are UTF-16 offsets of the message, so that every reading
 * can point at the words it came from.
 */
interface Piece {
  readonly start: number;
  readonly end: number;
  /** Lower case, accents removed; for a number its digits with look-alike characters resolved. */
  readonly norm: string;
  /** No white space between this piece and the one before. */
  readonly glued: boolean;
  /** A tab, a column rule or several spaces stand before this piece. */
  readonly wide: boolean;
  /** The run this piece was cut from. */
  readonly chunk: Chunk;
}

export interface WordToken extends Piece {
  readonly kind: "word";
  readonly upper: boolean;
}

/** A written number. A figure like `3.450` has two possible values until the rating is known. */
export interface NumberToken extends Piece {
  readonly kind: "number";
  readonly value: number;
  /** The value if the separator marks thousands (`3,450`, `3.450`). */
  readonly thousands?: number;
  /** The two values if the comma only separates them (`115,230`). */
  readonly pair?: readonly [number, number];
  readonly form: "digits" | "words" | "fraction";
  /** How many look-alike characters were taken for digits. */
  readonly lookalikes: number;
}

/** A number of which a character is missing: `1.?`, `2_0`, `34xx`. */
export interface PartialToken extends Piece {
  readonly kind: "partial";
}

/** Letters and digits that are no rating: part of a model number, a name, a link. */
export interface CodeToken extends Piece {
  readonly kind: "code";
}

export interface MarkToken extends Piece {
  readonly kind: "mark";
}

export interface BreakToken extends Piece {
  readonly kind: "break";
  /** An empty line lies between. */
  readonly blank: boolean;
}

export type Token = WordToken | NumberToken | PartialToken | CodeToken | MarkToken | BreakToken;

/** Lower case without accents, character for character, so that offsets stay true. */
export function fold(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return text.toLowerCase();
  let folded = "";
  for (const unit of text) {
    const plain = unit.normalize("NFD").charAt(0).toLowerCase();
    folded += unit.length === 1 && plain.length === 1 ? plain : unit;
  }
  return folded;
}

export function isMark(token: Token | undefined, ...marks: readonly string[]): boolean {
  return token?.kind === "mark" && marks.includes(token.norm);
}

export function isWord(token: Token | undefined, ...words: readonly string[]): boolean {
  return token?.kind === "word" && words.includes(token.norm);
}
