import type { RatingName, RatingValue } from "../vocabulary.ts";

/** Digits that a worn or hurried figure is taken for. Common practice, no source. */
const digitLookAlikes: readonly (readonly [string, string])[] = [
  ["1", "7"],
  ["3", "8"],
  ["5", "6"],
  ["6", "8"],
  ["0", "8"],
  ["4", "9"],
];

/** Letters that a worn frame or class letter is taken for. Common practice, no source. */
const letterLookAlikes: readonly (readonly [string, string])[] = [
  ["Y", "V"],
  ["Y", "X"],
  ["C", "G"],
  ["C", "O"],
  ["J", "I"],
  ["J", "L"],
  ["B", "8"],
  ["B", "R"],
  ["F", "E"],
  ["F", "P"],
  ["H", "N"],
];

/** Texts that differ by two neighbouring digits changing places, a decimal point between them or not. */
function swapped(text: string): string[] {
  const digits = [...text].flatMap((character, index) => (/\d/.test(character) ? [index] : []));
  return digits.slice(1).map((second, n) => {
    const first = digits[n] ?? 0;
    const characters = [...text];
    [characters[first], characters[second]] = [text.charAt(second), text.charAt(first)];
    return characters.join("");
  });
}

/** Texts that differ by one character taken for its look-alike. */
function lookAlikes(text: string, pairs: readonly (readonly [string, string])[]): string[] {
  return [...text].flatMap((character, index) =>
    pairs
      .filter((pair) => pair.includes(character))
      .map(([a, b]) => text.slice(0, index) + (character === a ? b : a) + text.slice(index + 1)),
  );
}

const rounded = (value: number): number => Number(value.toPrecision(12));

/** Kinds of slip in a number, the likeliest first. */
const numberSlipKinds: readonly ((value: number) => number[])[] = [
  (value) => [value / 10, value * 10, value / 100, value * 100].map(rounded),
  (value) => swapped(String(value)).map(Number),
  (value) => lookAlikes(String(value), digitLookAlikes).map(Number),
];

/** More digits than this nobody types off a label, so no slip of the pen is looked for. */
const longestFigure = 6;

const usable = (candidates: readonly number[], value: number): number[] =>
  [...new Set(candidates)].filter((candidate) => candidate > 0 && candidate !== value);

/**
 * Numbers one slip away, the likeliest slip first: decimal point moved, two digits swapped, one digit taken
 * for its look-alike. Positive numbers only, the value itself left out.
 */
export function numberSlips(value: number): number[] {
  if (String(value).length > longestFigure) return [];
  return usable(
    numberSlipKinds.flatMap((slips) => slips(value)),
    value,
  );
}

/** Lists one slip away: turned around, without any decimal point, then one entry changed, a kind of slip at a time. */
function listSlips(values: readonly number[]): number[][] {
  if (values.some((value) => String(value).length > longestFigure)) return [];
  const whole =
    values.length > 1
      ? [
          values.toReversed(),
          values.map((value) => rounded(value / 10)),
          values.map((value) => rounded(value * 10)),
        ]
      : [];
  const changed = numberSlipKinds.flatMap((slips) =>
    values.flatMap((value, index) => usable(slips(value), value).map((slip) => values.with(index, slip))),
  );
  return [...whole, ...changed];
}

function textSlips(text: string): string[] {
  return [
    ...swapped(text),
    ...lookAlikes(text, digitLookAlikes),
    ...lookAlikes(text, letterLookAlikes),
    ...(/^\d0/.test(text) ? [text.replace("0", "")] : []),
  ].filter((candidate) => candidate !== text);
}

/** Ratings in which a slip of the pen makes another possible value. */
type Slippery = Exclude<
  RatingName,
  "modelNumbers" | "serialNumber" | "pumpModel" | "flange" | "shaft" | "speedKind" | "phase" | "breakerPoles"
>;
const unslippery: ReadonlySet<RatingName> = new Set([
  "modelNumbers",
  "serialNumber",
  "pumpModel",
  "flange",
  "shaft",
  "speedKind",
  "phase",
  "breakerPoles",
]);

/** Values of a rating one slip away from the one typed, the likeliest first; none for words and identifiers. */
export function slipsOf<K extends RatingName>(rating: K, value: RatingValue<K>): RatingValue<K>[] {
  if (unslippery.has(rating)) return [];
  const slippery = value as RatingValue<Slippery>;
  if (Array.isArray(slippery)) return listSlips(slippery) as RatingValue<K>[];
  if (typeof slippery === "number") return numberSlips(slippery) as RatingValue<K>[];
  return textSlips(slippery) as RatingValue<K>[];
}
