import data from "../../../../intents/owners/weights.json" with { type: "json" };
import type { Standing } from "../candidate.ts";
import type { Context } from "../context.ts";
import { signsOf } from "./signs.ts";

/** What each sign says for (positive) or against (negative) a figure being the label's, as log odds. */
export interface Weights {
  readonly bias: number;
  /** The sum is divided by the number of known signs to this power, so that long texts do not shout. */
  readonly damping: number;
  readonly weights: ReadonlyMap<string, number>;
}

/** Reads lines of `sign<TAB>weight`. */
export function readWeights(file: {
  readonly bias: number;
  readonly damping: number;
  readonly weights: readonly string[];
}): Weights {
  const rows = file.weights.map((line) => {
    const tab = line.lastIndexOf("\t");
    return [line.slice(0, tab), Number(line.slice(tab + 1))] as const;
  });
  return { bias: file.bias, damping: file.damping, weights: new Map(rows) };
}

const learned = readWeights(data);

/** The sum of what the signs say, as log odds: 0 is even. */
export function oddsOf({ bias, damping, weights }: Weights, signs: Iterable<string>): number {
  let sum = 0;
  let known = 0;
  for (const sign of signs) {
    const weight = weights.get(sign);
    if (weight === undefined) continue;
    sum += weight;
    known += 1;
  }
  return sum * (known + 1) ** -damping + bias;
}

/** Below this a figure that the cues leave with the label is somebody else's; chosen on messages not learned from. */
const NOT_THE_LABELS = -0.8;
/** Above this a figure that the cues give to something else is the label's all the same. */
const THE_LABELS = 2.5;

/**
 * Two opinions on whose a figure is: that of the cues (`byCues`: it is the label's), which know the trade, and that of
 * the words around it, learned from labelled messages (`intents/owners`), which know wordings nobody listed. The words
 * overrule the cues when they are sure.
 */
export function isLabels(context: Context, claim: Standing, byCues: boolean): boolean {
  const odds = oddsOf(learned, signsOf(context, claim));
  return odds > (byCues ? NOT_THE_LABELS : THE_LABELS);
}
