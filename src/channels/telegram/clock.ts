/** Time as the channel sees it; tests put their own in. */
export interface Clock {
  /** ISO instant. */
  readonly now: () => string;
  /** Runs something later; the function given back takes that back. */
  readonly after: (ms: number, run: () => void) => () => void;
}

export const systemClock: Clock = {
  now: () => new Date().toISOString(),
  after: (ms, run) => {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

/** Resolves after `ms`, or at once when `signal` is aborted. */
export function pause(clock: Clock, ms: number, signal?: AbortSignal): Promise<void> {
  if (signal?.aborted) return Promise.resolve();
  return new Promise((resolve) => {
    const end = () => {
      takeBack();
      signal?.removeEventListener("abort", end);
      resolve();
    };
    const takeBack = clock.after(ms, end);
    signal?.addEventListener("abort", end);
  });
}

/** The instant `ms` after another, ISO 8601. */
export function later(at: string, ms: number): string {
  return new Date(Date.parse(at) + ms).toISOString();
}

/** Resolves once the signal is aborted. */
export function aborted(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener("abort", () => resolve(), { once: true }));
}
