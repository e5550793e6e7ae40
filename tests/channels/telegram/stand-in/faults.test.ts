import { Api } from "grammy";
import { describe, expect, test } from "vitest";
import type { Fault } from "../../../../src/channels/telegram/stand-in/faults.ts";
import { Refusal } from "../../../../src/channels/telegram/stand-in/refusal.ts";
import { gate, open, refusal, token } from "./world.ts";

/** A person who wrote, and a client that gives up after a second. */
async function setUp() {
  const { world } = await open();
  const ada = world.addUser();
  ada.starts();
  return { world, ada, api: new Api(token, { apiRoot: world.apiRoot, timeoutSeconds: 1 }) };
}

// Source: Bot API, "Making requests" and "ResponseParameters"; texts from memory.
describe("a planned fault", () => {
  const notActedOn: readonly [Fault, string][] = [
    [{ kind: "too many requests", retryAfterSeconds: 7 }, "429 Too Many Requests: retry after 7"],
    [{ kind: "unauthorized" }, "401 Unauthorized"],
    [{ kind: "refused", refusal: new Refusal(500, "Internal Server Error") }, "500 Internal Server Error"],
    [{ kind: "bad gateway" }, "no answer"],
    [{ kind: "malformed" }, "no answer"],
    [{ kind: "reset" }, "no answer"],
    [{ kind: "silence" }, "no answer"],
  ];

  test.each(notActedOn)(
    "%j fails the call and leaves nothing behind; the next call goes through",
    async (fault, seen) => {
      const { world, ada, api } = await setUp();
      world.faults.plan("sendMessage", fault);
      expect(await refusal(api.sendMessage(ada.id, "lost"))).toBe(seen);
      expect(ada.hears()).toEqual([]);
      await api.sendMessage(ada.id, "arrived");
      expect(ada.hears()).toEqual(["arrived"]);
    },
  );

  test("429 names the seconds to wait", async () => {
    const { world, ada, api } = await setUp();
    world.faults.plan("sendMessage", { kind: "too many requests", retryAfterSeconds: 3 });
    await expect(api.sendMessage(ada.id, "x")).rejects.toMatchObject({ parameters: { retry_after: 3 } });
  });

  test("a lost answer leaves the message with the person though the client saw an error", async () => {
    const { world, ada, api } = await setUp();
    world.faults.plan("sendMessage", { kind: "answer lost" });
    expect(await refusal(api.sendMessage(ada.id, "once"))).toBe("no answer");
    expect(ada.hears()).toEqual(["once"]);
    expect(world.calls.of("sendMessage")[0]?.outcome).toEqual({ kind: "fault", fault: "answer lost" });
  });

  test("a held call is carried out at once and answered when released", async () => {
    const { world, ada, api } = await setUp();
    const release = gate();
    world.faults.plan("sendMessage", { kind: "held", until: release.opened });
    let answered = false;
    const call = api.sendMessage(ada.id, "slowly").then(() => {
      answered = true;
    });
    await world.until(() => ada.hears().length === 1);
    expect(answered).toBe(false);
    release.open();
    await call;
    expect(answered).toBe(true);
  });

  test("strikes as often, as late and for whom it was planned, then is used up", async () => {
    const { world, ada, api } = await setUp();
    const ben = world.addUser();
    ben.starts();
    world.faults.plan(
      "sendMessage",
      { kind: "unauthorized" },
      { times: 2, after: 1, when: (params) => params.chat_id === ada.id },
    );
    const results: string[] = [];
    for (const id of [ada.id, ben.id, ada.id, ben.id, ada.id, ada.id])
      results.push(await refusal(api.sendMessage(id, "x")));
    const refused = "401 Unauthorized";
    expect(results).toEqual(["accepted", "accepted", refused, "accepted", refused, "accepted"]);
    expect(world.faults.outstanding).toBe(0);
  });

  test("for every method lasts until it is cleared", async () => {
    const { world, ada, api } = await setUp();
    world.faults.planForAll({ kind: "bad gateway" }, { times: Number.POSITIVE_INFINITY });
    expect(await refusal(api.getMe())).toBe("no answer");
    expect(await refusal(api.sendMessage(ada.id, "x"))).toBe("no answer");
    world.faults.clear();
    expect(await refusal(api.getMe())).toBe("accepted");
    expect(world.calls.all.map(({ method, outcome }) => [method, outcome.kind])).toEqual([
      ["getMe", "fault"],
      ["sendMessage", "fault"],
      ["getMe", "done"],
    ]);
  });

  test("of updates: an answer lost on the way is given again", async () => {
    const { world, api } = await setUp();
    world.faults.plan("getUpdates", { kind: "answer lost" });
    expect(await refusal(api.getUpdates())).toBe("no answer");
    expect((await api.getUpdates()).map(({ message }) => message?.text)).toEqual(["/start"]);
  });
});

test("connections that are cut take the long poll with them, and a new one finds what came since", async () => {
  const { world, ada, api } = await setUp();
  const [start] = await api.getUpdates();
  const offset = start!.update_id + 1;
  const poll = refusal(new Api(token, { apiRoot: world.apiRoot }).getUpdates({ offset, timeout: 30 }));
  await world.until(() => world.calls.underWay.length === 1);
  world.dropConnections();
  expect(await poll).toBe("no answer");
  ada.says("are you there?");
  expect((await api.getUpdates({ offset })).map(({ message }) => message?.text)).toEqual(["are you there?"]);
});

describe("the record of calls", () => {
  test("keeps parameters, instant and outcome in order", async () => {
    const { world, ada, api } = await setUp();
    await api.sendMessage(ada.id, "<b>hi</b>", { parse_mode: "HTML" });
    await refusal(api.sendMessage(1, "nobody"));
    expect(world.calls.of("sendMessage")).toMatchObject([
      { params: { chat_id: ada.id, text: "<b>hi</b>", parse_mode: "HTML" }, outcome: { kind: "done" } },
      {
        params: { chat_id: 1 },
        outcome: { kind: "refused", code: 400, description: "Bad Request: chat not found" },
      },
    ]);
    expect(world.calls.all[0]?.at).toBe("2031-03-04T20:15:00.000Z");
    world.calls.forget();
    expect(world.calls.all).toEqual([]);
  });
});
