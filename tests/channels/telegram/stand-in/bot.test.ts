import { spawn } from "node:child_process";
import { once } from "node:events";
import { readdir, readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { Bot, InlineKeyboard } from "grammy";
import { describe, expect, test } from "vitest";
import type { StandIn } from "../../../../src/channels/telegram/stand-in/stand-in.ts";
import { open, token } from "./world.ts";

/** A bot that greets, echoes and asks; polled as in production. */
function echoBot(world: StandIn): Bot {
  const bot = new Bot(token, { client: { apiRoot: world.apiRoot } });
  bot.command("start", (context) =>
    context.reply("Welcome", { reply_markup: new InlineKeyboard().text("Yes", "y") }),
  );
  bot.callbackQuery("y", async (context) => {
    await context.answerCallbackQuery("Noted");
    await context.editMessageText("You said yes");
  });
  bot.on("message:text", (context) => context.reply(`echo ${context.msg.text}`));
  return bot;
}

describe("a bot of the client library, polling", () => {
  test("holds a conversation; quiet waits until it has done all it will", async () => {
    const { world } = await open();
    const bot = echoBot(world);
    const running = bot.start();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.quiet();
    expect(ada.hears()).toEqual(["Welcome"]);
    const press = ada.presses("Yes");
    ada.says("thanks");
    await world.quiet();
    expect(press.answer()?.text).toBe("Noted");
    expect(ada.sees().map(({ from, text }) => [from, text])).toEqual([
      ["Ada", "/start"],
      ["Desk", "You said yes"],
      ["Ada", "thanks"],
      ["Desk", "echo thanks"],
    ]);
    await bot.stop();
    await running;
  });

  test("answers fifty people at once, each in their own chat and order", async () => {
    const { world } = await open();
    const bot = echoBot(world);
    const running = bot.start();
    const people = Array.from({ length: 50 }, (_, n) => world.addUser({ first_name: `P${n}` }));
    for (const turn of [1, 2, 3])
      for (const person of people) person.says(`${person.user.first_name} ${turn}`);
    await world.quiet();
    for (const person of people)
      expect(person.hears()).toEqual([1, 2, 3].map((turn) => `echo ${person.user.first_name} ${turn}`));
    await bot.stop();
    await running;
  });

  test("quiet says what it waited for when nobody answers", async () => {
    const { world } = await open();
    world.addUser().says("anybody there?");
    await expect(world.quiet({ withinMs: 50 })).rejects.toThrow(
      "updates not confirmed: 1, calls under way: none",
    );
  });

  test("in a process of its own is killed and started again without losing a message", async () => {
    const { world } = await open();
    const ada = world.addUser();
    const script = fileURLToPath(new URL("./echo-process.ts", import.meta.url));
    const start = () =>
      spawn(process.execPath, ["--import", "tsx", script, world.apiRoot, token], { stdio: "inherit" });
    const first = start();
    ada.says("one");
    await world.until(() => ada.hears().length === 1);
    // The second message is answered while the process dies: its update is not confirmed yet.
    const never = new Promise(() => {});
    world.faults.plan("sendMessage", { kind: "held", until: never });
    ada.says("two");
    await world.until(() => ada.hears().length === 2);
    first.kill("SIGKILL");
    await once(first, "exit");
    ada.says("three");
    expect(world.pendingUpdates()).toBe(2);
    const second = start();
    await world.quiet({ stillForMs: 100 });
    second.kill("SIGKILL");
    await once(second, "exit");
    expect(ada.hears()).toEqual(["echo one", "echo two", "echo two", "echo three"]);
  });
});

test("no production code of the channel imports the stand-in", async () => {
  const folder = fileURLToPath(new URL("../../../../src/channels/telegram/", import.meta.url));
  const files = (await readdir(folder, { recursive: true })).filter((name) => name.endsWith(".ts"));
  const production = files.filter((name) => !name.startsWith("stand-in"));
  const importing: string[] = [];
  for (const name of production)
    if (/from "[^"]*stand-in/.test(await readFile(`${folder}${name}`, "utf8"))) importing.push(name);
  expect(files.length).toBeGreaterThan(production.length);
  expect(importing).toEqual([]);
});
