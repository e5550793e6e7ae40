import type { Update } from "grammy/types";
import nock from "nock";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type RunningTelegram, startTelegram } from "../../../src/channels/telegram/adapter.ts";
import type { Pace } from "../../../src/channels/telegram/pace.ts";
import { namesWith } from "../../../src/ops/log.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import type { Store } from "../../../src/store/store.ts";
import { knowledge } from "../../conversation/knowledge.ts";
import { evening } from "../../desk/evening.ts";
import { TestClock } from "./test-clock.ts";
import { MORNING, quickPace, token } from "./town.ts";

// Raw HTTP answers as api.telegram.org gives them (Bot API, "Making requests", ResponseParameters; bodies of proxies
// from memory). Every answer states its length: the client waits for ever for one that does not.

const api = () => nock("https://api.telegram.org");
const path = (method: string) => `/bot${token}/${method}`;
const json = (body: unknown) => {
  const text = JSON.stringify(body);
  return [
    text,
    { "content-type": "application/json", "content-length": String(Buffer.byteLength(text)) },
  ] as const;
};
const ok = (result: unknown) => json({ ok: true, result });
const refusal = (error_code: number, description: string, parameters?: object) =>
  json({ ok: false, error_code, description, ...(parameters === undefined ? {} : { parameters }) });
const page = (text: string) =>
  [text, { "content-type": "text/html", "content-length": String(text.length) }] as const;

const ada = { id: 7, type: "private" as const, first_name: "Ada" };
const wrote = (update_id: number, text: string): Update =>
  ({
    update_id,
    message: { message_id: update_id, date: 1_790_000_000, chat: ada, from: { ...ada, is_bot: false }, text },
  }) as Update;

interface Scene {
  readonly running: RunningTelegram;
  readonly store: Store;
  readonly log: readonly string[];
  /** What the customer was sent, in order, with the instant. */
  readonly sent: { readonly text: string; readonly atMs: number }[];
}

const opened: { readonly running: RunningTelegram; readonly store: Store }[] = [];

beforeEach(() => {
  nock.disableNetConnect();
  api()
    .persist()
    .post(path("getMe"))
    .reply(200, ...ok({ id: 424242, is_bot: true, first_name: "Desk", username: "desk_bot" }));
  api()
    .persist()
    .post(path("setMyCommands"))
    .reply(200, ...ok(true));
  api()
    .persist()
    .post(path("deleteWebhook"))
    .reply(200, ...ok(true));
});
afterEach(async () => {
  for (const { running, store } of opened.splice(0)) {
    running.stop();
    await running.ended.catch(() => {});
    await store.close();
  }
  nock.cleanAll();
  nock.enableNetConnect();
});

/** Starts the channel; customers only. */
function start(pace: Partial<Pace> = {}): Scene {
  const store = openSqliteStore(":memory:");
  const log: string[] = [];
  const keep = (about: object, text: string) => void log.push(`${text} ${JSON.stringify(about)}`);
  const running = startTelegram({
    token,
    staffGroup: null,
    onCall: null,
    webhook: null,
    engine: evening({ store }).engine,
    store,
    wording: knowledge.wording,
    shopName: "The Soggy Towel",
    log: { info: keep, warn: keep, error: keep },
    clock: new TestClock(MORNING),
    pace: { ...quickPace, ...pace },
  });
  running.ended.catch(() => {});
  opened.push({ running, store });
  return { running, store, log, sent };
}

let sent: { text: string; atMs: number }[] = [];
beforeEach(() => {
  sent = [];
});

/** Telegram takes what is sent from now on. */
const takesMessages = () =>
  api()
    .persist()
    .post(path("sendMessage"))
    .reply((_, body) => {
      const { text } = body as { text: string };
      sent.push({ text, atMs: performance.now() });
      return [200, ...ok({ message_id: sent.length, date: 1, chat: ada, text })];
    });

/** One batch of updates, then none; gives the offsets that were asked for. */
function givesUpdates(...updates: readonly Update[]): number[] {
  const offsets: number[] = [];
  api()
    .persist()
    .post(path("getUpdates"))
    .delay(5)
    .reply((_, body) => {
      const { offset } = body as { offset: number };
      offsets.push(offset);
      return [200, ...ok(updates.filter(({ update_id }) => update_id >= offset))];
    });
  return offsets;
}

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 400 && !holds(); tries += 1)
    await new Promise((resolve) => setTimeout(resolve, 10));
  expect(holds()).toBe(true);
}

