import type { Api } from "grammy";
import type { Update } from "grammy/types";
import type { KeptUpdate, TelegramStore } from "../../store/telegram.ts";
import { type Clock, pause } from "./clock.ts";
import { describe, failureOf, fatal } from "./failures.ts";
import { intakeOf, wantedUpdates } from "./intake.ts";
import type { Log } from "./log.ts";
import { backoff, type Pace } from "./pace.ts";

export interface PollerParts {
  readonly api: Api;
  readonly store: Pick<TelegramStore, "keepUpdates">;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
  /** Told of updates once they are stored. */
  readonly onKept: (updates: readonly KeptUpdate[]) => void;
}

/**
 * Fetches updates until `signal` is aborted. A batch is confirmed by the next request, so only after it is stored:
 * whatever happens in between, Telegram sends it again and the store knows it. Throws `TelegramError` when there is
 * no use in going on.
 */
export async function poll(parts: PollerParts, signal: AbortSignal): Promise<void> {
  const { store, clock, pace, log, onKept } = parts;
  let offset = 0;
  let failures = 0;
  while (!signal.aborted) {
    try {
      const updates = await fetchUpdates(parts, offset, signal);
      const kept = await store.keepUpdates(updates.map(intakeOf), clock.now());
      offset = updates.reduce((highest, { update_id }) => Math.max(highest, update_id + 1), offset);
      failures = 0;
      if (kept.length > 0) onKept(kept);
    } catch (error) {
      if (signal.aborted) return;
      const failure = failureOf(error);
      const end = fatal(failure);
      if (end) throw end;
      const wait = failure.kind === "wait" ? failure.seconds * 1000 : backoff(pace, failures);
      failures += 1;
      log.warn({ failure: describe(error), waitMs: wait }, "updates could not be fetched and stored");
      await pause(clock, wait, signal);
    }
  }
}

async function fetchUpdates(
  { api, pace }: PollerParts,
  offset: number,
  signal: AbortSignal,
): Promise<readonly Update[]> {
  const updates = await api.getUpdates(
    { offset, limit: 100, timeout: pace.pollSeconds, allowed_updates: wantedUpdates },
    // The library's type is that of an older polyfill; at run time it is the same thing.
    signal as unknown as Parameters<Api["getUpdates"]>[1],
  );
  // An answer that is no list must not count as one that was empty.
  if (!Array.isArray(updates)) throw new TypeError("the answer to getUpdates is no list");
  return updates;
}
