import { chatInTerminal } from "./channels/terminal/chat.ts";
import { openDesk } from "./compose.ts";
import { readConfig } from "./config.ts";
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
  await desk.close();
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
