import { type Features, featuresOf } from "./features.ts";
import { finerIntents, type IntentName, intentNames } from "./names.ts";

/** A normalised message and what it wants first. */
export interface Example {
  readonly intent: IntentName;
  readonly plain: string;
}

/** How likely each main intent comes first, 0 to 1, together 1. */
export type Likelihoods = ReadonlyMap<IntentName, number>;

const classes: readonly IntentName[] = intentNames.filter((name) => !finerIntents.has(name));
const COUNT = classes.length;

const ROUNDS = 6;
const RATE = 0.5;
/** Softens the first steps of a weight (AdaGrad). */
const FIRST_STEP = 0.01;
const BIAS_RATE = 0.02;
/** Steps smaller than this change nothing that shows. */
const SMALL_STEP = 0.002;

interface Row {
  readonly columns: Int32Array;
  readonly weights: Float32Array;
  readonly wanted: number;
}

/** The same shuffle at every start (a linear congruential generator with a fixed seed). */
function shuffle(order: Int32Array, seed: number): number {
  let state = seed;
  for (let i = order.length - 1; i > 0; i -= 1) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    const j = state % (i + 1);
    const held = order[i] ?? 0;
    order[i] = order[j] ?? 0;
    order[j] = held;
  }
  return state;
}

function toLikelihoods(scores: Float64Array): void {
  const most = Math.max(...scores);
  let sum = 0;
  for (let c = 0; c < COUNT; c += 1) {
    const share = Math.exp((scores[c] ?? 0) - most);
    scores[c] = share;
    sum += share;
  }
  for (let c = 0; c < COUNT; c += 1) scores[c] = (scores[c] ?? 0) / sum;
}

/**
 * Learns from examples which words, pairs and concepts speak for which intent: multinomial logistic regression,
 * trained by stochastic gradient descent with AdaGrad steps (Duchi, Hazan and Singer 2011). Deterministic.
 */
export function learn(examples: readonly Example[]): (plain: string) => Likelihoods {
  const columnOf = new Map<string, number>();
  const columnsOf = (features: Features): Int32Array =>
    Int32Array.from(features.keys(), (feature) => {
      const known = columnOf.get(feature);
      if (known !== undefined) return known;
      columnOf.set(feature, columnOf.size);
      return columnOf.size - 1;
    });
  const rows: readonly Row[] = examples.map(({ intent, plain }) => {
    const features = featuresOf(plain);
    return {
      columns: columnsOf(features),
      weights: Float32Array.from(features.values()),
      wanted: classes.indexOf(finerIntents.has(intent) ? "other" : intent),
    };
  });
  const learned = new Float32Array(columnOf.size * COUNT);
  const steps = new Float32Array(columnOf.size * COUNT).fill(FIRST_STEP);
  const bias = new Float64Array(COUNT);
  const scores = new Float64Array(COUNT);

  const order = Int32Array.from(rows.keys());
  let seed = 12_345;
  for (let round = 0; round < ROUNDS; round += 1) {
    seed = shuffle(order, seed);
    for (const index of order) {
      const row = rows[index];
      if (row) improve(row);
    }
  }

  function improve({ columns, weights, wanted }: Row): void {
    scores.set(bias);
    for (let k = 0; k < columns.length; k += 1) {
      const start = (columns[k] as number) * COUNT;
      const weight = weights[k] as number;
      for (let c = 0; c < COUNT; c += 1)
        scores[c] = (scores[c] as number) + (learned[start + c] as number) * weight;
    }
    toLikelihoods(scores);
    scores[wanted] = (scores[wanted] as number) - 1;
    for (let c = 0; c < COUNT; c += 1) {
      const error = scores[c] as number;
      if (Math.abs(error) < SMALL_STEP) continue;
      bias[c] = (bias[c] as number) - BIAS_RATE * error;
      for (let k = 0; k < columns.length; k += 1) {
        const at = (columns[k] as number) * COUNT + c;
        const gradient = error * (weights[k] as number);
        const step = (steps[at] as number) + gradient * gradient;
        steps[at] = step;
        learned[at] = (learned[at] as number) - (RATE * gradient) / Math.sqrt(step);
      }
    }
  }

  return (plain) => {
    const found = Float64Array.from(bias);
    for (const [feature, weight] of featuresOf(plain)) {
      const column = columnOf.get(feature);
      if (column === undefined) continue;
      for (let c = 0; c < COUNT; c += 1) {
        found[c] = (found[c] as number) + (learned[column * COUNT + c] as number) * weight;
      }
    }
    toLikelihoods(found);
    return new Map(classes.map((name, c) => [name, found[c] ?? 0]));
  };
}
