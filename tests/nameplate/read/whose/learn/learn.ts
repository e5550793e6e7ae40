import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
import { statedIn } from "../../../../../src/nameplate/read/message.ts";
import { signsOf } from "../../../../../src/nameplate/read/whose/signs.ts";
import { oddsOf, type Weights } from "../../../../../src/nameplate/read/whose/vote.ts";
import { loadLessons, loadReadings, type ReadingMessage } from "../../../../corpus/score/messages.ts";
import { type Example, learnWeights } from "./fit.ts";

/**
 * `npx tsx tests/nameplate/read/whose/learn/learn.ts` writes what the words around a figure say about whose it is anew
 * from the labelled messages; with `--check` it writes nothing and prints how often they are right on messages that
 * were not learned from.
 */
const target = new URL("../../../../../intents/owners/weights.json", import.meta.url);
const FOLDS = 5;

function examplesOf({ id, text, nameplate, site, unreadable }: ReadingMessage): readonly Example[] {
  const { stated, context } = statedIn(text);
  const gold: Record<string, unknown> = { ...nameplate, ...site };
  return stated
    .filter(({ value }) => value !== undefined)
    .map((claim) => ({
      id,
      signs: signsOf(context, claim),
      // What cannot be read whole is the label's all the same.
      isLabels: unreadable.includes(claim.rating) || isPartOf(gold[claim.rating], claim.value),
      // The little sentences many messages are made of are few among long ones.
      weight: id.startsWith("plainly-") ? 4 : 1,
    }));
}

/** "115 or 230" is stated in two figures, each model number by itself; of names the customer's own writing is kept. */
function isPartOf(gold: unknown, value: unknown): boolean {
  if (Array.isArray(gold)) return [value].flat().every((one) => gold.some((other) => isSame(other, one)));
  return isSame(gold, value);
}

function isSame(gold: unknown, value: unknown): boolean {
  if (typeof gold !== "string" || typeof value !== "string") return isDeepStrictEqual(gold, value);
  return gold.toLowerCase().includes(value.toLowerCase());
}

const foldOf = (id: string) => (createHash("sha256").update(id).digest()[0] ?? 0) % FOLDS;

function check(examples: readonly Example[]): void {
  for (const threshold of [-1, -0.5, 0, 1, 2]) {
    let [labels, labelsBelow, others, othersBelow] = [0, 0, 0, 0];
    for (const { isLabels, odds } of judged(examples)) {
      if (isLabels) labels += 1;
      else others += 1;
      if (odds > threshold) continue;
      if (isLabels) labelsBelow += 1;
      else othersBelow += 1;
    }
    console.log(
      `odds below ${threshold}: ${othersBelow} of ${others} figures of others, ${labelsBelow} of ${labels} of the label`,
    );
  }
}

let known: readonly { readonly isLabels: boolean; readonly odds: number }[] | undefined;
function judged(examples: readonly Example[]) {
  known ??= Array.from({ length: FOLDS }, (_, fold) => {
    const weights = learnWeights(examples.filter(({ id }) => foldOf(id) !== fold));
    return examples
      .filter(({ id }) => foldOf(id) === fold)
      .map(({ isLabels, signs }) => ({ isLabels, odds: oddsOf(weights, signs) }));
  }).flat();
  return known;
}

const rounded = (value: number) => Math.round(value * 100) / 100;

/** Two decimals are enough; a sign that says next to nothing is left out. */
function toFile({ bias, damping, weights }: Weights) {
  const rows = [...weights]
    .map(([sign, weight]) => [sign, rounded(weight)] as const)
    .filter(([, weight]) => Math.abs(weight) >= 0.03)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return { bias: rounded(bias), damping, weights: rows.map(([sign, weight]) => `${sign}\t${weight}`) };
}

const examples = [...loadReadings(), ...loadLessons()].flatMap(examplesOf);
if (process.argv.includes("--check")) check(examples);
else {
  const file = toFile(learnWeights(examples));
  writeFileSync(target, `${JSON.stringify(file, null, 2)}\n`);
  console.log(`${file.weights.length} signs from ${examples.length} figures`);
}
