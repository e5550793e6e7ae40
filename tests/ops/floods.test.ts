import { describe, expect, test } from "vitest";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { customer, type Evening, evening, kim, LABEL } from "../desk/evening.ts";

const start = Date.parse("2026-11-24T16:00:00.000Z");
/** Seconds after the start, as an instant. */
const secs = (seconds: number) => new Date(start + seconds * 1000).toISOString();
const limits = { perThread: 5, overall: 1000 };
const polite = /kept them all; give me a minute/;

/** A customer sends many messages, some seconds apart; gives all that was answered. */
async function floods(
  shop: Evening,
  who: string,
  texts: readonly string[],
  { from = 0, every = 0.5 } = {},
): Promise<readonly string[]> {
  const replies: string[] = [];
  for (const [index, text] of texts.entries()) {
    shop.at(secs(from + index * every));
    replies.push(...(await shop.says(who, text)));
  }
  return replies;
}

const many = (count: number) => Array.from({ length: count }, (_, n) => `hello number ${n}`);

describe("a flood from one customer", () => {
  test("is answered up to the limit, then with one polite line, once", async () => {
    const shop = evening({ limits });
    const replies = await floods(shop, "ana", many(40));
    expect(replies.filter((text) => polite.test(text))).toHaveLength(1);
    expect(replies.length).toBeLessThanOrEqual(2 * limits.perThread + 1);
    expect(shop.troubles).toEqual([]);
  });

  test("loses nothing: what was held is read together a minute later", async () => {
    const shop = evening({ limits });
    await floods(shop, "ana", [...many(6), "1 hp, SF 1.65, 230V", "single phase, 3450 rpm", "frame 56Y"]);
    expect((await shop.store.unhandled()).length).toBe(4);
    shop.at(secs(65));
    await shop.tick();
    expect(await shop.store.unhandled()).toEqual([]);
    const { facts } = await shop.engine.thread("ana");
    expect(facts).toMatchObject({ hp: { value: 1 }, frame: { value: "56Y" }, rpm: { value: [3450] } });
  });

  test("is over once the customer writes again after a quiet minute, without any tick", async () => {
    const shop = evening({ limits });
    await floods(shop, "ana", [...many(6), "1 hp", "SF 1.65"]);
    shop.at(secs(70));
    await shop.says("ana", "frame 56Y");
    expect(await shop.store.unhandled()).toEqual([]);
    expect((await shop.engine.thread("ana")).facts).toMatchObject({
      hp: { value: 1 },
      serviceFactor: { value: 1.65 },
      frame: { value: "56Y" },
    });
  });

  test("never holds a danger back", async () => {
    const shop = evening({ limits });
    await floods(shop, "ana", many(12));
    shop.at(secs(7));
    const [safety] = await shop.says("ana", "there is smoke coming out of the motor!!");
    expect(safety).toMatch(/fire|smoke|breaker|911/i);
    expect(await shop.store.openCases()).toMatchObject([{ threadId: "ana", urgency: "danger" }]);
    // Told again and again, the same danger waits with the rest.
    shop.at(secs(8));
    expect(await shop.says("ana", "smoke!! smoke!!")).toEqual([]);
  });

  test("does not slow anybody else", async () => {
    const shop = evening({ limits });
    await floods(shop, "ana", many(30));
    shop.at(secs(16));
    expect((await shop.says("ben", LABEL)).join()).toMatch(/drop-in/);
  });

  test("held messages survive a crash, and are read together at the start", async () => {
    const store = openSqliteStore(":memory:");
    await floods(evening({ store, limits }), "ana", [...many(12), "frame 56Y"]);
    const heard = (await store.undelivered(customer("ana"))).length;
    const restarted = evening({ store, limits });
    await restarted.engine.catchUp();
    expect(await store.unhandled()).toEqual([]);
    expect((await restarted.engine.thread("ana")).facts).toMatchObject({ frame: { value: "56Y" } });
    // Read as one message: at most the usual few texts, not one for each of eight messages.
    expect((await store.undelivered(customer("ana"))).length - heard).toBeLessThan(5);
  });

  test("while a person talks with the customer there is no line from the bot", async () => {
    const shop = evening({ limits });
    await shop.says("ana", LABEL);
    await shop.types(kim, 1, "/take");
    expect(await floods(shop, "ana", many(20), { from: 1 })).toEqual([]);
    shop.at(secs(90));
    await shop.tick();
    expect(await shop.store.unhandled()).toEqual([]);
  });

  test("a clock that jumps back or forth neither holds anybody for ever nor throws", async () => {
    const shop = evening({ limits });
    await floods(shop, "ana", many(12));
    for (const jump of [-400 * 86_400, 400 * 86_400]) {
      shop.at(secs(jump));
      await shop.tick();
      expect(await shop.store.unhandled()).toEqual([]);
      expect((await shop.says("ana", "what do you have so far?")).length).toBeGreaterThan(0);
    }
    expect(shop.troubles).toEqual([]);
  });
});

test("a flood from many chats holds everybody's surplus, each with one polite line, and nobody's danger", async () => {
  const shop = evening({ limits: { perThread: 20, overall: 30 } });
  const replies = new Map<string, string[]>();
  for (let n = 0; n < 60; n += 1) {
    shop.at(secs(n / 10));
    const who = `c${n % 15}`;
    replies.set(who, [...(replies.get(who) ?? []), ...(await shop.says(who, "hello"))]);
  }
  for (const texts of replies.values()) expect(texts.filter((text) => polite.test(text))).toHaveLength(1);
  expect(await shop.store.unhandled()).toHaveLength(30);
  expect((await shop.says("zoe", "I got a shock from the pump")).join()).not.toMatch(polite);
  shop.at(secs(70));
  await shop.tick();
  expect(await shop.store.unhandled()).toEqual([]);
});

test("an oversize message is cut, read in part, and the customer is told", async () => {
  const shop = evening();
  const replies = await shop.says("ana", `frame 56Y ${"blah ".repeat(400_000)}`);
  expect(replies.join("\n")).toMatch(/That's a long one; I read the first part/);
  expect((await shop.engine.thread("ana")).facts).toMatchObject({ frame: { value: "56Y" } });
  const data = await shop.store.upkeep.customerData("ana");
  expect((data?.received[0] as { text: string } | undefined)?.text.length).toBe(64 * 1024);
});
