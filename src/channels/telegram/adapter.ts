import { Api } from "grammy";
import type { Wording } from "../../conversation/wording.ts";
import type { Engine } from "../../engine/types.ts";
import { namesWith } from "../../ops/log.ts";
import type { Store } from "../../store/store.ts";
import { type Clock, systemClock } from "./clock.ts";
import { keepTime } from "./clockwork.ts";
import { publishCommands } from "./commands.ts";
import { dispatch } from "./dispatch.ts";
import { Inbox } from "./inbox.ts";
import type { Log } from "./log.ts";
import { type Pace, usualPace } from "./pace.ts";
import { receive, untilAnswered } from "./receive.ts";
import { Sender } from "./sender.ts";
import { StaffGroup } from "./staff-group.ts";
import type { Station } from "./station.ts";
import type { WebhookSettings } from "./webhook.ts";

export interface TelegramOptions {
  readonly token: string;
  /** The staff's group; null while there is none: customers are served, cases wait. */
  readonly staffGroup: number | null;
  /** The private chat of the person on call; null sends alerts to the staff group. */
  readonly onCall: number | null;
  /** Null: long polling. */
  readonly webhook: WebhookSettings | null;
  readonly engine: Engine;
  readonly store: Store;
  readonly wording: Wording;
  readonly shopName: string;
  readonly log: Log;
  /** Where the Bot API is; Telegram's own unless stated. */
  readonly apiRoot?: string | undefined;
  readonly clock?: Clock;
  readonly pace?: Partial<Pace>;
}

export interface RunningTelegram {
  /** Resolves after {@link stop}; rejects with `TelegramError` when the channel cannot go on. */
  readonly ended: Promise<void>;
  /** Finishes what is under way, confirms nothing that is not stored, and ends in time. */
  readonly stop: () => void;
}

/** Starts the channel. */
export function startTelegram(options: TelegramOptions): RunningTelegram {
  const stopping = new AbortController();
  return { ended: run(options, stopping), stop: () => stopping.abort() };
}

async function run(options: TelegramOptions, stopping: AbortController): Promise<void> {
  const { token, engine, store, log, clock = systemClock } = options;
  const pace: Pace = { ...usualPace, ...options.pace };
  const { signal } = stopping;
  const api = new Api(token, {
    timeoutSeconds: pace.callTimeoutSeconds,
    ...(options.apiRoot === undefined ? {} : { apiRoot: options.apiRoot }),
  });
  const me = await untilAnswered(() => api.getMe(), { clock, pace, log, signal });
  if (me === undefined) return;
  const staff =
    options.staffGroup === null
      ? null
      : await StaffGroup.find({ api, store, clock, pace, log }, options.staffGroup);
  const { wording, shopName, onCall } = options;
  const nameOf = namesWith(await store.upkeep.installationKey());
  const station: Station = {
    api,
    me,
    engine,
    store,
    wording,
    shopName,
    staff,
    onCall,
    clock,
    pace,
    log,
    titles: new Map(),
    nameOf,
  };

  let failed: Error | undefined;
  const onFatal = (error: Error) => {
    failed ??= error;
    stopping.abort();
  };
  const sender = new Sender(station, onFatal);
  const onHandled = () => sender.wake();
  const inbox = new Inbox({ station, handle: (updates) => dispatch(station, updates), onHandled, onFatal });
  const ticking = keepTime(station, onHandled, signal);
  const publishing = publishCommands(station);

  await engine.catchUp();
  await inbox.start();
  sender.wake();
  log.info(
    { bot: me.username, webhook: options.webhook !== null, staffGroup: staff !== null },
    "the desk is on Telegram",
  );
  if (staff === null)
    log.warn({}, "no staff group is set: nobody sees the cases; set NAMEPLATE_TELEGRAM_STAFF_GROUP");

  const onKept = (updates: Parameters<Inbox["add"]>[0]) => inbox.add(updates);
  try {
    await receive(station, options.webhook, onKept, signal);
  } catch (error) {
    onFatal(error instanceof Error ? error : new Error(String(error)));
  }
  stopping.abort();
  await inTime(clock, pace.stopWithin, [inbox.stop(), sender.stop(), ticking, publishing], log);
  if (failed) throw failed;
}

/** Waits for what is under way, but not for ever: what is left is stored and goes on at the next start. */
async function inTime(clock: Clock, ms: number, work: readonly Promise<unknown>[], log: Log): Promise<void> {
  let takeBack = () => {};
  const late = new Promise<"late">((resolve) => {
    takeBack = clock.after(ms, () => resolve("late"));
  });
  const outcome = await Promise.race([Promise.allSettled(work), late]);
  takeBack();
  if (outcome === "late")
    log.warn({}, "stopped with calls under way; what they were for is stored and repeated");
}
