import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { afterLook, type Steady } from "../../src/engine/retention.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import type { Store } from "../../src/store/store.ts";
import { caseLane, customer, desk, evening, kim, LABEL } from "../desk/evening.ts";

const start = Date.parse("2026-11-24T16:00:00.000Z");
const day = (days: number) => new Date(start + days * 86_400_000).toISOString();

let folder: string;
let file: string;
let store: Store;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "keep-"));
  file = join(folder, "desk.sqlite");
  store = openSqliteStore(file);
});
afterEach(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

const shopWith = (keepDays: number | null) => {
  const shop = evening({ store, keepDays });
  /** Days pass one by one, as on a desk that runs. */
  const lives = async (from: number, to: number) => {
    for (let now = from; now <= to; now += 1) {
      shop.at(day(now));
      await shop.tick();
    }
  };
  return { ...shop, lives };
};
const kept = async (...threads: readonly string[]) => {
  const found = await Promise.all(threads.map(async (id) => [id, await store.findThread(id)] as const));
  return found.filter(([, thread]) => thread !== undefined).map(([id]) => id);
};
const inFile = (words: string) =>
  readdirSync(folder).filter((name) => readFileSync(join(folder, name)).includes(words));

describe("threads without activity", () => {
  test("are erased after the configured days; those with an open case are kept", async () => {
    const shop = shopWith(30);
    await shop.says("ana", "hello, my dog is called Bosporus");
    await shop.says("ben", LABEL);
    await shop.says("cleo", LABEL);
    await shop.types(kim, 2, "/close answered");
    expect(inFile("Bosporus")).not.toEqual([]);
    await shop.lives(1, 29);
    expect(await kept("ana", "ben", "cleo")).toEqual(["ana", "ben", "cleo"]);
    await shop.lives(30, 33);
    expect(await kept("ana", "ben", "cleo")).toEqual(["ben"]);
    expect(inFile("Bosporus")).toEqual([]);
    expect((await store.cases()).map(({ id }) => id)).toEqual([1]);
  });

  test("are kept as long as somebody writes, and for ever when no days are set", async () => {
    const shop = shopWith(30);
    await shop.says("ana", "hello");
    await shop.lives(1, 20);
    await shop.says("ana", "hello again");
    await shop.lives(21, 45);
    expect(await kept("ana")).toEqual(["ana"]);
    const forever = shopWith(null);
    await forever.lives(46, 120);
    expect(await kept("ana")).toEqual(["ana"]);
  });

  test("who comes back after that starts anew, and an old message delivered again stays seen", async () => {
    const shop = shopWith(10);
    await shop.says("ana", "frame 56Y", { id: "telegram:1" });
    await shop.lives(1, 14);
    expect(await kept("ana")).toEqual([]);
    expect((await shop.says("ana", "hello")).length).toBeGreaterThan(0);
    expect((await shop.engine.thread("ana")).facts).toEqual({});
  });

  test("many of them go a few at a time", async () => {
    const shop = shopWith(5);
    for (let n = 0; n < 45; n += 1) await shop.says(`c${n}`, "hello");
    await shop.lives(1, 5);
    await shop.lives(6, 6);
    const some = (await store.upkeep.counts()).threads;
    expect(some).toBe(25);
    await shop.tick();
    await shop.tick();
    expect((await store.upkeep.counts()).threads).toBe(0);
  });
});

test("loose ends go with age as well: ids of messages, what staff were told, updates, the numbers of who was erased", async () => {
  const shop = shopWith(10);
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "/close answered");
  await store.commit({ at: day(0), outgoing: [{ lane: desk, content: { text: "Good morning" } }] });
  await store.telegram.keepUpdates([{ id: 5, queue: "ana", body: "{}" }], day(0));
  await store.telegram.finishUpdates([5], day(0), []);
  for (const { id } of await store.undelivered()) await store.delivered(id);
  await shop.lives(1, 12);
  expect(await kept("ana")).toEqual([]);
  const raw = openFile(file, { readonly: true });
  const rows = () =>
    ["inbox", "outbox", "acts", "telegram_updates", "erased"].map((table) =>
      Number(raw.prepare(`SELECT count(*) FROM ${table}`).pluck().get()),
    );
  expect(rows().reduce((sum, count) => sum + count)).toBeGreaterThan(0);
  await shop.lives(13, 24);
  expect(rows()).toEqual([0, 0, 0, 0, 0]);
  raw.close();
});

