import { FeatureSpace, type Features } from "./features.ts";
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

const ROUNDS = 5;
const RATE = 0.5;
/** Softens the first steps of a weight (AdaGrad). */
const FIRST_STEP = 0.01;
/** Keeps weights small that few examples speak for. */
const SHRINK = 1e-4;
const BIAS_RATE = 0.02;
/** Steps smaller than this change nothing that shows. */
const SMALL_STEP = 0.02;

interface Row extends Features {
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
  const space = new FeatureSpace();
  const rows: readonly Row[] = examples.map(({ intent, plain }) => ({
    ...space.of(plain),
    wanted: classes.indexOf(finerIntents.has(intent) ? "other" : intent),
  }));
  space.freeze();
  const learned = new Float32Array(space.size * COUNT);
  const steps = new Float32Array(space.size * COUNT).fill(FIRST_STEP);
  const bias = new Float64Array(COUNT);
  const scores = new Float64Array(COUNT);
  /** The intents whose score is off for the example at hand. */
  const off = new Int32Array(COUNT);

  const order = Int32Array.from(rows.keys());
  let seed = 12_345;
  for (let round = 0; round < ROUNDS; round += 1) {
    seed = shuffle(order, seed);
    for (const index of order) {
      const row = rows[index];
      if (row) improve(row);
    }
  }

  function add({ columns, weights }: Features, sums: Float64Array): void {
    for (let k = 0; k < columns.length; k += 1) {
      const start = (columns[k] as number) * COUNT;
      const weight = weights[k] as number;
      for (let c = 0; c < COUNT; c += 1)
        sums[c] = (sums[c] as number) + (learned[start + c] as number) * weight;
    }
  }

  function improve(row: Row): void {
    scores.set(bias);
    add(row, scores);
    toLikelihoods(scores);
    scores[row.wanted] = (scores[row.wanted] as number) - 1;
    let many = 0;
    for (let c = 0; c < COUNT; c += 1) {
      const error = scores[c] as number;
      if (Math.abs(error) < SMALL_STEP) continue;
      bias[c] = (bias[c] as number) - BIAS_RATE * error;
      off[many] = c;
      many += 1;
    }
    for (let k = 0; k < row.columns.length; k += 1) {
      const start = (row.columns[k] as number) * COUNT;
      const weight = row.weights[k] as number;
      for (let j = 0; j < many; j += 1) {
        const c = off[j] as number;
        const now = learned[start + c] as number;
        const gradient = (scores[c] as number) * weight + SHRINK * now;
        const step = (steps[start + c] as number) + gradient * gradient;
        steps[start + c] = step;
        learned[start + c] = now - (RATE * gradient) / Math.sqrt(step);
      }
    }
  }

  return (plain) => {
    const found = Float64Array.from(bias);
    add(space.of(plain), found);
    toLikelihoods(found);
    return new Map(classes.map((name, c) => [name, found[c] ?? 0]));
  };
}
