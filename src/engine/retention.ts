import type { EngineParts } from "./types.ts";

/** How the clock has gone so far; ISO instants. */
export interface Steady {
  /** The latest instant seen. */
  readonly seen: string;
  /** Since when the clock has neither gone back nor jumped. */
  readonly since: string;
}

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** The desk may have been off for so long; more is taken for a clock that was put forward. */
const LONGEST_GAP = 7 * DAY;
/** After a jump nothing is erased for so long: somebody may put the clock right. */
const CALM = DAY;
const EVERY = HOUR / 6;
/** A message is not left waiting for longer than this: no platform asks for more, only a clock that was wrong. */
const LONGEST_WAIT = HOUR;
/** Erased at a time, so that customers do not wait meanwhile. */
const AT_ONCE = 20;
const NOTE = "clock";

/** The clock's record after another look at it. */
export function afterLook(before: Steady | null, at: string): Steady {
  if (before === null) return { seen: at, since: at };
  const gap = Date.parse(at) - Date.parse(before.seen);
  return gap < -HOUR || gap > LONGEST_GAP ? { seen: at, since: at } : { seen: at, since: before.since };
}

const ago = (at: string, ms: number): string => new Date(Date.parse(at) - ms).toISOString();

/**
 * Erases threads without activity since `keepDays`, and loose ends of the same age. Nothing is erased by a clock that has
 * jumped. Runs on ticks; gives the number of threads erased.
 */
export function sweeper(
  parts: EngineParts,
  inTurn: <T>(threadId: string, task: () => Promise<T>) => Promise<T>,
): (at: string) => Promise<number> {
  const { store, keepDays = null } = parts;
  let last: number | null = null;

  return async (at) => {
    const now = Date.parse(at);
    if (last !== null && Math.abs(now - last) < EVERY) return 0;
    last = now;
    const noted = await store.upkeep.note(NOTE);
    const clock = afterLook(noted === undefined ? null : (JSON.parse(noted) as Steady), at);
    await store.upkeep.keepNote(NOTE, JSON.stringify(clock));
    await store.upkeep.retryBy(new Date(now + LONGEST_WAIT).toISOString());
    if (keepDays === null || now - Date.parse(clock.since) < CALM) return 0;

    const before = ago(at, keepDays * DAY);
    const quiet = await store.upkeep.quietThreads(before, AT_ONCE);
    let count = 0;
    for (const { id, version } of quiet) {
      const erase = { at, erase: true, thread: { id, state: "{}", version }, outgoing: [] };
      // Somebody who writes at this very moment keeps the thread.
      if ((await inTurn(id, () => store.commit(erase))) === "done") count += 1;
    }
    if (quiet.length === AT_ONCE) last = null;
    await store.upkeep.forgetLoose(before);
    return count;
  };
}