describe("sending", () => {
  test("429 is obeyed: not before retry_after, and then in order", async () => {
    givesUpdates(wrote(1, "/help"), wrote(2, "hello"));
    let refusedAtMs = 0;
    api()
      .post(path("sendMessage"))
      .reply(() => {
        refusedAtMs = performance.now();
        return [429, ...refusal(429, "Too Many Requests: retry after 1", { retry_after: 1 })];
      });
    takesMessages();
    start();
    await until(() => sent.length === 2);
    expect(sent[0]!.atMs - refusedAtMs).toBeGreaterThan(950);
    expect(sent[0]!.text).toContain("/erase");
    expect(sent[1]!.text).toContain("Tell me what the old motor");
  });

  test.each([
    [
      "502 with a web page",
      () =>
        api()
          .post(path("sendMessage"))
          .times(2)
          .reply(502, ...page("<html>Bad Gateway</html>")),
    ],
    [
      "500",
      () =>
        api()
          .post(path("sendMessage"))
          .times(2)
          .reply(500, ...refusal(500, "Internal Server Error")),
    ],
    [
      "a body that is no JSON",
      () =>
        api()
          .post(path("sendMessage"))
          .times(2)
          .reply(200, ...page('{"ok":tr')),
    ],
    [
      "an empty body",
      () =>
        api()
          .post(path("sendMessage"))
          .times(2)
          .reply(200, ...page("")),
    ],
    [
      "a body that is JSON and no answer",
      () =>
        api()
          .post(path("sendMessage"))
          .times(2)
          .reply(200, ...json(null)),
    ],
    ["a reset connection", () => api().post(path("sendMessage")).times(2).replyWithError("ECONNRESET")],
    [
      "silence",
      () =>
        api()
          .post(path("sendMessage"))
          .delay(3000)
          .reply(200, ...ok(true)),
    ],
  ])("after %s the message is sent again, once", async (_, fails) => {
    givesUpdates(wrote(1, "/help"));
    fails();
    takesMessages();
    const { store } = start({ pollSeconds: 0, callTimeoutSeconds: 0.2 });
    await until(() => sent.length > 0);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(sent).toHaveLength(1);
    expect(await store.undelivered()).toEqual([]);
    expect(await store.parked()).toEqual([]);
  });

  test("403 sets the message aside with the reason, and does not hold up anybody else", async () => {
    givesUpdates(wrote(1, "/help"));
    api()
      .post(path("sendMessage"))
      .reply(403, ...refusal(403, "Forbidden: user is deactivated"));
    const { store } = start();
    let parked: readonly { readonly error: string }[] = [];
    for (let tries = 0; tries < 100 && parked.length === 0; tries += 1) {
      await new Promise((resolve) => setTimeout(resolve, 10));
      parked = await store.parked();
    }
    expect(parked.map(({ error }) => error)).toEqual(["sendMessage: 403 Forbidden: user is deactivated"]);
    expect(await store.undelivered()).toEqual([]);
  });

  test("401 in the middle ends the channel with a message for the operator; what waits stays", async () => {
    givesUpdates(wrote(1, "/help"));
    api()
      .post(path("sendMessage"))
      .reply(401, ...refusal(401, "Unauthorized"));
    const { running, store } = start();
    await expect(running.ended).rejects.toThrow(
      /Telegram refuses the bot token\. Check NAMEPLATE_TELEGRAM_TOKEN/,
    );
    expect(await store.undelivered()).toHaveLength(1);
  });
});

