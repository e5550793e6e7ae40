import type { Weights } from "../../../../src/conversation/danger/vote/vote.ts";
import { judgeWith } from "../../../../src/conversation/danger.ts";
import { hazards } from "../../../../src/nameplate/reading.ts";
import { foldOf, type Labelled } from "./messages.ts";
import { teach } from "./teach.ts";

const FOLDS = 5;

interface Outcome {
  readonly message: Labelled;
  readonly found: string | null;
  readonly score: number;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "none" : `${part}/${whole} ${((100 * part) / whole).toFixed(1)} %`;
}

function show(name: string, outcomes: readonly Outcome[]): void {
  const dangers = outcomes.filter(({ message }) => message.hazard !== null);
  const others = outcomes.filter(({ message }) => message.hazard === null);
  const found = dangers.filter((one) => one.found !== null);
  const right = found.filter((one) => one.found === one.message.hazard);
  const alarms = others.filter((one) => one.found !== null);
  console.log(
    `${name.padEnd(10)} recall ${percent(found.length, dangers.length)}  false alarms ` +
      `${percent(alarms.length, others.length)}  right kind ${percent(right.length, found.length)}`,
  );
}

/** Recall where so many harmless messages raise an alarm: what another threshold would give. */
function showTrade(name: string, outcomes: readonly Outcome[]): void {
  const scores = (danger: boolean) =>
    outcomes.filter(({ message }) => (message.hazard !== null) === danger).map(({ score }) => score);
  const harmless = scores(false).sort((a, b) => b - a);
  const dangers = scores(true);
  if (harmless.length === 0 || dangers.length === 0) return;
  const trade = [0.02, 0.03, 0.05, 0.08, 0.12].map((share) => {
    const threshold = harmless[Math.floor(share * harmless.length)] ?? 0;
    const found = dangers.filter((score) => score > threshold).length;
    return `${(100 * share).toFixed(0)} % -> ${((100 * found) / dangers.length).toFixed(1)} % (${threshold.toFixed(1)})`;
  });
  console.log(`${name.padEnd(10)} false alarms -> recall: ${trade.join(", ")}`);
}

function judgeAll(messages: readonly Labelled[], weights: Weights): readonly Outcome[] {
  return messages.map((message) => {
    const { danger, score } = judgeWith(message.text, weights);
    return { message, found: danger?.hazard ?? null, score };
  });
}

/** Each message is judged with weights that were learned without it (and without its writer's other messages). */
export function crossValidate(messages: readonly Labelled[], misses: boolean): void {
  const outcomes = Array.from({ length: FOLDS }, (_, fold) =>
    judgeAll(
      messages.filter((one) => foldOf(one, FOLDS) === fold),
      teach(messages.filter((one) => foldOf(one, FOLDS) !== fold)),
    ),
  ).flat();
  for (const source of new Set(messages.map((one) => one.source))) {
    show(
      source,
      outcomes.filter(({ message }) => message.source === source),
    );
  }
  for (const source of new Set(messages.map((one) => one.source))) {
    showTrade(
      source,
      outcomes.filter(({ message }) => message.source === source),
    );
  }
  const corpus = outcomes.filter(({ message: { source } }) => /^(?:danger|dp|fd|de)$/.test(source));
  showTrade("corpus", corpus);
  for (const hazard of hazards)
    show(
      hazard,
      outcomes.filter(({ message }) => message.hazard === hazard),
    );
  if (!misses) return;
  for (const { message, found, score } of outcomes) {
    if ((found === null) === (message.hazard === null)) continue;
    console.log(message.id, message.hazard ?? "none", score.toFixed(1), JSON.stringify(message.text));
  }
}
