import type { Update } from "grammy/types";
import type { Params } from "./protocol.ts";
import { conflict } from "./refusal.ts";
import type { World } from "./world.ts";

interface Parked {
  readonly end: (outcome: Update[] | Error) => void;
}

/**
 * Long polling. One request waits at a time: a newer one ends the older with 409, so that of two bots on one token
 * each learns of the other, as with Telegram.
 */
export class Polling {
  private parked: Parked | undefined;

  constructor(
    private readonly world: World,
    private readonly webhookIsSet: () => boolean,
  ) {}

  /** True while a request waits for news. */
  get waiting(): boolean {
    return this.parked !== undefined;
  }

  async poll(params: Params<"getUpdates">, gone: AbortSignal): Promise<Update[]> {
    const { offset = 0, limit = 100, timeout = 0, allowed_updates } = params;
    if (this.webhookIsSet())
      throw conflict(
        "can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
      );
    this.interrupt("terminated by other getUpdates request; make sure that only one bot instance is running");
    this.world.updates.subscribe(allowed_updates);
    const take = (): Update[] => this.world.updates.take(offset, Math.min(Math.max(limit, 1), 100));
    const ready = take();
    if (ready.length > 0 || timeout <= 0 || gone.aborted) return ready;
    return this.wait(take, timeout, gone);
  }

  /** Ends a waiting request with a 409. */
  interrupt(reason: string): void {
    this.parked?.end(conflict(reason));
  }

  /** Lets go of a waiting request, so that no timer outlives the server. */
  close(): void {
    this.parked?.end([]);
  }

  private wait(take: () => Update[], timeoutSeconds: number, gone: AbortSignal): Promise<Update[]> {
    return new Promise((resolve, reject) => {
      const end = (outcome: Update[] | Error): void => {
        clearTimeout(timer);
        stopListening();
        gone.removeEventListener("abort", hungUp);
        if (this.parked === parked) this.parked = undefined;
        if (outcome instanceof Error) reject(outcome);
        else resolve(outcome);
      };
      const hungUp = (): void => end([]);
      const parked: Parked = { end };
      const timer = setTimeout(() => end([]), timeoutSeconds * 1000);
      const stopListening = this.world.changes.listen(() => {
        if (this.world.updates.pendingCount === 0) return;
        const news = take();
        if (news.length > 0) end(news);
      });
      gone.addEventListener("abort", hungUp);
      this.parked = parked;
      this.world.changes.tell();
    });
  }
}