describe("fetching", () => {
  test.each([
    [
      "502",
      () =>
        api()
          .post(path("getUpdates"))
          .reply(502, ...page("<html></html>")),
    ],
    ["a reset connection", () => api().post(path("getUpdates")).replyWithError("ECONNRESET")],
    [
      "a broken body",
      () =>
        api()
          .post(path("getUpdates"))
          .reply(200, ...page('{"ok":true,"result":[{"upd')),
    ],
    [
      "an answer that is no list",
      () =>
        api()
          .post(path("getUpdates"))
          .reply(200, ...ok({ update_id: 99 })),
    ],
    [
      "429",
      () =>
        api()
          .post(path("getUpdates"))
          .reply(429, ...refusal(429, "Too Many Requests: retry after 1", { retry_after: 1 })),
    ],
  ])("after %s goes on where it was", async (_, fails) => {
    fails();
    const offsets = givesUpdates(wrote(41, "/help"));
    takesMessages();
    start();
    await until(() => sent.length === 1 && offsets.length > 2);
    expect(offsets.slice(0, 2)).toEqual([0, 42]);
  });

  test("confirms a batch only once it is stored", async () => {
    const offsets = givesUpdates(wrote(1, "/help"));
    takesMessages();
    const { store, log } = start();
    let failing = 3;
    const { keepUpdates } = store.telegram;
    Object.assign(store.telegram, {
      keepUpdates: (...batch: Parameters<typeof keepUpdates>) => {
        if (failing-- > 0) throw Object.assign(new Error("disk I/O error"), { name: "SqliteError" });
        return keepUpdates(...batch);
      },
    });
    await until(() => sent.length === 1 && offsets.length > 5);
    expect(offsets.slice(0, 5)).toEqual([0, 0, 0, 0, 2]);
    expect(log.filter((line) => line.startsWith("updates could not be fetched and stored"))).toHaveLength(3);
  });

  test("409 ends the channel and says that somebody else polls", async () => {
    api()
      .post(path("getUpdates"))
      .reply(
        409,
        ...refusal(
          409,
          "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running",
        ),
      );
    const { running } = start();
    await expect(running.ended).rejects.toThrow(/Another program fetches messages with the same bot token/);
  });

  test("409 for a webhook says that", async () => {
    api()
      .post(path("getUpdates"))
      .reply(
        409,
        ...refusal(
          409,
          "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
        ),
      );
    const { running } = start();
    await expect(running.ended).rejects.toThrow(/A webhook is set for this bot/);
  });
});

describe("starting", () => {
  test("with a token nobody has ends with a message that does not show it", async () => {
    nock.cleanAll();
    api()
      .post(path("getMe"))
      .reply(404, ...refusal(404, "Not Found"));
    const { running } = start();
    await expect(running.ended).rejects.toThrow(/Telegram refuses the bot token/);
    await running.ended.catch((error: Error) => expect(error.message).not.toContain(token));
  });

  test("while Telegram is away waits for it", async () => {
    nock.cleanAll();
    api().post(path("getMe")).times(3).replyWithError("ENOTFOUND");
    api()
      .post(path("getMe"))
      .reply(200, ...ok({ id: 424242, is_bot: true, first_name: "Desk", username: "desk_bot" }));
    api()
      .persist()
      .post(path("setMyCommands"))
      .reply(200, ...ok(true));
    api()
      .persist()
      .post(path("deleteWebhook"))
      .reply(200, ...ok(true));
    givesUpdates(wrote(1, "/help"));
    takesMessages();
    start();
    await until(() => sent.length === 1);
  });
});

test("neither the token nor what people write stands in the log", async () => {
  givesUpdates(wrote(1, "my secret is xyzzy, call 555-0188"), wrote(2, "/help"));
  // A broken line: the library's error holds the address, and the address the token.
  api().post(path("sendMessage")).replyWithError("socket hang up");
  api()
    .post(path("sendMessage"))
    .reply(500, ...refusal(500, "Internal Server Error"));
  api()
    .post(path("sendMessage"))
    .reply(400, ...refusal(400, "Bad Request: message is too long"));
  takesMessages();
  const { log, store } = start();
  await until(() => log.some((line) => line.includes("parked")));
  await until(() => sent.length > 0);
  expect(log.filter((line) => line.includes("tried again"))).toHaveLength(2);
  const all = log.join("\n");
  expect(all).not.toMatch(/xyzzy|555-0188|Ada/);
  expect(all).not.toContain(token);
  expect(all).not.toContain(token.split(":")[1]);
  expect((await store.parked()).length).toBeGreaterThan(0);
  // The engine names its threads with the same key, so that all lines about one customer can be found.
  const nameOf = namesWith(await store.upkeep.installationKey());
  const [{ thread } = { thread: "" }] = (await store.parked()).map(({ lane }) => ({
    thread: lane.kind === "customer" ? lane.threadId : "",
  }));
  expect(thread).toMatch(/^telegram:\d+$/);
  expect(log.find((line) => line.includes("parked"))).toContain(`"thread":"${nameOf(thread)}"`);
});
