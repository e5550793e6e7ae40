import { request } from "node:http";
import { createServer } from "node:net";
import { describe, expect, test } from "vitest";
import { BODY_BYTES } from "../../../src/channels/telegram/webhook.ts";
import { LABEL } from "../../desk/evening.ts";
import { openTown } from "./town.ts";

const secret = "invented_secret_of_nobody";

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  await new Promise((resolve) => server.close(resolve));
  return typeof address === "object" && address !== null ? address.port : 0;
}

async function openHooked() {
  const port = await freePort();
  const url = `http://127.0.0.1:${port}/desk/in`;
  const town = await openTown({ over: { webhook: { url, secret, host: "127.0.0.1", port } } });
  await town.world.until(() =>
    town.world.calls.of("setWebhook").some(({ outcome }) => outcome.kind === "done"),
  );
  const post = (body: string | Buffer, headers: Record<string, string> = {}) =>
    fetch(url, { method: "POST", body, headers: { "content-type": "application/json", ...headers } });
  return { ...town, url, port, post, header: { "x-telegram-bot-api-secret-token": secret } };
}

describe("by webhook", () => {
  test("a customer is answered and staff act, as by polling", async () => {
    const { world, kim, store } = await openHooked();
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet({ stillForMs: 60 });
    expect(ada.hears()[0]).toContain("should fit as a drop-in");
    kim.says("/waiting");
    await world.quiet({ stillForMs: 60 });
    kim.presses("Take 1");
    await world.quiet({ stillForMs: 60 });
    expect((await store.findCase(1))?.state).toBe("taken");
    expect(world.calls.of("getUpdates")).toEqual([]);
  });

  test("an update delivered twice is handled once", async () => {
    const { world, post, header, store } = await openHooked();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.quiet({ stillForMs: 60 });
    const update = JSON.stringify({
      update_id: 9_000_001,
      message: {
        message_id: 77,
        date: 1_790_000_000,
        chat: { id: ada.id, type: "private", first_name: "Ada" },
        from: ada.user,
        text: "/help",
      },
    });
    expect((await post(update, header)).status).toBe(200);
    expect((await post(update, header)).status).toBe(200);
    await world.quiet({ stillForMs: 60 });
    expect(ada.hears().filter((text) => text.includes("/erase"))).toHaveLength(1);
    expect(await store.telegram.waitingUpdates()).toEqual([]);
  });

  test("without the secret, or with a wrong one, the answer is 401 and nothing is stored", async () => {
    const { post, store } = await openHooked();
    const update = JSON.stringify({ update_id: 1, message: { text: "/close sold" } });
    for (const header of [
      {},
      { "x-telegram-bot-api-secret-token": "" },
      { "x-telegram-bot-api-secret-token": `${secret}x` },
    ])
      expect((await post(update, header as Record<string, string>)).status).toBe(401);
    expect(await store.telegram.waitingUpdates()).toEqual([]);
    expect(await store.telegram.parkedUpdates()).toEqual([]);
  });

  test("what is no update, too large, elsewhere or no POST is refused", async () => {
    const { post, header, url } = await openHooked();
    expect((await post("{", header)).status).toBe(400);
    expect((await post("[]", header)).status).toBe(400);
    expect((await post('{"update_id":"1"}', header)).status).toBe(400);
    expect((await post('{"update_id":-1}', header)).status).toBe(400);
    expect((await post(Buffer.alloc(BODY_BYTES + 1, 32), header).catch(() => ({ status: 413 }))).status).toBe(
      413,
    );
    expect((await fetch(url, { headers: header })).status).toBe(405);
    expect((await fetch(`${url}/other`, { method: "POST", headers: header })).status).toBe(404);
  });

  test("a body that grows past the limit without saying so is cut off", async () => {
    const { port, header } = await openHooked();
    const status = await new Promise<number>((resolve) => {
      const call = request({ port, path: "/desk/in", method: "POST", headers: header }, (answer) =>
        resolve(answer.statusCode ?? 0),
      );
      call.on("error", () => resolve(413));
      const chunk = Buffer.alloc(64 * 1024, 32);
      let sentBytes = 0;
      const more = () => {
        if (sentBytes > 4 * BODY_BYTES || call.destroyed) return;
        sentBytes += chunk.length;
        call.write(chunk, more);
      };
      more();
    });
    expect(status).toBe(413);
  });

  test("an update that cannot be stored is answered with 500, and Telegram brings it again", async () => {
    const { world, store } = await openHooked();
    let failing = 2;
    const { keepUpdates } = store.telegram;
    Object.assign(store.telegram, {
      keepUpdates: (...batch: Parameters<typeof keepUpdates>) => {
        if (failing-- > 0) throw Object.assign(new Error("database is locked"), { name: "SqliteError" });
        return keepUpdates(...batch);
      },
    });
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.until(() => ada.hears().length === 1);
    expect(failing).toBeLessThan(0);
  });
});
