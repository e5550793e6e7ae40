import { Api } from "grammy";
import { describe, expect, test } from "vitest";
import { open, refusal, token } from "./world.ts";

const texts = (updates: Awaited<ReturnType<Api["getUpdates"]>>) =>
  updates.map(({ message }) => message?.text);

// Source: Bot API, "Getting updates" and "getUpdates"; descriptions of conflicts from memory.
describe("getUpdates", () => {
  test("gives an update again until a higher offset confirms it", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.says("one");
    ada.says("two");
    const first = await api.getUpdates();
    expect(texts(first)).toEqual(["one", "two"]);
    expect(texts(await api.getUpdates())).toEqual(["one", "two"]);
    expect(texts(await api.getUpdates({ offset: first[1]!.update_id }))).toEqual(["two"]);
    expect(await api.getUpdates({ offset: first[1]!.update_id + 1 })).toEqual([]);
    expect(world.pendingUpdates()).toBe(0);
  });

  test("numbers updates in sequence and hands out at most the limit", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    for (let n = 0; n < 120; n += 1) ada.says(`message ${n}`);
    const hundred = await api.getUpdates();
    expect(hundred).toHaveLength(100);
    expect(hundred[99]!.update_id - hundred[0]!.update_id).toBe(99);
    expect(await api.getUpdates({ limit: 7 })).toHaveLength(7);
  });

  test("with a negative offset keeps only the latest", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    for (const text of ["one", "two", "three"]) ada.says(text);
    expect(texts(await api.getUpdates({ offset: -1 }))).toEqual(["three"]);
    expect(texts(await api.getUpdates())).toEqual(["three"]);
  });

  test("waits for news, and answers as soon as there is some", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    const waiting = api.getUpdates({ timeout: 30 });
    await world.until(() => world.calls.underWay.length === 1);
    ada.says("hello");
    expect(texts(await waiting)).toEqual(["hello"]);
  });

  test("answers with nothing when the time is up", async () => {
    const { api } = await open();
    expect(await api.getUpdates({ timeout: 1 })).toEqual([]);
  });

  test("ends the older of two pollers with 409", async () => {
    const { world, api } = await open();
    const older = refusal(api.getUpdates({ timeout: 30 }));
    await world.until(() => world.calls.underWay.length === 1);
    const newer = new Api(token, { apiRoot: world.apiRoot }).getUpdates({ timeout: 30 });
    expect(await older).toBe(
      "409 Conflict: terminated by other getUpdates request; make sure that only one bot instance is running",
    );
    world.addUser().says("hello");
    expect(texts(await newer)).toEqual(["hello"]);
  });

  test("gives an update again when the client hung up before it came", async () => {
    const { world, api } = await open();
    const hangUp = new AbortController();
    const lost = fetch(`${world.apiRoot}/bot${token}/getUpdates?timeout=30`, { signal: hangUp.signal });
    await world.until(() => world.calls.underWay.length === 1);
    hangUp.abort();
    await expect(lost).rejects.toThrow("aborted");
    await world.until(() => world.calls.underWay.length === 0);
    expect(world.calls.of("getUpdates")[0]!.outcome).toEqual({ kind: "client hung up" });
    world.addUser().says("still here");
    expect(texts(await api.getUpdates())).toEqual(["still here"]);
  });

  test("forgets updates after 24 hours", async () => {
    let now = "2031-03-04T20:00:00.000Z";
    const { world, api } = await open({ now: () => now });
    const ada = world.addUser();
    ada.says("yesterday");
    now = "2031-03-05T19:00:00.000Z";
    ada.says("today");
    now = "2031-03-05T20:00:01.000Z";
    expect(texts(await api.getUpdates())).toEqual(["today"]);
  });

  test("keeps to the kinds subscribed to, remembers them, and goes back to the default for an empty list", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    await api.getUpdates({ allowed_updates: ["edited_message"] });
    const message = ada.says("one hp");
    await api.getUpdates();
    ada.edits(message, "1.5 hp");
    expect((await api.getUpdates()).map(({ edited_message }) => edited_message?.text)).toEqual(["1.5 hp"]);
    await api.getUpdates({ offset: -1, allowed_updates: [] });
    ada.says("thanks");
    expect((await api.getUpdates()).map(({ message }) => message?.text)).toEqual([undefined, "thanks"]);
  });
});

describe("the token", () => {
  test("of somebody else is refused, a method nobody knows is not found", async () => {
    const { world, api } = await open();
    expect(await refusal(new Api("1:other", { apiRoot: world.apiRoot }).getMe())).toBe("401 Unauthorized");
    expect((await api.getMe()).id).toBe(424242);
    const answer = await fetch(`${world.apiRoot}/bot${token}/sendMoney`);
    expect([answer.status, await answer.json()]).toEqual([
      404,
      { ok: false, error_code: 404, description: "Not Found: method not found" },
    ]);
  });
});
