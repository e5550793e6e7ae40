import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { differences } from "../channels/telegram/kill/compare.ts";
import { playEvening } from "../channels/telegram/kill/play.ts";
import { compilePrograms, removePrograms } from "../programs.ts";

// Kills the desk hundreds of times and counts what went wrong: npx tsx tests/bench/kills.ts [kills] [a night]
const wanted = Number(process.argv[2] ?? 300);
const perEvening = Number(process.argv[3] ?? 50);

const folder = mkdtempSync(join(tmpdir(), "kills-"));
await compilePrograms();
const plan = { folder, customers: 21, seed: 11 };
const calm = await playEvening({ ...plan, kills: 0, killSeed: 0 });
process.stdout.write(`undisturbed: ${calm.deeds} deeds in ${Math.round(calm.ms)} ms\n`);

let kills = 0;
let atStart = 0;
let repeated = 0;
let wrong = 0;
for (let killSeed = 1; kills < wanted; killSeed += 1) {
  const rough = await playEvening({ ...plan, kills: Math.min(perEvening, wanted - kills), killSeed });
  const { missing, repeats } = differences(calm, rough);
  const sameBooks = isDeepStrictEqual(rough.everything, calm.everything);
  const fine = missing.length === 0 && sameBooks && rough.parked === 0 && rough.integrity === "ok";
  kills += rough.kills;
  atStart += rough.killedAtStart;
  repeated += repeats;
  if (!fine) wrong += 1;
  process.stdout.write(
    `evening ${killSeed}: ${rough.kills} kills, ${missing.length} customers heard something else, ` +
      `books ${sameBooks ? "equal" : "DIFFERENT"}, parked ${rough.parked}, file ${rough.integrity}, ` +
      `${repeats} repeats, ${Math.round(rough.ms / 1000)} s\n`,
  );
}
process.stdout.write(
  `${kills} kills (${atStart} while starting), ${repeated} messages repeated, ${wrong} evenings went wrong\n`,
);
rmSync(folder, { recursive: true, force: true });
removePrograms();
process.exitCode = wrong === 0 ? 0 : 1;
