import { ratings } from "../../nameplate/vocabulary.ts";
import { encode } from "./plain.ts";
import type { Stretch } from "./slip.ts";

/** Longer texts than this are no number. */
export const longestTyped = 256;

/** A typed number and its codes. */
export interface TypedNumber extends Stretch {
  readonly text: string;
}

/** The number in codes; undefined when it holds no letter or digit, or far too many. */
export function typedNumber(text: string): TypedNumber | undefined {
  if (text.length > longestTyped) return undefined;
  let codes = new Uint8Array(text.length);
  let end = encode(text, codes);
  if (end > codes.length) {
    // One compatibility character can stand for many letters.
    codes = new Uint8Array(longestTyped);
    end = encode(text, codes);
  }
  return end === 0 || end > longestTyped ? undefined : { text, codes, start: 0, end };
}

const numberWord = String.raw`(?:[\s.]{0,3}(?:no|nr|num|number|numero|número|#))?`;
const oneOf = (words: readonly string[]) => words.map((word) => word.replaceAll("/", "\\/")).join("|");
const serialWord = new RegExp(
  String.raw`(?<![\p{L}\p{N}])(?:${oneOf(ratings.serialNumber.words)})${numberWord}(?:[\s.:#=)]|$)`,
  "iu",
);
const modelWord = new RegExp(
  String.raw`^\s{0,9}(?:${oneOf(ratings.modelNumbers.words)})${numberWord}[\s.:#=]{1,9}`,
  "iu",
);

/** What stands beside the words of the label: the number before a serial's word, or only the serial's. */
export type WithoutWords = { readonly kind: "serial" } | { readonly kind: "number"; readonly text: string };

/**
 * Takes label words off a typed number. A serial number is known by its word, before or behind it; what stands
 * before "S/N ..." is the number asked about, and the serial behind it is dropped.
 */
export function withoutWords(text: string): WithoutWords {
  const bare = text.slice(0, longestTyped).replace(modelWord, "");
  const serial = serialWord.exec(bare);
  if (!serial) return { kind: "number", text: bare };
  const before = bare.slice(0, serial.index);
  const wordIsLast = serial.index + serial[0].length >= bare.trimEnd().length;
  return wordIsLast || !/[\p{L}\p{N}]/u.test(before) ? { kind: "serial" } : { kind: "number", text: before };
}
