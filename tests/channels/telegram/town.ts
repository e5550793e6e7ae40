import { afterEach } from "vitest";
import {
  type RunningTelegram,
  startTelegram,
  type TelegramOptions,
} from "../../../src/channels/telegram/adapter.ts";
import type { Log } from "../../../src/channels/telegram/log.ts";
import type { Pace } from "../../../src/channels/telegram/pace.ts";
import type { Group } from "../../../src/channels/telegram/stand-in/people/group.ts";
import type { Speaker } from "../../../src/channels/telegram/stand-in/people/speaker.ts";
import {
  openStandIn,
  type StandIn,
  type StandInOptions,
} from "../../../src/channels/telegram/stand-in/stand-in.ts";
import type { Quietness } from "../../../src/channels/telegram/stand-in/waiting.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import type { Store } from "../../../src/store/store.ts";
import { knowledge } from "../../conversation/knowledge.ts";
import { type Evening, evening } from "../../desk/evening.ts";
import { TestClock } from "./test-clock.ts";

export const token = "424242:invented-token-of-nobody";
/** A Tuesday, 10:00 in the morning at the shop. */
export const MORNING = "2026-11-24T16:00:00.000Z";
/** The same day, 22:00 at the shop. */
export const NIGHT = "2026-11-25T04:00:00.000Z";

/** Quick enough for tests; retries stay apart enough to be told from each other. */
export const quickPace: Partial<Pace> = {
  pollSeconds: 5,
  callTimeoutSeconds: 20,
  albumGap: 60,
  tickEvery: 25,
  firstRetry: 20,
  longestRetry: 100,
  stopWithin: 2000,
};

/** A shop on Telegram: the real channel against the stand-in. */
export interface Town {
  readonly world: StandIn;
  readonly group: Group;
  readonly kim: Speaker;
  readonly lee: Speaker;
  readonly clock: TestClock;
  readonly store: Store;
  readonly engine: Evening["engine"];
  readonly running: RunningTelegram;
  readonly log: readonly { readonly level: string; readonly about: object; readonly text: string }[];
  readonly stop: () => Promise<void>;
}

export interface TownOptions {
  readonly start?: string;
  readonly topics?: boolean;
  readonly store?: Store;
  readonly world?: StandIn;
  readonly standIn?: Partial<StandInOptions>;
  /** A basic group with the bot as a plain member instead of a supergroup with the bot as administrator. */
  readonly basicGroup?: boolean;
  readonly over?: Partial<TelegramOptions>;
  readonly pace?: Partial<Pace>;
}

const bareWorlds = new WeakMap<StandIn, StandIn>();
const cleanUp: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of cleanUp.splice(0).reverse()) await close();
});

export async function openTown(options: TownOptions = {}): Promise<Town> {
  const clock = new TestClock(options.start ?? MORNING);
  const opened = options.world ?? (await openStandIn({ token, now: clock.now, ...options.standIn }));
  const group =
    options.basicGroup === true
      ? opened.addGroup({ title: "Desk", type: "group", bot: { administrator: {} } })
      : opened.addStaffGroup({ topics: options.topics ?? true });
  const kim = group.has(opened.addUser({ first_name: "Kim" }), "creator");
  const lee = group.has(opened.addUser({ first_name: "Lee" }));
  const store = options.store ?? openSqliteStore(":memory:");
  // A second desk on the same world waits for its own store.
  const bare = bareWorlds.get(opened) ?? opened;
  const world: StandIn = {
    ...bare,
    quiet: (quietness) => settled(bare, store, options.over?.staffGroup !== null, quietness),
  };
  bareWorlds.set(world, bare);
  const { engine } = evening({ store });
  const log: { level: string; about: object; text: string }[] = [];
  const keep = (level: string) => (about: object, text: string) => void log.push({ level, about, text });
  const keeping: Log = { info: keep("info"), warn: keep("warn"), error: keep("error") };
  const running = startTelegram({
    token,
    staffGroup: group.id,
    onCall: null,
    webhook: null,
    engine,
    store,
    wording: knowledge.wording,
    shopName: "The Soggy Towel",
    log: keeping,
    apiRoot: world.apiRoot,
    clock,
    pace: { ...quickPace, ...options.pace },
    ...options.over,
  });
  // A channel that ends with an error is what some tests look for; it must not end the run of all.
  running.ended.catch(() => {});
  let stopped = false;
  const stop = async () => {
    if (stopped) return;
    stopped = true;
    running.stop();
    await running.ended.catch(() => {});
  };
  cleanUp.push(
    () => store.close(),
    () => world.close(),
    stop,
  );
  return { world, group, kim, lee, clock, store, engine, running, log, stop };
}

/** Quiet as seen from outside, and nothing left in the store that a busy machine has not got to yet. */
async function settled(
  world: StandIn,
  store: Store,
  withStaff: boolean,
  quietness?: Quietness,
): Promise<void> {
  const deadline = performance.now() + (quietness?.withinMs ?? 10_000);
  do {
    await world.quiet(quietness);
    const lanes = await store.telegram.waitingLanes();
    const updates = await store.telegram.waitingUpdates();
    const deliverable = lanes.filter((lane) => lane.startsWith("customer:") || withStaff);
    if (updates.length === 0 && deliverable.length === 0) return;
    await new Promise((resolve) => setTimeout(resolve, 10));
  } while (performance.now() < deadline);
}

/** The latest message of somebody with these words in it. Throws when there is none. */
export function saying(speaker: Pick<Speaker, "sees">, words: string, topic?: number | "general") {
  const found = speaker.sees(topic).findLast(({ text }) => text.includes(words));
  if (found === undefined) throw new Error(`Nobody said “${words}”.`);
  return found;
}

/** The topic of the case, by the number its name starts with. */
export function topicOf({ group }: Pick<Town, "group">, caseId: number): number {
  const topic = group.topics().find(({ name }) => name.startsWith(`${caseId} `));
  if (topic === undefined)
    throw new Error(`No topic for case ${caseId} among ${group.topics().map(({ name }) => name)}`);
  return topic.threadId;
}
