import { startTelegram } from "./channels/telegram/adapter.ts";
import type { Clock } from "./channels/telegram/clock.ts";
import { openDesk } from "./compose.ts";
import type { Config, TelegramConfig } from "./config.ts";
import { openLog } from "./ops/log.ts";
import { startOps } from "./ops/ops.ts";

/** Puts the desk on Telegram until it is told to stop. Throws `TelegramError` when it cannot go on. */
export async function startOnTelegram(
  config: Config,
  telegram: TelegramConfig,
  clock?: Clock,
): Promise<void> {
  const log = await openLog(config, "stderr");
  const desk = await openDesk(config, {
    today: new Date().toISOString().slice(0, 10),
    limits: config.limits,
    log,
  });
  try {
    const ops = await startOps(config, desk, log, telegram.webhook === null);
    try {
      const running = startTelegram({
        ...telegram,
        engine: ops.engine,
        store: ops.store,
        wording: desk.content.wording,
        shopName: desk.shop.name,
        log,
        ...(clock === undefined ? {} : { clock }),
      });
      for (const signal of ["SIGTERM", "SIGINT"] as const) process.once(signal, running.stop);
      await running.ended;
      log.info({}, "the desk has left Telegram");
    } finally {
      await ops.stop();
    }
  } finally {
    await desk.close();
  }
}
