/** Numbers and corruptions for the benchmark: invented patterns, seeded, the same for every search that is compared. */

/** A seeded source of numbers from 0 up to 1 (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let bits = Math.imul(state ^ (state >>> 15), 1 | state);
    bits = (bits + Math.imul(bits ^ (bits >>> 7), 61 | bits)) ^ bits;
    return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296;
  };
}

const words =
  "WOBBLE CRUMB DOODLE FIDGET GOBLIN HICCUP JIGGLE KETTLE LOLLOP MUDDLE NOODLE PEBBLE QUAVER RIDDLE SQUISH TEAPOT UMBER VELVET WIGGLE YODEL ZIGZAG BISCUIT COBWEB DABBLE".split(
    " ",
  );
const syllables = "BIM BOP DUZ FEP GUB HOK JAX KIV LUM MEB NOZ PIB QUO RAZ SUP TEV VUG WEX YAB ZUM".split(
  " ",
);
const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const digits = "0123456789";

export interface Chance {
  next(): number;
  pick<T>(from: ArrayLike<T>): T;
  below(limit: number): number;
}

export function chance(seed: number): Chance {
  const next = seeded(seed);
  const below = (limit: number) => Math.floor(next() * limit);
  return { next, below, pick: (from) => from[below(from.length)]! };
}

/** `X` a letter, `9` a digit, `w` a word, `s` a syllable; the rest stands for itself. */
const patterns = ["w-99999-X", "X9-X9-99-99", "999-sX-999", "ss9X.9999"];

function invent(pattern: string, by: Chance): string {
  let text = "";
  for (const mark of pattern) {
    if (mark === "X") text += by.pick(letters);
    else if (mark === "9") text += by.pick(digits);
    else if (mark === "w") text += by.pick(words);
    else if (mark === "s") text += by.pick(syllables);
    else text += mark;
  }
  return text;
}

/** So many different numbers. */
export function inventNumbers(count: number, seed: number): string[] {
  const by = chance(seed);
  const numbers = new Set<string>();
  while (numbers.size < count) numbers.add(invent(by.pick(patterns), by));
  return [...numbers];
}

export const corruptionKinds = [
  "spacing",
  "look-alike",
  "wrong",
  "missing",
  "extra",
  "swapped",
  "no prefix",
  "no suffix",
  "wrong and look-alike",
] as const;
export type CorruptionKind = (typeof corruptionKinds)[number];

export interface CorruptedQuery {
  readonly kind: CorruptionKind;
  readonly typed: string;
  readonly answer: string;
}

const shares: Record<CorruptionKind, number> = {
  spacing: 10,
  "look-alike": 20,
  wrong: 15,
  missing: 10,
  extra: 10,
  swapped: 10,
  "no prefix": 10,
  "no suffix": 10,
  "wrong and look-alike": 5,
};
const drawnKinds = corruptionKinds.flatMap((kind) => Array<CorruptionKind>(shares[kind]).fill(kind));
const pairs = ["O0", "I1", "L1", "S5", "B8", "Z2", "G6", "68", "17"];

/** Corrupted queries with their answer; the kinds in random order, so that the first n are a fair sample. */
export function corruptedQueries(numbers: readonly string[], count: number, seed: number): CorruptedQuery[] {
  const by = chance(seed);
  return Array.from({ length: count }, () => {
    const answer = by.pick(numbers);
    const kind = by.pick(drawnKinds);
    return { kind, answer, typed: respace(corrupt(answer, kind, by), by) };
  });
}

function corrupt(number: string, kind: CorruptionKind, by: Chance): string {
  const cuts = [...number].flatMap((character, at) => (/[-.]/.test(character) ? [at] : []));
  if (kind === "no prefix") return number.slice((cuts[0] ?? 0) + 1);
  if (kind === "no suffix") return number.slice(0, cuts.at(-1));
  if (kind === "look-alike") return lookAlike(number, 1 + by.below(3), by);
  if (kind === "wrong and look-alike") return lookAlike(corrupt(number, "wrong", by), 1, by);
  if (kind === "spacing") return number;
  return edit(number, kind, by);
}

function edit(number: string, kind: "wrong" | "missing" | "extra" | "swapped", by: Chance): string {
  const places = [...number].flatMap((character, at) => (/[A-Z0-9]/.test(character) ? [at] : []));
  const at = by.pick(places);
  const own = number.charAt(at);
  const alphabet = by.next() < 0.25 ? letters + digits : /\d/.test(own) ? digits : letters;
  const other = by.pick([...alphabet].filter((character) => character !== own));
  if (kind === "wrong") return number.slice(0, at) + other + number.slice(at + 1);
  if (kind === "missing") return number.slice(0, at) + number.slice(at + 1);
  if (kind === "extra") return number.slice(0, at) + other + number.slice(at);
  const pairsOfPlaces = places.slice(1).map((second, n) => [places[n]!, second] as const);
  const different = pairsOfPlaces.filter(([a, b]) => number.charAt(a) !== number.charAt(b));
  const [first, second] = by.pick(different);
  const characters = [...number];
  [characters[first], characters[second]] = [number.charAt(second), number.charAt(first)];
  return characters.join("");
}

function lookAlike(number: string, count: number, by: Chance): string {
  let text = number;
  for (let n = 0; n < count; n++) {
    const places = [...text].flatMap((character, at) => (othersOf(character).length > 0 ? [at] : []));
    if (places.length === 0) return text;
    const at = by.pick(places);
    text = text.slice(0, at) + by.pick(othersOf(text.charAt(at))) + text.slice(at + 1);
  }
  return text;
}

function othersOf(character: string): string[] {
  return pairs.filter((pair) => pair.includes(character)).map((pair) => pair.replace(character, ""));
}

function respace(text: string, by: Chance): string {
  const spaced = text.replaceAll(/[-.]/g, () => by.pick(["-", " ", "", "-"]));
  return by.next() < 0.4 ? spaced.toLowerCase() : spaced;
}

/** The form every search of the comparison is given: capitals and digits only. */
export function plainForm(text: string): string {
  return text.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
}
