import { later, pause } from "./clock.ts";
import { describe } from "./failures.ts";
import type { Station } from "./station.ts";
import { sweepErased } from "./sweep.ts";

/** Telegram keeps updates for a day; their ids are remembered longer than that. */
const IDS_KEPT_MS = 3 * 24 * 3_600_000;

/** What time alone brings: digest, late words, second alerts; and clearing up. */
export async function keepTime(station: Station, onDone: () => void, signal: AbortSignal): Promise<void> {
  const { engine, store, clock, pace, log } = station;
  while (!signal.aborted) {
    await pause(clock, pace.tickEvery, signal);
    if (signal.aborted) return;
    try {
      const now = clock.now();
      // What was left over when the store failed; usually nothing.
      await engine.catchUp();
      await engine.tick(now);
      // Other programs on the same store, as the command line, leave messages for Telegram too.
      onDone();
      await sweepErased(station);
      await store.telegram.forgetUpdates(later(now, -IDS_KEPT_MS));
    } catch (error) {
      log.error({ failure: describe(error) }, "the clock's work failed; it is tried again");
    }
  }
}
