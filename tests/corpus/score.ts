import { parseArgs } from "node:util";
import { openUnderstanding } from "../../src/understanding.ts";
import type { Understand } from "./score/answer.ts";
import { scoreDanger } from "./score/danger.ts";
import { scoreHostile, sumHostile } from "./score/hostile.ts";
import { scoreIntents } from "./score/intents.ts";
import { type HostileMessage, loadDanger, loadHostile, loadIntents, loadReadings } from "./score/messages.ts";
import { scoreReadings } from "./score/readings.ts";
import { reportDanger, reportHostile, reportIntents, reportReadings } from "./score/report.ts";
import { type Split, splitOf, splits } from "./score/split.ts";

const usage = `Scores the labelled messages of tests/corpus.
  --held       list the misses of the held-out part too (then it is no longer held out)
  --tag NAME   only messages with this tag
  --file NAME  only messages of this file (hard, labels, danger, intents, hostile, ...)`;

const { values: options } = parseArgs({
  options: {
    held: { type: "boolean", default: false },
    tag: { type: "string" },
    file: { type: "string" },
    help: { type: "boolean", default: false },
  },
});

/** The messages that the options ask for. */
function wanted<M extends { file: string; tags?: readonly string[] }>(messages: readonly M[]): M[] {
  return messages.filter(
    ({ file, tags = [] }) =>
      (options.file === undefined || file === options.file) &&
      (options.tag === undefined || tags.includes(options.tag)),
  );
}

function reports(): string[] {
  const understand = openUnderstanding();
  const readings = wanted(loadReadings());
  const danger = wanted(loadDanger());
  const intents = wanted(loadIntents());
  const hostile = wanted(loadHostile());
  if (readings.length + danger.length + intents.length + hostile.length === 0) {
    return ["No message matches: check the names given with --tag and --file."];
  }
  const ofSplit = (split: Split): string[] => {
    const part = <M extends { id: string }>(messages: readonly M[]) =>
      messages.filter(({ id }) => splitOf(id) === split);
    const show = split === "tune" || options.held;
    const [read, dangers, wishes] = [part(readings), part(danger), part(intents)];
    return [
      ...(read.length > 0 ? [reportReadings(scoreReadings(read, understand), show)] : []),
      ...(dangers.length > 0 ? [reportDanger(scoreDanger(dangers, understand), show)] : []),
      ...(wishes.length > 0 ? [reportIntents(scoreIntents(wishes, understand), show)] : []),
    ].map((report) => `[${split}] ${report}`);
  };
  return [...splits.flatMap(ofSplit), ...(hostile.length > 0 ? [hostileReport(hostile, understand)] : [])];
}

/** Hostile figures, with the slowest single answer: a pattern that blows up shows here first. */
function hostileReport(messages: readonly HostileMessage[], understand: Understand): string {
  let slowest = { id: "none", ms: 0 };
  const scores = messages.map((message) => {
    const start = performance.now();
    const score = scoreHostile([message], understand);
    const ms = performance.now() - start;
    if (ms > slowest.ms) slowest = { id: message.id, ms };
    return score;
  });
  return `${reportHostile(sumHostile(scores))}\n  slowest            ${slowest.id}, ${slowest.ms.toFixed(1)} ms`;
}

console.log(options.help ? usage : reports().join("\n\n"));
