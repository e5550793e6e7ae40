import type { Hazard } from "../../../nameplate/reading.ts";

/** Order of the weights in every line of the data. */
export const kinds: readonly Hazard[] = ["shock", "fire", "water", "trip"];

/** A sign speaks for or against each kind of danger. */
export interface Linear {
  readonly bias: readonly number[];
  readonly weights: ReadonlyMap<string, readonly number[]>;
  /** The sum is divided by the number of known signs to this power, so that long texts do not shout. */
  readonly damping: number;
}

/** Reads lines of `sign<TAB>shock fire water trip`. */
export function readLinear(data: {
  readonly bias: string;
  readonly damping: number;
  readonly weights: readonly string[];
}): Linear {
  const weights = new Map(
    data.weights.map((line) => {
      const tab = line.lastIndexOf("\t");
      return [
        line.slice(0, tab),
        line
          .slice(tab + 1)
          .split(" ")
          .map(Number),
      ] as const;
    }),
  );
  return { bias: data.bias.split(" ").map(Number), damping: data.damping, weights };
}

/** For each kind of danger the sum of what the signs say, as log odds against "no danger". */
export function speak({ bias, weights, damping }: Linear, signs: Iterable<string>): readonly number[] {
  const sums = bias.map(() => 0);
  let known = 0;
  for (const sign of signs) {
    const row = weights.get(sign);
    if (row === undefined) continue;
    known += 1;
    row.forEach((weight, k) => {
      sums[k] = (sums[k] ?? 0) + weight;
    });
  }
  const scale = (known + 1) ** -damping;
  return sums.map((sum, k) => sum * scale + (bias[k] ?? 0));
}

/** Log odds of any danger, from the log odds of each kind. */
export function anyKind(each: readonly number[]): number {
  const top = Math.max(...each);
  return top + Math.log(each.reduce((sum, one) => sum + Math.exp(one - top), 0));
}
