/** Messages a minute that are answered as they come. */
export interface Limits {
  readonly perThread: number;
  readonly overall: number;
}

/**
 * `answer`: at once. `hold`: it is stored and waits; `first` the first time in this flood. `together`: answer it with
 * what was held.
 */
export type Passage = "answer" | "first" | "hold" | "together";

/** Counts what comes in, and says what of it waits. It never loses anything: what it holds back is stored already. */
export interface Gate {
  readonly arrives: (threadId: string, at: string) => Passage;
  /** Threads whose held messages may be read now; they are no longer held. */
  readonly release: (at: string) => readonly string[];
  readonly holds: (threadId: string) => boolean;
  readonly perThread: number;
}

const WINDOW_MS = 60_000;

/** Arrivals of the last minute, never more than `most` of them. A clock put back or forward forgets the others. */
class Arrivals {
  private times: number[] = [];

  constructor(private readonly most: number) {}

  add(now: number): void {
    this.times.push(now);
    if (this.times.length > this.most) this.times.splice(0, this.times.length - this.most);
  }

  at(now: number): number {
    if (this.times.some((time) => Math.abs(now - time) >= WINDOW_MS))
      this.times = this.times.filter((time) => Math.abs(now - time) < WINDOW_MS);
    return this.times.length;
  }
}

/** A gate that knows nothing yet: after a restart everybody starts anew. */
export function createGate({ perThread, overall }: Limits): Gate {
  const everybody = new Arrivals(overall + 1);
  const threads = new Map<string, { readonly arrivals: Arrivals; held: boolean }>();
  return {
    perThread,
    arrives: (threadId, at) => {
      const now = Date.parse(at);
      const own = threads.get(threadId) ?? { arrivals: new Arrivals(perThread + 1), held: false };
      threads.set(threadId, own);
      own.arrivals.add(now);
      everybody.add(now);
      const flood = own.arrivals.at(now) > perThread || everybody.at(now) > overall;
      const before = own.held;
      own.held = flood;
      if (flood) return before ? "hold" : "first";
      return before ? "together" : "answer";
    },
    release: (at) => {
      const now = Date.parse(at);
      const free: string[] = [];
      const room = everybody.at(now) <= overall;
      for (const [threadId, own] of threads) {
        const count = own.arrivals.at(now);
        if (own.held && room && count <= perThread) {
          own.held = false;
          free.push(threadId);
        }
        if (count === 0 && !own.held) threads.delete(threadId);
      }
      return free;
    },
    holds: (threadId) => threads.get(threadId)?.held ?? false,
  };
}
