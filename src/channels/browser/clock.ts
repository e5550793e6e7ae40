import type { Clock } from "../telegram/clock.ts";

/** A clock that runs as real time does and can be moved on; it never goes back, as no clock in a shop does. */
export class MovableClock implements Clock {
  private aheadMs: number;
  private readonly waiting = new Set<{ readonly dueMs: number; readonly fire: () => void }>();

  constructor(start: string) {
    this.aheadMs = Date.parse(start) - Date.now();
  }

  readonly now = (): string => new Date(Date.now() + this.aheadMs).toISOString();

  readonly after = (ms: number, run: () => void): (() => void) => {
    const fire = () => {
      takeBack();
      run();
    };
    const entry = { dueMs: Date.parse(this.now()) + ms, fire };
    const timer = setTimeout(fire, ms);
    const takeBack = () => {
      clearTimeout(timer);
      this.waiting.delete(entry);
    };
    this.waiting.add(entry);
    return takeBack;
  };

  /** Moves on to a later instant (ISO 8601); whatever was due by then happens now. */
  moveTo(instant: string): void {
    this.aheadMs += Math.max(0, Date.parse(instant) - Date.parse(this.now()));
    const nowMs = Date.parse(this.now());
    for (const { dueMs, fire } of [...this.waiting]) if (dueMs <= nowMs) fire();
  }
}
