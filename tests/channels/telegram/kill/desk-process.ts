import { join } from "node:path";
import { startTelegram } from "../../../../src/channels/telegram/adapter.ts";
import { silentLog } from "../../../../src/channels/telegram/log.ts";
import { openDesk } from "../../../../src/compose.ts";
import { readConfig } from "../../../../src/config.ts";

// A desk in a process of its own, for tests that kill it:
// desk-process.ts <apiRoot> <token> <staff group> <store file> <ms the story's clock is ahead> <project folder>
const [apiRoot = "", token = "", staffGroup = "", storeFile = "", aheadMs = "", project = ""] =
  process.argv.slice(2);
const now = () => new Date(Date.now() + Number(aheadMs)).toISOString();

const config = readConfig({
  NAMEPLATE_STORE: storeFile,
  NAMEPLATE_INTENTS: join(project, "intents"),
  NAMEPLATE_DATA: join(project, "data"),
});
const desk = await openDesk(config, {
  today: now().slice(0, 10),
  onTrouble: (_, error) => process.stderr.write(`${String(error)}\n`),
});
const running = startTelegram({
  token,
  staffGroup: Number(staffGroup),
  onCall: null,
  webhook: null,
  engine: desk.engine,
  store: desk.store,
  wording: desk.content.wording,
  shopName: desk.shop.name,
  log: process.env["DESK_LOG"] === undefined ? silentLog : { info: say, warn: say, error: say },
  apiRoot,
  clock: {
    now,
    after: (ms, run) => {
      const timer = setTimeout(run, ms);
      return () => clearTimeout(timer);
    },
  },
  pace: {
    pollSeconds: 10,
    callTimeoutSeconds: 20,
    albumGap: 400,
    firstRetry: 10,
    longestRetry: 50,
    tickEvery: 100,
  },
});
process.once("SIGTERM", running.stop);
// Whoever plays the evening may be ended too; nobody would end this process then.
const parent = process.ppid;
setInterval(() => {
  if (process.ppid !== parent) process.exit();
}, 500).unref();
await running.ended;
await desk.close();

function say(about: object, text: string): void {
  process.stderr.write(`${text} ${JSON.stringify(about)}\n`);
}
