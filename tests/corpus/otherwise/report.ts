import { loadLessons, loadReadings } from "../score/messages.ts";
import { compare } from "./compare.ts";

/**
 * `npx tsx tests/corpus/otherwise/report.ts [WAY]` says every labelled message in other words (fillers, greetings, slips,
 * separators, ...) that change nothing, and counts those that are then read otherwise; with WAY it lists them. It finds
 * what is brittle without a new message being written.
 */
const wanted = process.argv[2];
for (const { way, tried, changes } of compare([...loadReadings(), ...loadLessons()])) {
  console.log(
    `${way.padEnd(16)} ${changes.length}/${tried} ${((100 * changes.length) / Math.max(1, tried)).toFixed(1)} %`,
  );
  if (way !== wanted) continue;
  for (const { id, text, before, after } of changes)
    console.log(`  ${id} ${JSON.stringify(text)}\n      before ${before}\n      after  ${after}`);
}
