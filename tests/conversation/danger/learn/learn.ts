import { writeFileSync } from "node:fs";
import type { Linear } from "../../../../src/conversation/danger/vote/linear.ts";
import { crossValidate } from "./check.ts";
import { loadLabelled } from "./messages.ts";
import { teach } from "./teach.ts";

/**
 * `npx tsx tests/conversation/danger/learn/learn.ts` writes the weights of the vote anew from the labelled messages;
 * with `--check` it writes nothing and prints what is found of messages that were not learned from.
 */
const target = new URL("../../../../intents/dangers/weights.json", import.meta.url);

/** Two decimals are enough; a sign that says next to nothing is left out. */
function lines({ bias, damping, weights }: Linear) {
  const rows = [...weights]
    .map(([sign, row]) => [sign, row.map((weight) => Math.round(weight * 100) / 100)] as const)
    .filter(([, row]) => row.some((weight) => Math.abs(weight) >= 0.1))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    bias: bias.map((one) => Math.round(one * 100) / 100).join(" "),
    damping,
    weights: rows.map(([sign, row]) => `${sign}\t${row.join(" ")}`),
  };
}

const messages = loadLabelled();
if (process.argv.includes("--check")) {
  crossValidate(messages, process.argv.includes("--misses"));
} else {
  const { wording, whole, clause } = teach(messages);
  const data = { wording: lines(wording), whole: lines(whole), clause: lines(clause) };
  writeFileSync(target, `${JSON.stringify(data, null, 2)}\n`);
  const signs = Object.entries(data).map(([view, { weights }]) => `${view} ${weights.length} signs`);
  console.log(`${signs.join(", ")} from ${messages.length} messages`);
}
