import type { IntentDefinition } from "./definition.ts";
import { finerIntents, type IntentName } from "./names.ts";

/** How alike a message is to what is known to be said for an intent, 0 to 1. */
export interface Likeness {
  readonly intent: IntentName;
  readonly likeness: number;
}

/** Neighbours that vote. */
const VOTERS = 5;
/** Pieces of words matter less than words: they are there for endings and slips of the pen. */
const PIECE_WEIGHT = 0.35;
const PIECE_LETTERS = 4;

/** Words every message is full of say little about what it wants. */
const FILLER_WEIGHT = 0.25;
const fillers = new Set(
  "a an the this that it is are was were be am do does did have has had i me my mine you your yours we our us they them he she of to for on in at by with from or and but so if as not no what which who when where why how can could would will should may might just one any some there here get got 0 ? el la los las un una de del en a al y o que se me mi tu su es son esta lo le para por con como cual si no".split(
    " ",
  ),
);

type Vector = ReadonlyMap<string, number>;

function featuresOf(plain: string): ReadonlySet<string> {
  const words = plain.replace(/\d+(?:[./,-]\d+)*/g, "0").match(/\p{L}+|0|\?/gu) ?? [];
  const features = new Set<string>();
  words.forEach((word, i) => {
    features.add(word);
    if (i > 0) features.add(`${words[i - 1]} ${word}`);
    const framed = `^${word}$`;
    for (let k = 0; word.length > 3 && k + PIECE_LETTERS <= framed.length; k += 1) {
      features.add(`~${framed.slice(k, k + PIECE_LETTERS)}`);
    }
  });
  return features;
}

function kindWeight(feature: string): number {
  if (feature.startsWith("~")) return PIECE_WEIGHT;
  return feature.split(" ").every((word) => fillers.has(word)) ? FILLER_WEIGHT : 1;
}

/**
 * Judges messages no pattern knows by their nearest examples: words, pairs of words and pieces of words, each
 * weighed by how rare it is (tf-idf, cosine), the five nearest vote. Undefined when nothing is near.
 */
export function createLikeness(
  definitions: readonly IntentDefinition[],
  normalize: (text: string) => string,
): (plain: string) => Likeness | undefined {
  const known = definitions.flatMap(({ intent, examples, phrases = [] }) =>
    [...examples, ...phrases].map((said) => ({
      intent: finerIntents.has(intent) ? ("other" as const) : intent,
      features: featuresOf(normalize(said)),
    })),
  );
  const spread = new Map<string, number>();
  for (const { features } of known) {
    for (const feature of features) spread.set(feature, (spread.get(feature) ?? 0) + 1);
  }
  const vectorOf = (features: ReadonlySet<string>): Vector => {
    const weights = new Map<string, number>();
    let squares = 0;
    for (const feature of features) {
      const among = spread.get(feature);
      if (among === undefined) continue;
      const weight = Math.log(1 + known.length / (1 + among)) * kindWeight(feature);
      weights.set(feature, weight);
      squares += weight * weight;
    }
    const length = Math.sqrt(squares) || 1;
    for (const [feature, weight] of weights) weights.set(feature, weight / length);
    return weights;
  };
  /** For each feature the examples that have it, so that a message meets only examples it shares one with. */
  const holders = new Map<string, (readonly [example: number, weight: number])[]>();
  known.forEach(({ features }, example) => {
    for (const [feature, weight] of vectorOf(features)) {
      const list = holders.get(feature);
      if (list) list.push([example, weight]);
      else holders.set(feature, [[example, weight]]);
    }
  });

  return (plain) => {
    const near = new Map<number, number>();
    for (const [feature, weight] of vectorOf(featuresOf(plain))) {
      for (const [example, own] of holders.get(feature) ?? []) {
        near.set(example, (near.get(example) ?? 0) + weight * own);
      }
    }
    const nearest = [...near].toSorted((a, b) => b[1] - a[1]).slice(0, VOTERS);
    const votes = new Map<IntentName, number>();
    for (const [example, likeness] of nearest) {
      const intent = known[example]?.intent;
      if (intent) votes.set(intent, (votes.get(intent) ?? 0) + likeness * likeness);
    }
    const [first] = [...votes].toSorted((a, b) => b[1] - a[1]);
    const likeness = nearest.find(([example]) => known[example]?.intent === first?.[0])?.[1];
    return first && likeness !== undefined ? { intent: first[0], likeness } : undefined;
  };
}
