import { type Lane, laneKey, laneOfKey } from "../../outgoing.ts";
import type { OutboxItem } from "../../store/store.ts";
import { later } from "./clock.ts";
import { deliver, NoAddress, type Progress } from "./deliver.ts";
import { describe, type Failure, failureOf, fatal } from "./failures.ts";
import { wordAbout } from "./given-up.ts";
import { backoff } from "./pace.ts";
import { chatIdOf } from "./refs.ts";
import { SideBySide } from "./side-by-side.ts";
import type { Station } from "./station.ts";

/** A mistake of ours may be gone after a restart, but not after this many attempts. */
const OWN_MISTAKES = 8;
const STAFF = "staff";
const LONGEST_WAIT_MS = 6 * 3_600_000;

/**
 * Drains the outbox: in order within a lane, lanes side by side. A message is sent at least once: when the line breaks
 * between Telegram's taking it and our learning of that, it is sent again. That repeat is all that can go wrong.
 */
export class Sender {
  private readonly lanes: Readonly<Record<Crowd, SideBySide>>;
  private readonly progress = new Map<number, Progress>();
  /** Chats that are to be left alone until an instant. */
  private readonly pauses = new Map<string, string>();
  /** Lanes that wait for their next try; until then there is no use in looking at them. */
  private readonly resting = new Set<string>();
  private readonly timers = new Set<() => void>();
  private scanning = false;
  private stopped = false;

  constructor(
    private readonly station: Station,
    private readonly onFatal: (error: Error) => void,
  ) {
    const lanes = (atOnce: number) => new SideBySide(atOnce, (key) => this.drain(key));
    const { lanesAtOnce, casesAtOnce } = station.pace;
    this.lanes = { alerts: lanes(2), customers: lanes(lanesAtOnce), cases: lanes(casesAtOnce) };
  }

  /** There may be something to deliver. Many calls at once cost one look. */
  wake(): void {
    if (this.scanning || this.stopped) return;
    this.scanning = true;
    setImmediate(() => {
      this.scanning = false;
      this.scan().catch((error: unknown) => this.trouble(error, () => this.wake()));
    });
  }

  /** Begins nothing new; resolves when the calls under way have ended. */
  async stop(): Promise<void> {
    this.stopped = true;
    for (const takeBack of this.timers) takeBack();
    await Promise.all(Object.values(this.lanes).map((lanes) => lanes.stop()));
  }

  private async scan(): Promise<void> {
    if (this.stopped) return;
    for (const key of await this.station.store.telegram.waitingLanes())
      if (!this.resting.has(key) && this.isOurs(laneOfKey(key))) this.wakeLane(key);
  }

  private wakeLane(key: string): void {
    this.lanes[crowdOf(laneOfKey(key))].wake(key);
  }

  private isOurs(lane: Lane): boolean {
    if (lane.kind === "customer") return chatIdOf(lane.threadId) !== undefined;
    return this.station.staff !== null || (lane.kind === "on-call" && this.station.onCall !== null);
  }

  private async drain(key: string): Promise<void> {
    try {
      for (;;) {
        const items = await this.station.store.undelivered(laneOfKey(key));
        const [first] = items;
        if (first === undefined || this.stopped) return;
        const wait = this.waitFor(first);
        if (wait > 0) return this.rest(key, wait);
        if (!(await this.send(first, items))) return;
      }
    } catch (error) {
      this.trouble(error, () => this.wakeLane(key));
    }
  }

  /** True when the lane may go on. */
  private async send(first: OutboxItem, items: readonly OutboxItem[]): Promise<boolean> {
    const { store } = this.station;
    // Of several briefs that wait, only the latest is worth showing; it stands where the first would.
    const sameSlot = first.slot === undefined ? [first] : items.filter(({ slot }) => slot === first.slot);
    const progress = this.progress.get(first.id) ?? { parts: 0 };
    this.progress.set(first.id, progress);
    try {
      await deliver(this.station, sameSlot.at(-1) ?? first, progress);
    } catch (error) {
      return this.failed(first, items, error);
    }
    this.progress.delete(first.id);
    for (const { id } of sameSlot) await store.delivered(id);
    return true;
  }

