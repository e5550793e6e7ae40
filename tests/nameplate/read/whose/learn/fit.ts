import type { Weights } from "../../../../../src/nameplate/read/whose/vote.ts";

/** A figure, by its signs. */
export interface Example {
  readonly id: string;
  readonly signs: ReadonlySet<string>;
  readonly isLabels: boolean;
  readonly weight: number;
}

/** Signs of fewer figures are left out. */
const AT_LEAST = 3;
/** Only so many signs are kept, those that speak loudest and most often. */
const MOST = 5_000;
const DAMPING = 0.5;
const ROUNDS = 12;
const RATE = 0.25;
/** Pull of every weight towards zero. */
const PULL = 1e-3;

/** The same numbers on every run. */
function shuffle(order: number[], seed: number): number {
  let state = seed;
  for (let i = order.length - 1; i > 0; i -= 1) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
    const j = state % (i + 1);
    [order[i], order[j]] = [order[j] ?? 0, order[i] ?? 0];
  }
  return state;
}

/** Fits all signs seen often enough, keeps the best, and fits those once more. */
export function learnWeights(examples: readonly Example[]): Weights {
  const counts = new Map<string, number>();
  for (const { signs } of examples) for (const sign of signs) counts.set(sign, (counts.get(sign) ?? 0) + 1);
  const often = [...counts]
    // Half a surrogate pair, what is left of an emoji, cannot be written to a file.
    .filter(([sign, count]) => count >= AT_LEAST && !/[\ud800-\udfff]/.test(sign))
    .map(([sign]) => sign);
  const { weights } = regress(examples, often);
  const worth = (sign: string) => Math.abs(weights.get(sign) ?? 0) * Math.sqrt(counts.get(sign) ?? 0);
  return regress(examples, often.sort((a, b) => worth(b) - worth(a)).slice(0, MOST));
}

/** Logistic regression by stochastic gradient with per-weight steps (AdaGrad, Duchi, Hazan and Singer 2011). */
function regress(examples: readonly Example[], signs: readonly string[]): Weights {
  const index = new Map(signs.map((sign, at) => [sign, at]));
  const inputs = examples.map((example) =>
    [...example.signs].map((sign) => index.get(sign) ?? -1).filter((at) => at >= 0),
  );
  const weights = new Float64Array(signs.length);
  const steps = new Float64Array(signs.length).fill(1e-2);
  let bias = 2;
  let seed = 12_345;
  const order = examples.map((_, at) => at);
  for (let round = 0; round < ROUNDS; round += 1) {
    seed = shuffle(order, seed);
    for (const at of order) {
      const [input, example] = [inputs[at], examples[at]];
      if (!input || !example) continue;
      const scale = (input.length + 1) ** -DAMPING;
      const sum = input.reduce((total, sign) => total + (weights[sign] ?? 0), 0);
      const likely = 1 / (1 + Math.exp(-(sum * scale + bias)));
      const error = (likely - (example.isLabels ? 1 : 0)) * example.weight;
      if (Math.abs(error) < 0.01) continue;
      bias -= 0.02 * error;
      for (const sign of input) {
        const slope = error * scale + PULL * (weights[sign] ?? 0);
        steps[sign] = (steps[sign] ?? 0) + slope * slope;
        weights[sign] = (weights[sign] ?? 0) - (RATE * slope) / Math.sqrt(steps[sign] ?? 1);
      }
    }
  }
  return { bias, damping: DAMPING, weights: new Map(signs.map((sign, at) => [sign, weights[at] ?? 0])) };
}
