import type { Calls } from "./calls.ts";
import type { Webhook } from "./webhook.ts";
import type { World } from "./world.ts";

export interface Patience {
  /** Gives up after that long, with an error that says what was still going on. */
  readonly withinMs?: number;
}

export interface Quietness extends Patience {
  /** How long nothing may happen before it counts as quiet: covers work a bot does without calling anybody. */
  readonly stillForMs?: number;
}

/** Waits on what the bot does; nothing here sleeps for a fixed time. */
export class Waiting {
  constructor(
    private readonly world: World,
    private readonly calls: Calls,
    private readonly webhook: Webhook,
  ) {}

  /** Resolves as soon as `holds` is true; it is looked at again after every change. */
  until(holds: () => boolean, { withinMs = 10_000 }: Patience = {}): Promise<void> {
    return new Promise((resolve, reject) => {
      const check = (): void => {
        try {
          if (!holds()) return;
          end();
          resolve();
        } catch (error) {
          end();
          reject(error);
        }
      };
      const end = (): void => {
        clearTimeout(timer);
        stopListening();
      };
      const stopListening = this.world.changes.listen(check);
      const timer = setTimeout(() => {
        end();
        reject(new Error(`Waited ${withinMs} ms in vain; ${this.goingOn()}.`));
      }, withinMs);
      check();
    });
  }

  /**
   * Resolves when the bot has nothing left to do that can be seen from outside: every update confirmed, no call
   * under way but a long poll, and no new one for a moment. A bot that waits on a timer of its own before it calls
   * again looks quiet; use `until` for those.
   */
  async quiet({ withinMs = 10_000, stillForMs = 20 }: Quietness = {}): Promise<void> {
    const deadline = performance.now() + withinMs;
    for (;;) {
      await this.until(() => this.idle(), { withinMs: Math.max(deadline - performance.now(), 1) });
      const before = this.world.changes.total;
      await this.stillness(stillForMs);
      if (this.world.changes.total === before && this.idle()) return;
    }
  }

  /** Ends at the first change, or after `ms` without one. */
  private stillness(ms: number): Promise<void> {
    return new Promise((resolve) => {
      const end = (): void => {
        clearTimeout(timer);
        stopListening();
        resolve();
      };
      const stopListening = this.world.changes.listen(end);
      // The extra turn of the event loop lets news in that arrived while the bot kept the processor busy.
      const timer = setTimeout(() => setImmediate(end), ms);
    });
  }

  private idle(): boolean {
    return this.world.updates.pendingCount === 0 && this.busyCalls().length === 0 && this.webhook.busy === 0;
  }

  private busyCalls(): readonly string[] {
    return this.calls.underWay.flatMap(({ method }) => (method === "getUpdates" ? [] : [method]));
  }

  private goingOn(): string {
    const { pendingCount } = this.world.updates;
    const busy = this.busyCalls();
    return `updates not confirmed: ${pendingCount}, calls under way: ${busy.join(", ") || "none"}`;
  }
}
