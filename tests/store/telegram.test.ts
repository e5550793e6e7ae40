import { afterEach, beforeEach, expect, test } from "vitest";
import type { Outgoing } from "../../src/outgoing.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import type { Store } from "../../src/store/store.ts";

const at = "2026-11-24T16:00:00.000Z";
const update = (id: number, queue = "telegram:7") => ({ id, queue, body: `{"update_id":${id}}` });
const toAda = (text: string): Outgoing => ({
  lane: { kind: "customer", threadId: "telegram:7" },
  content: { text },
});

let store: Store;
beforeEach(() => {
  store = openSqliteStore(":memory:");
});
afterEach(() => store.close());

const waiting = async () => (await store.telegram.waitingUpdates()).map(({ id }) => id);
const queued = async () => (await store.undelivered()).map(({ content }) => content.text);

test("an update that comes twice is kept once, and only the first is to be handled", async () => {
  expect((await store.telegram.keepUpdates([update(2), update(1)], at)).map(({ id }) => id)).toEqual([2, 1]);
  expect((await store.telegram.keepUpdates([update(2), update(3)], at)).map(({ id }) => id)).toEqual([3]);
  expect(await waiting()).toEqual([1, 2, 3]);
});

test("a batch is kept as a whole or not at all", async () => {
  const broken = { id: 5, queue: "telegram:7", body: null as unknown as string };
  await expect(store.telegram.keepUpdates([update(4), broken], at)).rejects.toThrow();
  expect(await waiting()).toEqual([]);
});

test("what a handled update led to is queued once, and its words are dropped", async () => {
  await store.telegram.keepUpdates([update(1)], at);
  await store.telegram.finishUpdates([1], at, [toAda("hello")]);
  await store.telegram.finishUpdates([1], at, [toAda("hello")]);
  expect(await waiting()).toEqual([]);
  expect(await queued()).toEqual(["hello"]);
  // Known still: Telegram may send it again.
  expect(await store.telegram.keepUpdates([update(1)], at)).toEqual([]);
});

test("the pictures of an album stay together", async () => {
  await store.telegram.keepUpdates([update(1), update(2), update(3)], at);
  await store.telegram.joinAlbum([1, 2], 1);
  expect((await store.telegram.waitingUpdates()).map(({ album }) => album)).toEqual([1, 1, null]);
});

test("an update that cannot be handled is kept with its error and told of once", async () => {
  await store.telegram.keepUpdates([update(1)], at);
  await store.telegram.parkUpdate(1, "TypeError", at, [toAda("sorry")]);
  await store.telegram.parkUpdate(1, "TypeError", at, [toAda("sorry")]);
  expect(await waiting()).toEqual([]);
  expect(await queued()).toEqual(["sorry"]);
  expect(await store.telegram.parkedUpdates()).toEqual([
    { id: 1, queue: "telegram:7", error: "TypeError", at },
  ]);
});

test("messages are parked together, and told of once", async () => {
  await store.commit({ at, outgoing: [toAda("one"), toAda("two")] });
  const ids = (await store.undelivered()).map(({ id }) => id);
  const told: Outgoing = { lane: { kind: "case", caseId: 1 }, content: { text: "not delivered" } };
  await store.telegram.parkAndTell(ids, "403", at, [told]);
  await store.telegram.parkAndTell(ids, "403", at, [told]);
  expect(await queued()).toEqual(["not delivered"]);
  expect((await store.parked()).map(({ error }) => error)).toEqual(["403", "403"]);
  expect(await store.telegram.waitingLanes()).toEqual(["case:1"]);
});

test("lanes come in the order they have waited, so that a backlog starves nobody", async () => {
  const toCase = (caseId: number): Outgoing => ({
    lane: { kind: "case", caseId },
    content: { text: "brief" },
  });
  await store.commit({ at, outgoing: [toCase(2), toAda("one"), toCase(1), toAda("two"), toCase(2)] });
  expect(await store.telegram.waitingLanes()).toEqual(["case:2", "customer:telegram:7", "case:1"]);
});

test("ids of handled updates are forgotten after a while, waiting ones never", async () => {
  await store.telegram.keepUpdates([update(1), update(2)], at);
  await store.telegram.finishUpdates([1], at, []);
  await store.telegram.forgetUpdates("2026-11-28T00:00:00.000Z");
  expect((await store.telegram.keepUpdates([update(1), update(2)], at)).map(({ id }) => id)).toEqual([1]);
});

test("erasing a thread drops what was set aside of it; what still waits is untouched", async () => {
  await store.telegram.keepUpdates([update(1), update(2), update(3, "telegram:8")], at);
  await store.telegram.parkUpdate(1, "TypeError", at, []);
  await store.telegram.parkUpdate(3, "TypeError", at, []);
  await store.commit({ at, thread: { id: "telegram:7", state: "{}", version: 0 }, outgoing: [] });
  const { version = 0 } = (await store.findThread("telegram:7")) ?? {};
  await store.commit({ at, erase: true, thread: { id: "telegram:7", state: "{}", version }, outgoing: [] });
  expect((await store.telegram.parkedUpdates()).map(({ queue }) => queue)).toEqual(["", "telegram:8"]);
  expect((await store.telegram.waitingUpdates()).map(({ queue }) => queue)).toEqual(["telegram:7"]);
});
