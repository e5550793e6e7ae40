import { join } from "node:path";
import { readConfig } from "../config.ts";
import { loadContent, readJson } from "../content.ts";
import { deskHoursSchema } from "../desk/hours.ts";
import { caseContent } from "../desk/present.ts";
import { waitingContent } from "../desk/waiting.ts";
import { caseOf, eventOf, threadOf } from "../engine/state.ts";
import { StoreError } from "../store/store.ts";
import { withStore } from "./with-store.ts";

/** Lists what waits, most urgent first, and who has what. */
export function runCases(storeFile?: string): Promise<void> {
  const { wording } = loadContent(readConfig().intentsFolder);
  return withStore(storeFile, async (store) => {
    const open = (await store.openCases()).map(caseOf);
    process.stdout.write(`${waitingContent(open, new Date().toISOString(), wording).text}\n`);
  });
}

/** Shows one case with its brief and history. Throws `StoreError` when there is no such case. */
export function runCase(number: string, storeFile?: string): Promise<void> {
  const { intentsFolder, dataFolder } = readConfig();
  const { wording } = loadContent(intentsFolder);
  const { timeZone } = readJson(join(dataFolder, "desk-hours.json"), deskHoursSchema);
  return withStore(storeFile, async (store) => {
    const row = /^\d{1,9}$/.test(number) ? await store.findCase(Number(number)) : undefined;
    if (!row)
      throw new StoreError(`There is no case ${number}. The command "cases" lists those that are open.`);
    const events = (await store.events(row.id)).map(eventOf);
    const thread = threadOf(await store.findThread(row.threadId));
    const { text } = caseContent(caseOf(row), thread, events, new Date().toISOString(), {
      wording,
      timeZone,
    });
    process.stdout.write(`${text}\n`);
  });
}
