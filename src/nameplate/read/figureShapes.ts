import { isWord, type Token } from "./token.ts";

/** One letter for each token: digits by their count, marks as they are. */
function shapeOf(token: Token, index: number): string {
  if (index > 0 && token.kind !== "mark" && token.kind !== "number") return "_";
  if (token.kind === "number")
    return token.form === "digits" && /^\d+$/.test(token.norm) ? letterOf(token.norm.length) : "_";
  return token.kind === "mark" && token.norm.length === 1 ? token.norm : "_";
}

const letterOf = (digits: number) => String.fromCharCode(96 + Math.min(digits, 12));

/** Telephone numbers, dates and times of day, as shapes: `c` is a figure of three digits, and so on. */
const shapes: readonly (readonly [RegExp, number])[] = [
  [/^c\)?[-./ ]?c[-./ ]?d/, 6],
  [/^c-d/, 3.5],
  [/^[a]-?c-c-d/, 7],
  [/^[j-l]/, 4],
  [/^[ab][/.-][ab][/.-](?:d|b)(?![/.-])/, 5],
  [/^[ab]:b(?![/-])/, 4],
  [/^d-[ab]-[ab]/, 5],
  [/^[ab]\/d/, 2.5],
];

/** The telephone numbers, dates and times that may start at this token, with their evidence. */
export function shapesAt(tokens: readonly Token[], at: number): { end: number; score: number }[] {
  const shape = tokens
    .slice(at, at + 8)
    .map(shapeOf)
    .join("");
  return shapes.flatMap(([kind, score]) => {
    const match = kind.exec(shape);
    // No area code of North America begins with 0 or 1 (NANP); "115/230 3450" is a label.
    if (kind.source.startsWith("^c") && /^[01]/.test(tokens[at]?.norm ?? "")) return [];
    const speeds = kind.source === "^c-d" && isWord(tokens[at + 3], "rpm", "rpms");
    return match && !speeds ? [{ end: at + match[0].length, score }] : [];
  });
}
