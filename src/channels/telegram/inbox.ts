import type { Update } from "grammy/types";
import type { Outgoing } from "../../outgoing.ts";
import { StoreError } from "../../store/store.ts";
import type { KeptUpdate } from "../../store/telegram.ts";
import { describe, failureOf, fatal } from "./failures.ts";
import { itemIdOf, messageOf, updateOf } from "./intake.ts";
import { loopTurns } from "./loop-turns.ts";
import { backoff } from "./pace.ts";
import { SideBySide } from "./side-by-side.ts";
import type { Station } from "./station.ts";
import { showTyping } from "./typing.ts";

export interface InboxParts {
  readonly station: Station;
  readonly handle: (updates: readonly [Update, ...Update[]]) => Promise<readonly Outgoing[]>;
  /** Told after something was handled: there may be messages to deliver. */
  readonly onHandled: () => void;
  readonly onFatal: (error: Error) => void;
}

type Kept = KeptUpdate & { readonly update: Update };

/** Handles stored updates: those of one chat in order, chats side by side. */
export class Inbox {
  private readonly queues = new Map<string, Kept[]>();
  private readonly failures = new Map<string, number>();
  private readonly chats: SideBySide;
  private readonly timers = new Set<() => void>();
  private readonly turn = loopTurns();
  private stopped = false;

  constructor(private readonly parts: InboxParts) {
    this.chats = new SideBySide(parts.station.pace.chatsAtOnce, (queue) => this.workOff(queue));
  }

  /** Takes up what an earlier run left over. */
  async start(): Promise<void> {
    this.add(await this.parts.station.store.telegram.waitingUpdates());
  }

  /** Stored updates to be handled. */
  add(updates: readonly KeptUpdate[]): void {
    for (const kept of updates) {
      const queue = this.queues.get(kept.queue) ?? [];
      this.queues.set(kept.queue, queue);
      queue.push({ ...kept, update: updateOf(kept) });
    }
    for (const name of new Set(updates.map(({ queue }) => queue))) this.chats.wake(name);
  }

  /** Finishes the messages under way; the others stay stored for the next start. */
  async stop(): Promise<void> {
    this.stopped = true;
    for (const takeBack of this.timers) takeBack();
    await this.chats.stop();
  }

  private async workOff(name: string): Promise<void> {
    const queue = this.queues.get(name) ?? [];
    const notTyping = showTyping(this.parts.station, name);
    try {
      await this.workThrough(name, queue);
    } catch (error) {
      // The store itself failed; the updates are in it or with Telegram, and are taken up again.
      this.later(name, error);
    } finally {
      notTyping();
    }
  }

  private async workThrough(name: string, queue: Kept[]): Promise<void> {
    for (let [first] = queue; first !== undefined; [first] = queue) {
      await this.turn();
      if (this.stopped) return;
      const together = await this.albumOf(first, queue);
      if (together === undefined || !(await this.handled(name, together))) return;
      const done = new Set(together.map(({ id }) => id));
      queue.splice(0, queue.length, ...queue.filter(({ id }) => !done.has(id)));
      this.parts.onHandled();
    }
    if (queue.length === 0) this.queues.delete(name);
  }

  /**
   * The update, or all of its album that have come; undefined when the rest may still be on its way. What was counted
   * together once stays together, so that a crash does not lose a late picture.
   */
  private async albumOf(
    first: Kept,
    queue: readonly Kept[],
  ): Promise<readonly [Kept, ...Kept[]] | undefined> {
    const { clock, pace, store } = this.parts.station;
    const rest = (same: (kept: Kept) => boolean) => queue.filter((kept) => kept !== first && same(kept));
    if (first.album !== null) return [first, ...rest(({ album }) => album === first.album)];
    const group = first.update.message?.media_group_id;
    if (group === undefined) return [first];
    const ofGroup = () =>
      rest(({ album, update }) => album === null && update.message?.media_group_id === group);
    let seen: number;
    do {
      seen = ofGroup().length;
      const cameBefore = await this.wait(clock, pace.albumGap);
      if (!cameBefore) return undefined;
    } while (ofGroup().length > seen);
    const together: readonly [Kept, ...Kept[]] = [first, ...ofGroup()];
    if (together.length > 1)
      await store.telegram.joinAlbum(
        together.map(({ id }) => id),
        first.id,
      );
    return together;
  }

