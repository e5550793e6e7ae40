import { kinds, type Linear } from "../../../../src/conversation/danger/vote/linear.ts";
import type { Hazard } from "../../../../src/nameplate/reading.ts";

/** A message as bags of signs: one for each clause, or one for the whole. */
export interface Example {
  readonly bags: readonly ReadonlySet<string>[];
  readonly hazard: Hazard | null;
  readonly weight: number;
  /** Made of other messages: it teaches weights, but which signs are worth one the others decide. */
  readonly composed: boolean;
}

export interface Settings {
  /** Signs seen in fewer messages are left out. */
  readonly atLeast: number;
  /** Only so many signs are kept, those that speak loudest and most often. */
  readonly most: number;
  readonly damping: number;
  readonly rounds: number;
  readonly rate: number;
  /** Pull of every weight towards zero. */
  readonly pull: number;
}

function countSigns(examples: readonly Example[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { bags, composed } of examples) {
    if (composed) continue;
    for (const sign of new Set(bags.flatMap((bag) => [...bag])))
      counts.set(sign, (counts.get(sign) ?? 0) + 1);
  }
  return counts;
}

/** The same numbers on every run. */
function dice(): () => number {
  let state = 12_345;
  return () => {
    state = (state * 1_103_515_245 + 12_345) & 0x7fffffff;
    return state / 0x7fffffff;
  };
}

function shuffle(list: number[], roll: () => number): void {
  for (let i = list.length - 1; i > 0; i -= 1) {
    const j = Math.floor(roll() * (i + 1)) % (i + 1);
    [list[i], list[j]] = [list[j] ?? 0, list[i] ?? 0];
  }
}

/** Fits all signs seen often enough, keeps the best, and fits those once more. */
export function learnWeights(examples: readonly Example[], settings: Settings): Linear {
  const counts = countSigns(examples);
  const often = [...counts].filter(([, count]) => count >= settings.atLeast).map(([sign]) => sign);
  if (often.length <= settings.most) return fitSigns(examples, often, settings);
  const first = fitSigns(examples, often, { ...settings, rounds: Math.ceil(settings.rounds / 2) });
  const worth = (sign: string) =>
    Math.max(...(first.weights.get(sign) ?? [0]).map(Math.abs)) * Math.sqrt(counts.get(sign) ?? 0);
  const best = often
    .map((sign) => [worth(sign), sign] as const)
    .sort(([a], [b]) => b - a)
    .slice(0, settings.most);
  return fitSigns(
    examples,
    best.map(([, sign]) => sign),
    settings,
  );
}

/**
 * Logistic regression over four kinds against none, where a message is as dangerous as its most dangerous bag
 * (max pooling), by stochastic gradient with per-weight steps (AdaGrad).
 */
function fitSigns(examples: readonly Example[], signs: readonly string[], settings: Settings): Linear {
  const index = new Map(signs.map((sign, at) => [sign, at]));
  const inputs = examples.map(({ bags }) =>
    bags.map((bag) => Int32Array.from([...bag].map((sign) => index.get(sign) ?? -1).filter((at) => at >= 0))),
  );
  const K = kinds.length;
  // Besides its weight for each kind a sign has a shared one: "label says" speaks against all of them.
  const stride = K + 1;
  const weights = new Float64Array(index.size * stride);
  const steps = new Float64Array(index.size * stride).fill(1e-4);
  const bias = kinds.map(() => -1);
  const roll = dice();
  const order = examples.map((_, i) => i).filter((i) => (inputs[i]?.length ?? 0) > 0);
  const scaleOf = (bag: Int32Array) => (bag.length + 1) ** -settings.damping;
  const sums = new Float64Array(stride);

  const addUp = (bag: Int32Array) => {
    sums.fill(0);
    for (const sign of bag)
      for (let k = 0; k <= K; k += 1) sums[k] = (sums[k] ?? 0) + (weights[sign * stride + k] ?? 0);
  };
  const correct = (bag: Int32Array, kind: number, error: number) => {
    const scale = scaleOf(bag);
    for (const sign of bag) {
      for (let w = sign * stride + kind, turn = 0; turn < 2; turn += 1, w = sign * stride + K) {
        const slope = error * scale + settings.pull * (weights[w] ?? 0);
        steps[w] = (steps[w] ?? 0) + slope * slope;
        weights[w] = (weights[w] ?? 0) - (settings.rate * slope) / Math.sqrt(steps[w] ?? 1);
      }
    }
  };

  for (let round = 0; round < settings.rounds; round += 1) {
    shuffle(order, roll);
    for (const at of order) {
      const bags = inputs[at] ?? [];
      const example = examples[at];
      if (example === undefined) continue;
      const best = kinds.map(() => Number.NEGATIVE_INFINITY);
      const from = kinds.map(() => 0);
      bags.forEach((bag, b) => {
        addUp(bag);
        const scale = scaleOf(bag);
        for (let k = 0; k < K; k += 1) {
          const odds = ((sums[k] ?? 0) + (sums[K] ?? 0)) * scale + (bias[k] ?? 0);
          if (odds > (best[k] ?? 0)) {
            best[k] = odds;
            from[k] = b;
          }
        }
      });
      const top = Math.max(0, ...best);
      const total = Math.exp(-top) + best.reduce((sum, odds) => sum + Math.exp(odds - top), 0);
      const wanted = example.hazard === null ? -1 : kinds.indexOf(example.hazard);
      for (let k = 0; k < K; k += 1) {
        let error = (Math.exp((best[k] ?? 0) - top) / total - (k === wanted ? 1 : 0)) * example.weight;
        // The label names the most urgent kind; a lesser one may be told of as well.
        if (wanted >= 0 && k > wanted) error *= 0.2;
        bias[k] = (bias[k] ?? 0) - 0.02 * error;
        // What is learned already needs no correction.
        if (Math.abs(error) > 1e-3) correct(bags[from[k] ?? 0] ?? new Int32Array(), k, error);
      }
    }
  }
  const rows = [...index].map(
    ([sign, at]) =>
      [sign, kinds.map((_, k) => (weights[at * stride + k] ?? 0) + (weights[at * stride + K] ?? 0))] as const,
  );
  return { bias, damping: settings.damping, weights: new Map(rows) };
}
