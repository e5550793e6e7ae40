import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { openStandIn } from "../../../src/channels/telegram/stand-in/stand-in.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import { LABEL } from "../../desk/evening.ts";
import { gate } from "./stand-in/world.ts";
import { openTown, token } from "./town.ts";

const folder = mkdtempSync(join(tmpdir(), "stopping-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a desk told to stop finishes the message it sends, keeps the rest, and goes on where it was", async () => {
  const file = join(folder, "one.sqlite");
  const first = await openTown({ store: openSqliteStore(file) });
  const { world, group } = first;
  const ada = world.addUser({ first_name: "Ada" });
  const held = gate();
  world.faults.plan(
    "sendMessage",
    { kind: "held", until: held.opened },
    { when: ({ chat_id }) => chat_id === ada.id },
  );
  ada.says(LABEL);
  await world.until(() => ada.hears().length === 1);
  const stopped = first.stop();
  ada.says("are you there?");
  held.open();
  await stopped;
  // What was under way is done; what came after is neither lost nor confirmed.
  expect(ada.hears()).toHaveLength(1);
  expect(world.pendingUpdates()).toBeGreaterThan(0);
  await first.store.close();

  const second = await openTown({ store: openSqliteStore(file), world, over: { staffGroup: group.id } });
  await second.world.quiet();
  const heard = ada.hears();
  expect(heard.filter((text) => text.includes("should fit as a drop-in"))).toHaveLength(1);
  expect(heard.filter((text) => text.startsWith("Before anyone opens it"))).toHaveLength(1);
  expect(world.pendingUpdates()).toBe(0);
});

test("a call that never ends does not keep a desk from stopping in time; it is repeated", async () => {
  const file = join(folder, "two.sqlite");
  const { world, group, stop, log, store } = await openTown({
    store: openSqliteStore(file),
    pace: { stopWithin: 200, callTimeoutSeconds: 15 },
  });
  const ada = world.addUser({ first_name: "Ada" });
  world.faults.plan("sendMessage", { kind: "silence" });
  ada.says("/help");
  await world.until(() => world.calls.of("sendMessage").length === 1);
  const began = performance.now();
  await stop();
  expect(performance.now() - began).toBeLessThan(2000);
  expect(log.some(({ text }) => text.startsWith("stopped with calls under way"))).toBe(true);
  await store.close();
  await openTown({ store: openSqliteStore(file), world, over: { staffGroup: group.id } });
  await world.until(() => ada.hears().length === 1);
  expect(ada.hears()[0]).toContain("/erase");
});

test("of two desks on one token the older ends with a word on why; the newer answers", async () => {
  const older = await openTown();
  const { world } = older;
  await world.until(() => world.calls.of("getUpdates").length > 0);
  await openTown({ world });
  await expect(older.running.ended).rejects.toThrow(
    /Another program fetches messages with the same bot token/,
  );
  const ada = world.addUser({ first_name: "Ada" });
  ada.starts();
  await world.quiet();
  expect(ada.hears()).toHaveLength(1);
});

test("a network that goes away in the middle changes nothing but the time", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("1 hp, SF 1.65");
  await world.quiet();
  world.dropConnections();
  world.faults.plan("getUpdates", { kind: "reset" }, { times: 3 });
  world.faults.plan("sendMessage", { kind: "reset" }, { times: 2 });
  ada.says("230V, 56Y");
  await world.until(() => ada.hears().length === 2);
  await world.quiet({ stillForMs: 150 });
  expect(ada.hears()).toHaveLength(2);
  expect(ada.hears()[1]).toMatch(/^Got it: 230 V, frame 56Y/);
});

test("an answer that is lost on the way is the one case of a repeat", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  world.faults.plan("sendMessage", { kind: "answer lost" });
  ada.says("/help");
  ada.says("/start");
  await world.until(() => ada.hears().length === 3);
  const [one, two, three] = ada.hears();
  expect(two).toBe(one);
  expect(three).toContain("motor desk");
});

test("a desk that Telegram has not answered yet stops at once", async () => {
  const hanging = await openStandIn({ token, now: () => new Date().toISOString() });
  hanging.faults.plan("getMe", { kind: "silence" });
  const { world, stop } = await openTown({ world: hanging });
  await world.until(() => world.calls.of("getMe").length === 1);
  const began = performance.now();
  await stop();
  expect(performance.now() - began).toBeLessThan(1000);
});
