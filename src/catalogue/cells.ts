/** How one cell of a table is read and written. `read` gets trimmed, non-empty text. */
export interface Cell<Value> {
  /** Completes the sentence "expected ...". */
  readonly expected: string;
  /** The value, or undefined when the text is not one. */
  read(text: string): Value | undefined;
  /** The text that `read` turns back into the value. */
  show(value: Value): string;
}

const DIGITS = /^\d{1,9}(?:\.\d{1,9})?$/;
const WHOLE_WITH_GROUPS = /^\d{1,3}(?:[.,]\d{3}){1,3}$/;
const FRACTION = /^(?:(\d{1,3})[ -])?(\d{1,3})\/(\d{1,3})$/;
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;

function decimal(text: string): number | undefined {
  const withPoint = text.replace(",", ".");
  return DIGITS.test(withPoint) ? Number(withPoint) : undefined;
}

function whole(text: string): number | undefined {
  if (WHOLE_WITH_GROUPS.test(text)) return Number(text.replaceAll(/[.,]/g, ""));
  return DIGITS.test(text) ? Number(text) : undefined;
}

function fraction(text: string): number | undefined {
  const parts = FRACTION.exec(text);
  if (!parts) return undefined;
  const value = Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]);
  return Number.isFinite(value) ? value : undefined;
}

const above = (limit: number, value: number | undefined) =>
  value !== undefined && value > limit ? value : undefined;

/** Any text. */
export const text: Cell<string> = { expected: "text", read: (cell) => cell, show: (value) => value };

/** A number above zero; a comma counts as a decimal mark (`1,5`). */
export const positive: Cell<number> = {
  expected: "a number above zero, such as 1.65",
  read: (cell) => above(0, decimal(cell)),
  show: String,
};

/** A number above zero, also written as a fraction: `1.5`, `3/4`, `1-1/2`, `1 1/2`. */
export const horsepower: Cell<number> = {
  expected: "horsepower above zero, such as 1.5, 3/4 or 1-1/2",
  read: (cell) => above(0, fraction(cell) ?? decimal(cell)),
  show: (value) => (DIGITS.test(String(value)) ? String(value) : asFraction(value)),
};

/** A value with endless decimals, as the fraction it came from: 1/3, 1-2/3, 5/3. */
function asFraction(value: number): string {
  const whole = Math.floor(value);
  for (let parts = 3; parts <= 999; parts++) {
    const mixed = `${whole}-${Math.round((value - whole) * parts)}/${parts}`;
    // Told apart by their last digit: 1 + 2/3 is not 5/3 to a computer.
    const found = [mixed, `${Math.round(value * parts)}/${parts}`].find(
      (written) => fraction(written) === value,
    );
    if (found !== undefined) return found.replace(/^0-/, "");
  }
  return value.toFixed(9);
}

/** A temperature in degrees Celsius, with or without its unit. */
export const celsius: Cell<number> = {
  expected: "degrees Celsius, such as 50",
  read: (cell) => decimal(cell.replace(/ ?°? ?C$/i, "")),
  show: String,
};

/** A number above zero and not above `max`. */
export function upTo(max: number): Cell<number> {
  return {
    expected: `a number above 0 and not above ${max}`,
    read: (cell) => {
      const value = above(0, decimal(cell));
      return value !== undefined && value <= max ? value : undefined;
    },
    show: String,
  };
}

/** Zero or a whole number above it. */
export const count: Cell<number> = {
  expected: "a whole number, 0 or more",
  read: (cell) => (/^\d{1,9}$/.test(cell) ? Number(cell) : undefined),
  show: String,
};

const POINT_MONEY = /^\d{1,3}(?:,\d{3}){1,2}(?:\.\d{1,2})?$/;
const COMMA_MONEY = /^\d{1,3}(?:\.\d{3}){1,2},\d{1,2}$/;

/** Money, with or without a dollar sign and thousands marks: `1,249.50`, `1.249,50`. */
export const price: Cell<number> = {
  expected: "a price in dollars, such as 249.50",
  read: (cell) => {
    const bare = cell.replace(/^\$ ?/, "");
    if (COMMA_MONEY.test(bare)) return decimal(bare.replaceAll(".", ""));
    return decimal(POINT_MONEY.test(bare) ? bare.replaceAll(",", "") : bare);
  },
  show: String,
};

/** Numbers above zero separated by `/`, a range also by `-`: `115/208-230`, `19,2/9,6`. */
export const numbers: Cell<number[]> = numberList(
  "numbers separated by /, such as 115/230 or 208-230",
  decimal,
);

/** Speeds separated by `/`; thousands marks are dropped: `3450/1725`, `3,450`. */
export const speeds: Cell<number[]> = numberList("speeds in rpm separated by /, such as 3450/1725", whole);

function numberList(expected: string, read: (part: string) => number | undefined): Cell<number[]> {
  return {
    expected,
    read: (cell) => {
      const values = cell.split(/[/-]/).map((part) => above(0, read(part.trim())));
      return values.every((value) => value !== undefined) ? values : undefined;
    },
    show: (values) => values.join("/"),
  };
}

/** Words separated by spaces or `|`. */
export const codes: Cell<string[]> = {
  expected: "numbers separated by spaces or |",
  read: (cell) => cell.split(/[\s|]+/).filter((code) => code !== ""),
  show: (values) => values.join(" "),
};

/** Texts that may hold spaces, separated by `|`. */
export const names: Cell<string[]> = {
  expected: "names separated by |",
  read: (cell) =>
    cell
      .split("|")
      .map((name) => name.trim())
      .filter((name) => name !== ""),
  show: (values) => values.join(" | "),
};

/** A day of the calendar, `YYYY-MM-DD`. */
export const isoDate: Cell<string> = {
  expected: "a date written YYYY-MM-DD, such as 2025-06-30",
  read: (cell) => {
    const parts = ISO_DATE.exec(cell);
    if (!parts) return undefined;
    const day = new Date(Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])));
    return day.toISOString().startsWith(cell) ? cell : undefined;
  },
  show: (value) => value,
};

/** One of a few words; `otherwise` gives the kinder spellings (lower case, single spaces for hyphens). */
export function oneOf<Word extends string>(
  words: readonly Word[],
  otherwise: Readonly<Record<string, Word>> = {},
): Cell<Word> {
  const plain = (cell: string) => cell.toLowerCase().replaceAll(/[\s_-]+/g, " ");
  const spellings = new Map([
    ...words.map((word) => [plain(word), word] as const),
    ...Object.entries(otherwise),
  ]);
  return {
    expected: `one of: ${words.join(", ")}`,
    read: (cell) => spellings.get(plain(cell)),
    show: (value) => value,
  };
}
