import type { Miss } from "./answer.ts";
import type { DangerScore } from "./danger.ts";
import type { HostileScore } from "./hostile.ts";
import type { IntentScore } from "./intents.ts";
import type { ReadingScore } from "./readings.ts";
import { f1, precision, ratio, recall, type Share, sumTallies, type Tally } from "./tally.ts";

const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
const share = ({ right, all }: Share): string =>
  all === 0 ? "none to judge" : `${right}/${all} ${percent(ratio(right, all))}`;

function fieldLine(name: string, tally: Tally): string {
  const figures = [precision(tally), recall(tally), f1(tally)].map((figure) => figure.toFixed(4));
  const { truePositives, falsePositives, falseNegatives } = tally;
  const counts = `${truePositives} right, ${falsePositives} false, ${falseNegatives} lost`;
  return `  ${name.padEnd(18)} ${figures.join("  ")}   ${counts}`;
}

/** Tags with mistakes, worst first; the others only counted. */
function tagLines(tags: ReadonlyMap<string, Share>): string[] {
  const entries = [...tags].sort(([, a], [, b]) => a.right / a.all - b.right / b.all || b.all - a.all);
  const faulty = entries.filter(([, { right, all }]) => right < all);
  const lines = faulty.map(([tag, counts]) => `  #${tag.padEnd(20)} ${share(counts)}`);
  return [...lines, `  ${entries.length - faulty.length} tags without a mistake`];
}

function missLines(misses: readonly Miss[]): string[] {
  return misses.flatMap(({ id, text, tags, differences }) => [
    `  ${id} [${tags.join(" ")}] ${JSON.stringify(text)}`,
    ...differences.map((difference) => `      ${difference}`),
  ]);
}

const section = (lines: readonly string[], misses: readonly Miss[], showMisses: boolean): string =>
  [...lines, ...(showMisses ? missLines(misses) : misses.length > 0 ? ["  (misses not shown)"] : [])].join(
    "\n",
  );

/** Per-field figures, whole messages, tags and misses. */
export function reportReadings(score: ReadingScore, showMisses: boolean): string {
  const fields = [...score.fields].sort(([a], [b]) => a.localeCompare(b));
  const lines = [
    `readings: ${score.messages} messages, exactly right ${share({ right: score.exact, all: score.messages })}`,
    `  ${"field".padEnd(18)} precision recall  F1`,
    ...fields.map(([name, tally]) => fieldLine(name, tally)),
    fieldLine("ALL (micro)", sumTallies(score.fields.values())),
    ...tagLines(score.tags),
  ];
  return section(lines, score.misses, showMisses);
}

/** Recall, false alarms, kinds, tags and misses. */
export function reportDanger(score: DangerScore, showMisses: boolean): string {
  const lines = [
    `danger: ${score.messages} messages`,
    `  recall             ${share(score.dangers)}`,
    `  false alarms       ${share(score.falseAlarms)}`,
    `  right kind         ${share(score.kinds)}`,
    ...tagLines(score.tags),
  ];
  return section(lines, score.misses, showMisses);
}

/** First-intent accuracy, accuracy by intent, confusions, tags and misses. */
export function reportIntents(score: IntentScore, showMisses: boolean): string {
  const confusions = [...score.confusions].sort(([, a], [, b]) => b - a);
  const lines = [
    `intents: ${score.messages} messages`,
    `  first right        ${share({ right: score.first, all: score.messages })}`,
    `  first or also      ${share({ right: score.firstOrAlso, all: score.messages })}`,
    `  also listed        ${share(score.also)}`,
    ...[...score.intents].map(([name, counts]) => `  ${name.padEnd(18)} ${share(counts)}`),
    ...confusions.map(([confusion, times]) => `  ${times} x ${confusion}`),
    ...tagLines(score.tags),
  ];
  return section(lines, score.misses, showMisses);
}

/** Answered, invented and unsound; hostile input is never tuned on, so its misses are always shown. */
export function reportHostile(score: HostileScore): string {
  const of = (right: number) => share({ right, all: score.messages });
  const lines = [
    `hostile: ${score.messages} messages`,
    `  answered           ${of(score.answered)}`,
    `  readings invented  ${of(score.invented)}`,
    `  unsound values     ${of(score.unsound)}`,
  ];
  return section(lines, score.misses, true);
}
