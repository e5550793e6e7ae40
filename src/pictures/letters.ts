import { type AdvanceWidths, boldWidths, regularWidths } from "./letters/advance-widths.ts";

export type Weight = "regular" | "bold";

const UNITS_PER_EM = 2048;
/** Width in em taken for a letter outside the table: as wide as letters get, so that lines never run over. */
const UNKNOWN_EM = 1.05;

/** Width of one line in the units of `size`, as DejaVu Sans Condensed sets it without kerning. */
export function textWidth(text: string, size: number, weight: Weight = "regular"): number {
  const widths = weight === "bold" ? boldWidths : regularWidths;
  let em = 0;
  for (const letter of text) em += advance(letter, widths) ?? UNKNOWN_EM;
  return em * size;
}

/** True when every letter stands in the table, so that {@link textWidth} is exact. */
export function isMeasured(text: string): boolean {
  for (const letter of text) if (advance(letter, regularWidths) === undefined) return false;
  return true;
}

function advance(letter: string, { latin, others }: AdvanceWidths): number | undefined {
  const code = letter.codePointAt(0) ?? 0;
  const index =
    code >= 0x20 && code <= 0x7e ? code - 0x20 : code >= 0xa0 && code <= 0xff ? code - 0xa0 + 95 : -1;
  const units = index >= 0 ? latin[index] : others[letter];
  return units === undefined ? undefined : units / UNITS_PER_EM;
}

/** The text broken into lines of at most `width`; a word longer than a line is broken where it must. */
export function wrapText(text: string, size: number, width: number, weight: Weight = "regular"): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter((part) => part !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, size, weight) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    for (const letter of word) {
      if (line !== "" && textWidth(line + letter, size, weight) > width) {
        lines.push(line);
        line = "";
      }
      line += letter;
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}