describe("a clock that jumps", () => {
  test("forward by years erases nothing; set right, all goes on", async () => {
    const shop = shopWith(365);
    await shop.lives(-3, 0);
    await shop.says("ana", LABEL);
    await shop.types(kim, 1, "/close answered");
    shop.at(day(4000));
    await shop.tick();
    await shop.tick();
    expect(await kept("ana")).toEqual(["ana"]);
    await shop.lives(1, 40);
    expect(await kept("ana")).toEqual(["ana"]);
    expect((await shop.says("ana", "is it still there?")).length).toBeGreaterThan(0);
    expect(shop.troubles).toEqual([]);
  });

  test("back by years: messages are answered in the order they came, and case numbers go on", async () => {
    const shop = shopWith(365);
    await shop.says("ana", "there is smoke coming out of the motor");
    shop.at(day(-4000));
    await shop.tick();
    await shop.says("ana", "the power is off");
    await shop.says("ben", LABEL);
    const said = (await shop.engine.thread("ana")).lines.filter(({ from }) => from === "customer");
    expect(said.map(({ text }) => text)).toEqual([
      "there is smoke coming out of the motor",
      "the power is off",
    ]);
    expect((await store.openCases()).map(({ id }) => id)).toEqual([1, 2]);
    expect((await shop.engine.waiting(day(-4000))).text).toMatch(/Case|1/);
    expect(shop.troubles).toEqual([]);
  });

  test("back while a message waits for its next try: it does not wait for years", async () => {
    const shop = shopWith(365);
    await shop.says("ana", "hello");
    const [first] = await store.undelivered(customer("ana"));
    await store.postponed(first!.id, day(0.0005));
    await shop.tick();
    expect((await store.undelivered(customer("ana")))[0]?.retryAt).toBe(day(0.0005));
    shop.at(day(-4000));
    await shop.tick();
    expect((await store.undelivered(customer("ana")))[0]?.retryAt).toBeNull();
  });

  test("is known as one whatever the looks before", () => {
    // Own reasoning, no outside source: only a clock that has run for a day without a jump may erase.
    const looks = fc.array(fc.integer({ min: -5_000, max: 5_000 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(looks, (hours) => {
        let clock: Steady | null = null;
        let now = start;
        for (const [index, step] of hours.entries()) {
          now += step * 3_600_000;
          const before: Steady | null = clock;
          clock = afterLook(before, new Date(now).toISOString());
          expect(Date.parse(clock.since)).toBeLessThanOrEqual(now + 3_600_000);
          if (index > 0 && (step < -1 || step > 7 * 24)) expect(clock.since).toBe(clock.seen);
        }
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});

test("“delete my data” leaves no word of the customer anywhere in the files", async () => {
  const shop = shopWith(365);
  const word = "Bosporusdog";
  const secret = `${word} 555-0147`;
  await shop.says("ana", `I smell smoke near ${secret}`);
  await shop.says("ana", `power is off. ${LABEL} serial ${secret}`);
  await shop.says("ana", "", { attachments: [{ kind: "photo", ref: `photo-${word}` }] });
  await shop.types(kim, 1, `called ${secret}, friendly`);
  await shop.types(kim, 1, "/take");
  await shop.types(kim, 1, `> thanks ${secret}`);
  await shop.types(kim, 1, "/back");
  // What all staff were to see and what could not be delivered may hold words as well.
  const at = day(0);
  await store.commit({
    at,
    outgoing: [{ lane: desk, content: { text: `somebody shut us out: ${secret}` } }],
  });
  for (const lane of [customer("ana"), caseLane(1), desk]) {
    const [first, ...rest] = await shop.lane(lane);
    if (first) await store.park(first.id, "refused");
    for (const { id } of rest) await store.delivered(id);
  }
  for (const { id } of await store.undelivered()) await store.delivered(id);
  await store.link("telegram", { theirs: "-100/topic/7", lane: caseLane(1), kind: "topic" });
  await store.link("telegram", { theirs: `${word}/message/8`, lane: customer("ana"), kind: "message" });
  await store.telegram.keepUpdates([{ id: 5, queue: "ana", body: JSON.stringify({ text: secret }) }], at);
  await store.telegram.parkUpdate(5, "TypeError", at, []);

  expect(inFile(word)).not.toEqual([]);
  await shop.says("ana", "delete my data");
  await shop.says("ana", "YES");
  expect(inFile(word)).toEqual([]);
  expect(await store.upkeep.customerData("ana")).toMatchObject({ thread: null, received: [], cases: [] });
  // The topic is known as one to remove.
  expect(await store.orphans("telegram")).toMatchObject([{ theirs: "-100/topic/7" }]);
});

test("one customer's data are all there on request, and nobody else's", async () => {
  const shop = shopWith(365);
  await shop.says("ana", `${LABEL}, call me at 555-0188`);
  await shop.says("ben", "hello, ben here, 555-0199");
  await shop.types(kim, 1, "likes to talk");
  const data = JSON.stringify(await store.upkeep.customerData("ana"));
  for (const words of ["555-0188", "likes to talk", "56Y", "Kim"]) expect(data).toContain(words);
  expect(data).not.toContain("555-0199");
  expect(await store.upkeep.customerData("nobody")).toBeUndefined();
});
