import type { Server } from "node:http";
import type { KeptUpdate } from "../../store/telegram.ts";
import { aborted, pause } from "./clock.ts";
import { describe, failureOf, fatal } from "./failures.ts";
import { wantedUpdates } from "./intake.ts";
import { backoff } from "./pace.ts";
import { poll } from "./poller.ts";
import type { Station } from "./station.ts";
import { TelegramError } from "./telegram-error.ts";
import { listenForUpdates, type WebhookSettings } from "./webhook.ts";

/** Fetches or is sent updates until the signal comes. */
export async function receive(
  station: Station,
  webhook: WebhookSettings | null,
  onKept: (updates: readonly KeptUpdate[]) => void,
  signal: AbortSignal,
): Promise<void> {
  const { api, store, clock, pace, log } = station;
  const persistent = { clock, pace, log, signal };
  if (webhook === null) {
    // The operator chose to fetch: a webhook left over from before would forbid it. What waits stays.
    await untilAnswered(() => api.deleteWebhook(), persistent);
    return poll({ api, store: store.telegram, clock, pace, log, onKept }, signal);
  }
  const server = await listenForUpdates({
    settings: webhook,
    store: store.telegram,
    clock,
    log,
    onKept,
  }).catch((error: unknown) => {
    const why = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new TelegramError(
      `Cannot listen on ${webhook.host}:${webhook.port} for Telegram (${why}). Choose another NAMEPLATE_TELEGRAM_WEBHOOK_PORT or end what uses it.`,
    );
  });
  try {
    await untilAnswered(
      () => api.setWebhook(webhook.url, { secret_token: webhook.secret, allowed_updates: wantedUpdates }),
      persistent,
    );
    await aborted(signal);
  } finally {
    await closed(server);
  }
}

/** Repeats a call the start depends on until Telegram answers; undefined when stopped before. */
export async function untilAnswered<T>(
  call: () => Promise<T>,
  { clock, pace, log, signal }: Pick<Station, "clock" | "pace" | "log"> & { readonly signal: AbortSignal },
): Promise<T | undefined> {
  for (let failures = 0; !signal.aborted; failures += 1) {
    try {
      // A call that hangs must not keep the desk from stopping.
      return await Promise.race([call(), aborted(signal).then(() => undefined)]);
    } catch (error) {
      const failure = failureOf(error);
      const end = fatal(failure);
      if (end) throw end;
      if (failure.kind === "refused")
        throw new TelegramError(
          `Telegram refuses this configuration (${failure.description}). Check the NAMEPLATE_TELEGRAM_ settings.`,
        );
      log.warn({ failure: describe(error) }, "Telegram does not answer; trying again");
      await pause(clock, failure.kind === "wait" ? failure.seconds * 1000 : backoff(pace, failures), signal);
    }
  }
  return undefined;
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
  });
}