  private async failed(item: OutboxItem, items: readonly OutboxItem[], error: unknown): Promise<boolean> {
    const { store, staff, log, clock, nameOf } = this.station;
    const failure =
      error instanceof NoAddress
        ? ({ kind: "refused", description: "no address" } as const)
        : failureOf(error);
    const to =
      item.lane.kind === "customer" ? { thread: nameOf(item.lane.threadId) } : { lane: laneKey(item.lane) };
    const about = { ...to, message: item.id, failure: describe(error) };
    const end = failure.kind === "token" ? fatal(failure) : undefined;
    if (end) {
      this.onFatal(end);
      this.stopped = true;
      return false;
    }
    if (failure.kind === "moved" && item.lane.kind !== "customer" && staff !== null) {
      await staff.moveTo(failure.to);
      return true;
    }
    const wait = this.retryAfter(item, failure);
    if (wait !== undefined) {
      log.warn({ ...about, waitMs: wait }, "a message could not be delivered and is tried again");
      const until = later(clock.now(), wait);
      if (failure.kind === "wait") this.pauses.set(pauseKey(item.lane), until);
      await store.postponed(item.id, until);
      return true;
    }
    log.error(about, "a message can never be delivered and was parked");
    await this.park(item, items, failure, describe(error));
    return true;
  }

  /** Milliseconds until the next attempt; undefined when there is no use in one. */
  private retryAfter(item: OutboxItem, failure: Failure): number | undefined {
    const { pace } = this.station;
    const usual = backoff(pace, item.attempts);
    switch (failure.kind) {
      case "wait":
        return failure.seconds * 1000;
      case "line":
      case "conflict":
        return usual;
      case "ours":
        return item.attempts < OWN_MISTAKES ? usual : undefined;
      case "shut-out":
        // Staff can let the bot in again; a customer who shut it out does not expect anything.
        return item.lane.kind === "customer" ? undefined : usual;
      case "refused": {
        const fixable =
          item.lane.kind !== "customer" &&
          /chat not found|thread not found|TOPIC_/i.test(failure.description);
        return fixable ? usual : undefined;
      }
      default:
        return undefined;
    }
  }

  /** Out of the way, and staff are told. Whoever shut the bot out gets nothing else that waits either. */
  private async park(
    item: OutboxItem,
    items: readonly OutboxItem[],
    failure: Failure,
    error: string,
  ): Promise<void> {
    const { store, clock } = this.station;
    const together = failure.kind === "shut-out" ? items : [item];
    const told = await wordAbout(this.station, item, together.length, failure);
    await store.telegram.parkAndTell(
      together.map(({ id }) => id),
      error,
      clock.now(),
      told,
    );
    for (const { id } of together) this.progress.delete(id);
    this.wake();
  }

  private waitFor({ lane, retryAt }: OutboxItem): number {
    const nowMs = Date.parse(this.station.clock.now());
    const waits = [retryAt, this.pauses.get(pauseKey(lane))].flatMap((at) =>
      at === null || at === undefined ? [] : [Date.parse(at) - nowMs],
    );
    // Nobody is told to wait that long: the clock was set back meanwhile.
    return Math.max(0, ...waits.filter((ms) => ms < LONGEST_WAIT_MS));
  }

  private rest(key: string, ms: number): void {
    this.resting.add(key);
    this.after(ms, () => {
      this.resting.delete(key);
      this.wakeLane(key);
    });
  }

  private after(ms: number, run: () => void): void {
    if (this.stopped) return;
    const takeBack = this.station.clock.after(ms, () => {
      this.timers.delete(takeBack);
      run();
    });
    this.timers.add(takeBack);
  }

  /** The store failed: nothing is lost, it is tried again. */
  private trouble(error: unknown, again: () => void): void {
    const { log, pace } = this.station;
    log.error({ failure: describe(error) }, "the store failed the sender; trying again");
    this.after(pace.firstRetry * 2, again);
  }
}

/** Cases and desk are one chat to Telegram, so they wait together. */
const pauseKey = (lane: Lane): string =>
  lane.kind === "case" || lane.kind === "desk" ? STAFF : laneKey(lane);

/** Those who wait for each other when many messages go out: an alert for nobody, a customer not for staff's briefs. */
type Crowd = "alerts" | "customers" | "cases";

function crowdOf({ kind }: Lane): Crowd {
  switch (kind) {
    case "customer":
      return "customers";
    case "case":
      return "cases";
    case "desk":
    case "on-call":
      return "alerts";
  }
}
