import type { Server } from "node:http";
import { Api } from "grammy";
import type { Wording } from "../../conversation/wording.ts";
import type { Engine } from "../../engine/types.ts";
import type { Store } from "../../store/store.ts";
import { type Clock, later, pause, systemClock } from "./clock.ts";
import { customerCommands } from "./customer.ts";
import { dispatch } from "./dispatch.ts";
import { describe, failureOf, fatal } from "./failures.ts";
import { Inbox } from "./inbox.ts";
import { wantedUpdates } from "./intake.ts";
import { type Log, namesForLog } from "./log.ts";
import { backoff, type Pace, usualPace } from "./pace.ts";
import { poll } from "./poller.ts";
import { Sender } from "./sender.ts";
import { staffCommands } from "./staff.ts";
import { StaffGroup } from "./staff-group.ts";
import type { Station } from "./station.ts";
import { sweepErased } from "./sweep.ts";
import { TelegramError } from "./telegram-error.ts";
import { listenForUpdates, type WebhookSettings } from "./webhook.ts";

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

/** Telegram keeps updates for a day; their ids are remembered longer than that. */
const IDS_KEPT_MS = 3 * 24 * 3_600_000;

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
  const nameOf = namesForLog(token);
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
  const ticking = tick(station, onHandled, signal);

  await publishCommands(station);
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
    await receive(station, options, onKept, signal);
  } catch (error) {
    onFatal(error instanceof Error ? error : new Error(String(error)));
  }
  stopping.abort();
  await inTime(clock, pace.stopWithin, [inbox.stop(), sender.stop(), ticking], log);
  if (failed) throw failed;
}

/** Fetches or is sent updates until the signal comes. */
async function receive(
  station: Station,
  { webhook }: TelegramOptions,
  onKept: Parameters<typeof poll>[0]["onKept"],
  signal: AbortSignal,
): Promise<void> {
  const { api, store, clock, pace, log } = station;
  const persistent = { clock, pace, log, signal };
  if (webhook === null) {
    // The operator chose to fetch: a webhook left over from before would forbid it. What waits stays.
    await untilAnswered(() => api.deleteWebhook(), persistent);
    return poll({ api, store: store.telegram, clock, pace, log, onKept }, signal);
  }
  const server = await listenForUpdates({
    settings: webhook,
    store: store.telegram,
    clock,
    log,
    onKept,
  }).catch((error: unknown) => {
    const why = (error as NodeJS.ErrnoException).code ?? "unknown";
    throw new TelegramError(
      `Cannot listen on ${webhook.host}:${webhook.port} for Telegram (${why}). Choose another NAMEPLATE_TELEGRAM_WEBHOOK_PORT or end what uses it.`,
    );
  });
  try {
    await untilAnswered(
      () => api.setWebhook(webhook.url, { secret_token: webhook.secret, allowed_updates: wantedUpdates }),
      persistent,
    );
    await aborted(signal);
  } finally {
    await closed(server);
  }
}

/** Repeats a call the start depends on until Telegram answers; undefined when stopped before. */
async function untilAnswered<T>(
  call: () => Promise<T>,
  { clock, pace, log, signal }: Pick<Station, "clock" | "pace" | "log"> & { readonly signal: AbortSignal },
): Promise<T | undefined> {
  for (let failures = 0; !signal.aborted; failures += 1) {
    try {
      return await call();
    } catch (error) {
      const failure = failureOf(error);
      const end = fatal(failure);
      if (end) throw end;
      if (failure.kind === "refused")
        throw new TelegramError(
          `Telegram refuses this configuration (${failure.description}). Check the NAMEPLATE_TELEGRAM_ settings.`,
        );
      log.warn({ failure: describe(error) }, "Telegram does not answer; trying again");
      await pause(clock, failure.kind === "wait" ? failure.seconds * 1000 : backoff(pace, failures), signal);
    }
  }
  return undefined;
}

/** The commands people see when they type a slash: customers theirs, staff theirs. */
async function publishCommands({ api, staff, wording, log }: Station): Promise<void> {
  const listed = (names: readonly string[], key: string) =>
    names.map((command) => ({ command, description: wording.say("telegram", `${key}.${command}`) }));
  try {
    await api.setMyCommands(listed([...customerCommands, "help"], "command"), {
      scope: { type: "all_private_chats" },
    });
    if (staff === null) return;
    await api.setMyCommands(listed(staffCommands, "staffCommand"), {
      scope: { type: "chat", chat_id: staff.id },
    });
  } catch (error) {
    log.warn({ failure: describe(error) }, "the list of commands was not published");
  }
}

/** What time alone brings: digest, late words, second alerts; and clearing up. */
async function tick(station: Station, onDone: () => void, signal: AbortSignal): Promise<void> {
  const { engine, store, clock, pace, log } = station;
  while (!signal.aborted) {
    await pause(clock, pace.tickEvery, signal);
    if (signal.aborted) return;
    try {
      const now = clock.now();
      // What was left over when the store failed; usually nothing.
      if ((await store.unhandled()).length > 0) await engine.catchUp();
      await engine.tick(now);
      // Other programs on the same store, as the command line, leave messages for Telegram too.
      onDone();
      await sweepErased(station);
      await store.telegram.forgetUpdates(later(now, -IDS_KEPT_MS));
    } catch (error) {
      log.error({ failure: describe(error) }, "the clock's work failed; it is tried again");
    }
  }
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

function aborted(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener("abort", () => resolve(), { once: true }));
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
  });
}
