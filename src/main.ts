import { chatInTerminal } from "./channels/terminal/chat.ts";
import { openDesk } from "./compose.ts";
import { type Config, readConfig } from "./config.ts";
import { showFacts } from "./conversation/speaker.ts";
import { endKindly } from "./exit.ts";
import { openLog } from "./ops/log.ts";

/** Starts the desk: the terminal chat on the configured store. */
export async function startTerminal(
  options: { catalogueFile?: string; storeFile?: string } = {},
): Promise<void> {
  const now = () => new Date().toISOString();
  const config = readConfig();
  const desk = await openDesk(config, {
    ...options,
    log: await openLog(config, "nowhere"),
    today: now().slice(0, 10),
    onTrouble: ({ id }, error) =>
      process.stderr.write(`Message ${id} could not be handled: ${String(error)}\n`),
  });
  const { wording } = desk.content;
  const tryPage = await openTryPage(config);
  await chatInTerminal({
    engine: desk.engine,
    store: desk.store,
    input: process.stdin,
    output: process.stdout,
    interactive: process.stdin.isTTY === true,
    columns: process.stdout.columns ?? 80,
    now,
    greeting: async (known) => {
      if (!known) return wording.say("replies", "hello", { shop: desk.shop.name });
      const facts = showFacts((await desk.engine.thread("terminal")).facts);
      return facts === ""
        ? wording.say("replies", "opening")
        : wording.say("replies", "welcomeBack", { facts });
    },
  });
  await tryPage?.close();
  await desk.close();
}

/** The page to try the desk in a browser, beside a person's terminal or where its port is named. */
async function openTryPage(config: Config): Promise<{ close: () => Promise<void> } | undefined> {
  const { tryPort } = config;
  const atTerminal = process.stdin.isTTY === true && process.stdout.isTTY === true;
  if (tryPort === "off" || (tryPort === "free" && !atTerminal)) return undefined;
  const { startInBrowser } = await import("./in-browser.ts");
  const page = await startInBrowser({ ...config, tryPort });
  if (atTerminal) process.stdout.write(`Both sides to try in a browser: ${page.address}\n\n`);
  return page;
}

/** On Telegram with a bot token, in the terminal without one. */
async function start(): Promise<void> {
  const config = readConfig();
  const { telegram } = config;
  if (telegram === null) return startTerminal();
  // Loaded when it is needed: the terminal and the command line start without the client library.
  const { startOnTelegram } = await import("./on-telegram.ts");
  await endKindly(() => startOnTelegram(config, telegram));
  // A call that never ended must not keep the process: what it was for is stored.
  process.exit();
}

if (process.argv[1] === import.meta.filename) await endKindly(start);
