import { existsSync, statfsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { shopSchema } from "../compose.ts";
import type { Config } from "../config.ts";
import { loadContent, readJson } from "../content.ts";
import { createIntentMatcher } from "../conversation/intents.ts";
import { deskHoursSchema } from "../desk/hours.ts";
import { readMotorsFile, readPumpsAndSpares } from "../stock-files.ts";
import { damagesOf, look, versionOf } from "../store/sqlite/check.ts";
import { countsOf } from "../store/sqlite/upkeep.ts";
import { whereabouts } from "./log.ts";
import { reachTelegram } from "./reach.ts";

export interface Finding {
  /** `note`: worth knowing, nothing to mend now. */
  readonly state: "good" | "note" | "bad";
  readonly about: string;
  readonly text: string;
}

type Check = (config: Config) => readonly Finding[] | Promise<readonly Finding[]>;

const good = (about: string, text: string): Finding => ({ state: "good", about, text });
const note = (about: string, text: string): Finding => ({ state: "note", about, text });
const bad = (about: string, text: string): Finding => ({ state: "bad", about, text });

/** What is looked at, in this order. */
const checks: readonly (readonly [about: string, check: Check])[] = [
  ["settings", settings],
  ["texts and intents", texts],
  ["shop and opening hours", shop],
  ["demo tables", tables],
  ["store", store],
  ["disk", disk],
  ["Telegram", reachTelegram],
];

/** Looks at everything, changes nothing. A check that fails is a finding. */
export async function examine(config: Config): Promise<readonly Finding[]> {
  const findings: Finding[] = [];
  for (const [about, check] of checks) {
    try {
      findings.push(...(await check(config)));
    } catch (error) {
      const known =
        error instanceof Error && ["ContentError", "StoreError", "ConfigError"].includes(error.name);
      findings.push(bad(about, known ? error.message : JSON.stringify(whereabouts(error))));
    }
  }
  return findings;
}

function settings({ telegram, keepDays, http, logFile }: Config): readonly Finding[] {
  const parts = [
    telegram === null
      ? "terminal (no bot token)"
      : `Telegram, ${telegram.webhook === null ? "polling" : "webhook"}`,
    keepDays === null ? "threads are never erased by age" : `threads are erased after ${keepDays} quiet days`,
    http === null ? "no health page" : `health on ${http.host}:${http.port}`,
    logFile === null ? "log as usual" : `log in ${logFile}`,
  ];
  const open = http !== null && !/^(?:127\.|::1$|localhost$)/.test(http.host);
  return [
    good("settings", parts.join("; ")),
    ...(open ? [note("settings", `health and metrics are shown beyond this machine, on ${http.host}`)] : []),
    ...(telegram !== null && telegram.staffGroup === null
      ? [note("settings", "no staff group: nobody sees the cases; set NAMEPLATE_TELEGRAM_STAFF_GROUP")]
      : []),
  ];
}

function texts({ intentsFolder }: Config): readonly Finding[] {
  const { intents, texts: groups } = loadContent(intentsFolder);
  createIntentMatcher(intents);
  const count = Object.values(groups).reduce((sum, group) => sum + Object.keys(group).length, 0);
  return [good("texts and intents", `${count} texts, ${intents.length} intents`)];
}

function shop({ dataFolder }: Config): readonly Finding[] {
  const { name } = readJson(join(dataFolder, "shop.json"), shopSchema);
  const { timeZone } = readJson(join(dataFolder, "desk-hours.json"), deskHoursSchema);
  return [good("shop and opening hours", `${name}, ${timeZone}`)];
}

function tables({ dataFolder }: Config): readonly Finding[] {
  const motors = readMotorsFile(join(dataFolder, "motors.csv"));
  const { pumps, spares } = readPumpsAndSpares(dataFolder);
  return [good("demo tables", `${motors.length} motors, ${pumps.length} pumps, ${spares.length} spares`)];
}

function store({ storeFile }: Config): readonly Finding[] {
  if (!existsSync(storeFile))
    return [note("store", `${storeFile} is not there yet; the first start makes it`)];
  return look(storeFile, (db): readonly Finding[] => {
    const damages = damagesOf(db);
    if (damages.length > 0)
      return [
        bad("store", `${storeFile} is damaged: ${damages.join("; ")}. Stop the desk and restore a backup.`),
      ];
    const size = `${(statSync(storeFile).size / 1e6).toFixed(1)} MB`;
    if (versionOf(db) === "earlier")
      return [
        good(
          "store",
          `${storeFile}, ${size}, whole; of an earlier version, brought up to date at the next start`,
        ),
      ];
    const counts = countsOf(db)();
    const waiting = counts.unhandled + counts.updatesWaiting;
    const parked = counts.outboxParked + counts.updatesParked;
    return [
      good(
        "store",
        `${storeFile}, ${size}, whole; ${counts.threads} customers, ${counts.casesOpen} open cases`,
      ),
      good(
        "pending",
        `${waiting} to handle, ${counts.outboxWaiting} to deliver${counts.oldestWaiting === null ? "" : `, the oldest since ${counts.oldestWaiting}`}`,
      ),
      parked === 0
        ? good("parked", "nothing")
        : note("parked", `${parked} could never be delivered or handled; staff see them with /undelivered`),
    ];
  });
}

/** Less than this and SQLite may soon find no room. */
const LEAST_FREE_MB = 200;

function disk({ storeFile }: Config): readonly Finding[] {
  let folder = dirname(storeFile);
  while (!existsSync(folder)) folder = dirname(folder);
  const { bavail, bsize } = statfsSync(folder);
  const freeMb = Math.floor((bavail * bsize) / 1e6);
  const text = `${freeMb} MB free for the store`;
  return [freeMb < LEAST_FREE_MB ? bad("disk", `${text}; make room`) : good("disk", text)];
}