  /** False when the desk was stopped meanwhile. */
  private wait(clock: Station["clock"], ms: number): Promise<boolean> {
    return new Promise((resolve) => {
      const end = () => {
        this.timers.delete(stop);
        resolve(!this.stopped);
      };
      const takeBack = clock.after(ms, end);
      const stop = () => {
        takeBack();
        end();
      };
      this.timers.add(stop);
    });
  }

  /** True when the queue may go on: the updates are handled, or set aside because they cannot be. */
  private async handled(name: string, kept: readonly [Kept, ...Kept[]]): Promise<boolean> {
    const { station, handle, onFatal } = this.parts;
    const { store, staff, clock, log, nameOf } = station;
    const ids = kept.map(({ id }) => id);
    try {
      if (this.failures.has(name)) await this.catchUp(kept);
      const [first, ...more] = kept.map(({ update }) => update);
      if (first === undefined) return true;
      const outgoing = await handle([first, ...more]);
      await store.telegram.finishUpdates(ids, clock.now(), outgoing);
      this.failures.delete(name);
      return true;
    } catch (error) {
      const failure = failureOf(error);
      const end = failure.kind === "token" ? fatal(failure) : undefined;
      if (end) {
        onFatal(end);
        return false;
      }
      if (failure.kind === "moved") await staff?.moveTo(failure.to);
      const hopeless = failure.kind === "refused" || (failure.kind === "ours" && !isStoreTrouble(error));
      if (!hopeless) {
        this.later(name, error);
        return false;
      }
      const about = { thread: nameOf(name), update: ids[0], failure: describe(error) };
      log.error(about, "an update cannot be handled and was set aside");
      return this.setAside(name, kept, describe(error));
    }
  }

  /** After a failure the engine may have stored what it could not finish: it counts as seen, and is not done. */
  private async catchUp(kept: readonly Kept[]): Promise<void> {
    const { engine, store } = this.parts.station;
    await engine.catchUp();
    const left = new Set((await store.unhandled()).map(({ id }) => id));
    if (kept.some(({ update }) => left.has(itemIdOf(update))))
      throw new StoreError("a message is stored and cannot be finished yet");
  }

  /** The queue waits a while and is taken up again where it was. */
  private later(name: string, error: unknown): void {
    const { clock, pace, log, nameOf } = this.parts.station;
    const failure = failureOf(error);
    const failed = this.failures.get(name) ?? 0;
    this.failures.set(name, failed + 1);
    const wait = failure.kind === "wait" ? failure.seconds * 1000 : backoff(pace, failed);
    log.warn({ thread: nameOf(name), failure: describe(error), waitMs: wait }, "an update is tried again");
    if (this.stopped) return;
    const takeBack = clock.after(wait, () => {
      this.timers.delete(takeBack);
      this.chats.wake(name);
    });
    this.timers.add(takeBack);
  }

  /** A mistake of ours: the customer gets a kind line, staff are told, the next message is handled. */
  private async setAside(name: string, kept: readonly Kept[], error: string): Promise<boolean> {
    const { store, clock, wording, staff } = this.parts.station;
    for (const { id, update } of kept) {
      const fromPerson = messageOf(update)?.chat.type === "private";
      const told: readonly Outgoing[] = [
        ...(fromPerson
          ? [
              {
                lane: { kind: "customer", threadId: name } as const,
                content: { text: wording.say("telegram", "mistake.customer") },
              },
            ]
          : []),
        ...(staff === null
          ? []
          : [
              {
                lane: { kind: "desk" } as const,
                content: { text: wording.say("telegram", "mistake.staff", { id }) },
              },
            ]),
      ];
      await store.telegram.parkUpdate(id, error, clock.now(), told);
    }
    this.failures.delete(name);
    return true;
  }
}

/** The disk or the database failed: what was to be handled can be, later. */
function isStoreTrouble(error: unknown): boolean {
  return error instanceof StoreError || (error instanceof Error && error.name === "SqliteError");
}
