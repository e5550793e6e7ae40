import { readFileSync } from "node:fs";
import { parseMotors } from "../../../src/catalogue/motors-csv.ts";
import { heldShare, type SlipTally, studySlips } from "./slip-study.ts";

// Prints the figures of the slip study: npx tsx tests/nameplate/audit/report-slips.ts [labels] [seed] [--missed]
const labels = Number(process.argv[2] ?? 4000);
const seed = Number(process.argv[3] ?? 20_261);
const { motors } = parseMotors(readFileSync(new URL("../../../data/motors.csv", import.meta.url), "utf8"));
const study = studySlips(labels, motors, seed);

const pct = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`.padStart(8);
const line = (name: string, t: SlipTally): string =>
  `${name.padEnd(14)}${String(t.slips).padStart(7)}${pct(t.caught, t.slips)}${pct(t.caughtFirst, t.slips)}${pct(t.proposedRight, t.slips)}` +
  `${String(t.changing).padStart(9)}${pct(t.changingCaught, t.changing)}${pct(t.changingUndecided, t.changing)}` +
  `${(100 * heldShare(t)).toFixed(1).padStart(7)} %${String(t.falseDropIns).padStart(7)}`;

console.log(`${labels} true labels, false alarms ${pct(study.falseAlarms.length, labels).trim()}`);
console.log(
  "slip            slips  caught   first   right  changing  caught undecided  held  unseen drop-ins",
);
for (const [kind, tally] of Object.entries(study.byKind)) console.log(line(kind, tally));
console.log(line("all", study.total));
const uncaught = study.total.slips - study.total.caught;
console.log(
  `of ${uncaught} uncaught slips ${study.missed.length} (${pct(study.missed.length, uncaught).trim()}) change the verdict unseen`,
);
if (process.argv.includes("--missed")) for (const miss of study.missed) console.log(JSON.stringify(miss));
if (process.argv.includes("--alarms"))
  for (const label of study.falseAlarms) console.log(JSON.stringify(label));
