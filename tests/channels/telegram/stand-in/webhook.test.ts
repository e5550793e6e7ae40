import { createServer, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import { Bot, webhookCallback } from "grammy";
import type { Update } from "grammy/types";
import { afterEach, describe, expect, test } from "vitest";
import { gate, open, refusal, token } from "./world.ts";

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});

/** A server of the bot's side: answers each delivery with the status that `answer` gives. */
async function receiver(answer: (update: Update, request: IncomingMessage) => number | Promise<number>) {
  const server = createServer(async (request, response) => {
    let body = "";
    for await (const chunk of request) body += String(chunk);
    response.writeHead(await answer(JSON.parse(body) as Update, request)).end();
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  closing.push(() => {
    server.close();
    server.closeAllConnections();
  });
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/hook`;
}

// Source: Bot API, "setWebhook", "getWebhookInfo"; descriptions from memory.
describe("a webhook", () => {
  test("gets updates with the secret, again after a failure, and in order for one chat", async () => {
    const { world, api } = await open();
    const seen: [string | undefined, unknown][] = [];
    let failures = 2;
    const url = await receiver(({ message }, { headers }) => {
      seen.push([message?.text, headers["x-telegram-bot-api-secret-token"]]);
      failures -= 1;
      return failures >= 0 ? 500 : 200;
    });
    const ada = world.addUser();
    ada.says("one");
    await api.setWebhook(url, { secret_token: "not-a-secret_1" });
    ada.says("two");
    await world.quiet();
    expect(seen).toEqual(["one", "one", "one", "two"].map((text) => [text, "not-a-secret_1"]));
    const info = await api.getWebhookInfo();
    expect(info).toMatchObject({ url, pending_update_count: 0 });
    expect(info.last_error_message).toBe("Wrong response from the webhook: 500 Internal Server Error");
  });

  test("that hangs for one person does not keep the others waiting", async () => {
    const { world, api } = await open();
    const [ada, ben] = [world.addUser({ first_name: "Ada" }), world.addUser({ first_name: "Ben" })];
    const release = gate();
    const done: string[] = [];
    const url = await receiver(async ({ message }) => {
      if (message?.from.first_name === "Ada") await release.opened;
      done.push(message?.text ?? "");
      return 200;
    });
    await api.setWebhook(url);
    ada.says("slow");
    ben.says("quick");
    await world.until(() => done.includes("quick") && world.pendingUpdates() === 1);
    expect(done).toEqual(["quick"]);
    release.open();
    await world.quiet();
    expect(done).toEqual(["quick", "slow"]);
  });

  test("excludes polling, ends a poll under way, and is taken away again", async () => {
    const { world, api } = await open();
    const poll = refusal(api.getUpdates({ timeout: 30 }));
    await world.until(() => world.calls.underWay.length === 1);
    await api.setWebhook(await receiver(() => 200));
    expect(await poll).toBe("409 Conflict: terminated by setWebhook request");
    expect(await refusal(api.getUpdates())).toBe(
      "409 Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
    );
    await api.deleteWebhook();
    world.addUser().says("hello");
    expect(await api.getUpdates()).toHaveLength(1);
    await api.deleteWebhook({ drop_pending_updates: true });
    expect(await api.getUpdates()).toHaveLength(0);
  });

  test("outside this machine is refused, so is a secret with other characters", async () => {
    const { api } = await open();
    expect(await refusal(api.setWebhook("https://bot.example/hook"))).toContain(
      "400 Bad Request: bad webhook",
    );
    expect(await refusal(api.setWebhook("http://127.0.0.1:1/", { secret_token: "no spaces" }))).toBe(
      "400 Bad Request: secret token contains unallowed characters",
    );
  });

  test("feeds a bot of the client library", async () => {
    const { world, api } = await open();
    const bot = new Bot(token, { client: { apiRoot: world.apiRoot } });
    bot.on("message:text", (context) => context.reply(`you said ${context.msg.text}`));
    const handle = webhookCallback(bot, "http", { secretToken: "s3" });
    const server = createServer((request, response) => void handle(request, response));
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    closing.push(() => {
      server.close();
      server.closeAllConnections();
    });
    await api.setWebhook(`http://127.0.0.1:${(server.address() as AddressInfo).port}`, {
      secret_token: "s3",
    });
    const ada = world.addUser();
    ada.says("hello");
    await world.quiet();
    expect(ada.hears()).toEqual(["you said hello"]);
  });
});
