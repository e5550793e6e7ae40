/** Characters that are taken for digits on a worn label: l and I for 1, O for 0, S for 5, B for 8. */
const lookalike: Readonly<Record<string, string>> = {
  l: "1",
  I: "1",
  "|": "1",
  O: "0",
  o: "0",
  S: "5",
  B: "8",
};

const vulgar: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

/** The value of a one-character fraction, undefined for every other character. */
export function vulgarFraction(character: string): number | undefined {
  return vulgar[character];
}

export function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= "0" && character <= "9";
}

/** The digit a character is or looks like; undefined when it is neither. */
export function digitLike(character: string | undefined): string | undefined {
  if (character === undefined) return undefined;
  return isDigit(character) ? character : lookalike[character];
}

export interface Digits {
  readonly norm: string;
  readonly value: number;
  readonly thousands?: number;
  readonly pair?: readonly [number, number];
}

/** What a run of digits and separators may mean; undefined when it is no number (`1.2.3`). */
export function readDigits(norm: string): Digits | undefined {
  if (/^\d{1,9}$/.test(norm)) return { norm, value: Number(norm) };
  if (/^\d{0,6}\.\d{1,6}$/.test(norm)) {
    const value = Number(norm);
    return /^[1-9]\d?\.\d{3}$/.test(norm)
      ? { norm, value, thousands: Number(norm.replace(".", "")) }
      : { norm, value };
  }
  const comma = /^(\d{1,6}),(\d{1,6})$/.exec(norm);
  if (comma) {
    const [, left = "", right = ""] = comma;
    const pair: readonly [number, number] = [Number(left), Number(right)];
    const decimal = Number(`${left}.${right}`);
    if (right.length === 3 && left.length <= 3)
      return { norm, value: decimal, thousands: Number(left + right), pair };
    if (right.length <= 2) return { norm, value: decimal };
    return { norm, value: decimal, pair };
  }
  if (/^,\d{1,3}$/.test(norm)) return { norm, value: Number(norm.replace(",", ".")) };
  if (/^\d{1,3}(,\d{3}){1,3}(\.\d{1,4})?$/.test(norm))
    return { norm, value: Number(norm.replaceAll(",", "")) };
  return undefined;
}
