import { conceptsOf } from "./concepts.ts";

/** What a message is made of, each feature with its weight; the squares of the weights add up to 1. */
export type Features = ReadonlyMap<string, number>;

/** Pairs of words say more together than each, but are met less often. */
const PAIR_WEIGHT = 0.8;
const CONCEPT_PAIR_WEIGHT = 0.7;
const LENGTH_WEIGHT = 0.7;
/** Of a long message the start and the end are looked at, where requests stand. */
const WORDS_AT_EITHER_END = 50;

const lengths = [1, 2, 4, 8, 14];

function wordsOf(plain: string): readonly string[] {
  const words =
    plain.replace(/\d+(?:[./,-]\d+)*/g, "0").match(/\p{L}+|0|\?|\$|\p{Extended_Pictographic}/gu) ?? [];
  return words.length <= 2 * WORDS_AT_EITHER_END
    ? words
    : [...words.slice(0, WORDS_AT_EITHER_END), ...words.slice(-WORDS_AT_EITHER_END)];
}

/**
 * Words, pairs of neighbours and length of a normalised message, with words also counted as the concept they stand
 * for (`#staff`), alone and in pairs. Every figure counts as the same word `0`.
 */
export function featuresOf(plain: string): Features {
  const words = wordsOf(plain);
  const concepts = words.map((word) => conceptsOf(word).map((concept) => `#${concept}`));
  const features = new Map<string, number>();
  const add = (feature: string, weight: number): void => {
    if (!features.has(feature)) features.set(feature, weight);
  };
  words.forEach((word, i) => {
    const before = words[i - 1] ?? "^";
    add(word, 1);
    add(`${before} ${word}`, PAIR_WEIGHT);
    for (const concept of concepts[i] ?? []) {
      add(concept, 1);
      add(`${before} ${concept}`, CONCEPT_PAIR_WEIGHT);
      for (const earlier of concepts[i - 1] ?? []) add(`${earlier} ${concept}`, CONCEPT_PAIR_WEIGHT);
    }
    for (const earlier of concepts[i - 1] ?? []) add(`${earlier} ${word}`, CONCEPT_PAIR_WEIGHT);
  });
  const last = words.at(-1);
  if (last !== undefined) add(`${last} $`, PAIR_WEIGHT);
  add(`of ${lengths.find((most) => words.length <= most) ?? "many"} words`, LENGTH_WEIGHT);
  let squares = 0;
  for (const weight of features.values()) squares += weight * weight;
  const size = Math.sqrt(squares);
  for (const [feature, weight] of features) features.set(feature, weight / size);
  return features;
}
