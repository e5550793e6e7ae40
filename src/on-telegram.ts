import { pino } from "pino";
import { startTelegram } from "./channels/telegram/adapter.ts";
import type { Clock } from "./channels/telegram/clock.ts";
import { openDesk } from "./compose.ts";
import type { Config, TelegramConfig } from "./config.ts";

/** Puts the desk on Telegram until it is told to stop. Throws `TelegramError` when it cannot go on. */
export async function startOnTelegram(
  config: Config,
  telegram: TelegramConfig,
  clock?: Clock,
): Promise<void> {
  const log = pino({ level: config.logLevel }, pino.destination({ fd: 2, sync: true }));
  const desk = await openDesk(config, {
    today: new Date().toISOString().slice(0, 10),
    // The error's text may hold what the customer wrote.
    onTrouble: ({ id }, error) => log.error({ id, error: nameOf(error) }, "a message could not be handled"),
  });
  const { engine, store, content, shop } = desk;
  const running = startTelegram({
    ...telegram,
    engine,
    store,
    wording: content.wording,
    shopName: shop.name,
    log,
    ...(clock === undefined ? {} : { clock }),
  });
  for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, running.stop);
  try {
    await running.ended;
    log.info({}, "the desk has left Telegram");
  } finally {
    await desk.close();
  }
}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "unknown");
