import type { Clock } from "../../../src/channels/telegram/clock.ts";

/** A clock that starts where the story does, runs as real time does, and can be moved on. */
export class TestClock implements Clock {
  private skippedMs: number;
  private readonly waiting = new Set<{ readonly dueMs: number; readonly fire: () => void }>();

  constructor(start: string) {
    this.skippedMs = Date.parse(start) - Date.now();
  }

  readonly now = (): string => new Date(Date.now() + this.skippedMs).toISOString();

  readonly after = (ms: number, run: () => void): (() => void) => {
    const entry = {
      dueMs: Date.parse(this.now()) + ms,
      fire: () => {
        takeBack();
        run();
      },
    };
    const timer = setTimeout(() => entry.fire(), ms);
    const takeBack = () => {
      clearTimeout(timer);
      this.waiting.delete(entry);
    };
    this.waiting.add(entry);
    return takeBack;
  };

  /** Moves on to an instant; whatever was due by then happens now. */
  skipTo(instant: string): void {
    const byMs = Date.parse(instant) - Date.parse(this.now());
    if (byMs < 0) throw new Error(`${instant} has passed.`);
    this.skippedMs += byMs;
    const nowMs = Date.parse(this.now());
    for (const entry of [...this.waiting]) if (entry.dueMs <= nowMs) entry.fire();
  }
}
