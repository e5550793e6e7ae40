import { Bot } from "grammy";

// A bot in a process of its own, for tests that kill it: `echo-process.ts <apiRoot> <token>`.
const [apiRoot = "", token = ""] = process.argv.slice(2);
const bot = new Bot(token, { client: { apiRoot } });
bot.on("message:text", (context) => context.reply(`echo ${context.msg.text}`));
await bot.start();
