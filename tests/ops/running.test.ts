import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openStandIn, type StandIn } from "../../src/channels/telegram/stand-in/stand-in.ts";

// The bot as an operator runs it, in a process of its own, with health, limits and a log file.

const project = fileURLToPath(new URL("../../", import.meta.url));
const token = "424242:invented-token-of-nobody";
let folder: string;
let world: StandIn;
let child: ChildProcess | undefined;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "running-"));
  cpSync(join(project, "intents"), join(folder, "intents"), { recursive: true });
  world = await openStandIn({ token, now: () => new Date().toISOString() });
});
afterEach(async () => {
  if (child?.exitCode === null && child.signalCode === null) {
    child.kill("SIGKILL");
    await once(child, "exit");
  }
  await world.close();
  rmSync(folder, { recursive: true, force: true });
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  await once(server, "close");
  return typeof address === "object" && address !== null ? address.port : 0;
}

test("shows health and figures, limits a flood, reads texts anew on SIGHUP, logs no words, ends on SIGTERM", async () => {
  const port = await freePort();
  const logFile = join(folder, "desk.log");
  child = spawn(process.execPath, ["--import", "tsx", "src/main.ts"], {
    cwd: project,
    stdio: "ignore",
    env: {
      PATH: process.env["PATH"],
      NAMEPLATE_STORE: join(folder, "desk.sqlite"),
      NAMEPLATE_INTENTS: join(folder, "intents"),
      NAMEPLATE_LOG: logFile,
      NAMEPLATE_HTTP_PORT: String(port),
      NAMEPLATE_LIMIT_THREAD: "5",
      NAMEPLATE_TELEGRAM_TOKEN: token,
      NAMEPLATE_TELEGRAM_STAFF_GROUP: String(world.addStaffGroup().id),
      NAMEPLATE_TELEGRAM_API: world.apiRoot,
    },
  });
  const ada = world.addUser({ first_name: "Zebulonia" });
  for (let n = 0; n < 15; n += 1) ada.says(`hello xyzzy ${n}`);
  const hears = (words: string) =>
    world.until(() => ada.hears().some((text) => text.includes(words)), { withinMs: 30_000 });
  await hears("give me a minute");

  const page = async (path: string) => {
    const response = await fetch(`http://127.0.0.1:${port}${path}`);
    return { status: response.status, body: await response.text() };
  };
  expect(await page("/health")).toMatchObject({ status: 200, body: expect.stringMatching(/"status":"ok"/) });
  expect((await page("/metrics")).body).toMatch(/^nameplate_last_poll_timestamp_seconds [1-9]/m);
  expect(ada.hears().filter((text) => text.includes("give me a minute"))).toHaveLength(1);

  const file = join(folder, "intents", "answers", "telegram.json");
  const written = () => readFileSync(logFile, "utf8");
  const logged = async (words: RegExp) => {
    for (let left = 400; left > 0 && !words.test(written()); left -= 1) await pause(25);
    expect(written()).toMatch(words);
  };
  const good = readFileSync(file, "utf8");
  writeFileSync(file, good.slice(0, 100));
  child.kill("SIGHUP");
  await logged(/telegram\.json: not valid JSON/);
  writeFileSync(file, JSON.stringify({ ...(JSON.parse(good) as object), help: "Plugh is the new help." }));
  child.kill("SIGHUP");
  await logged(/were read again/);
  ada.says("/help");
  await hears("Plugh is the new help.");

  const began = performance.now();
  child.kill("SIGTERM");
  const [code] = (await once(child, "exit")) as [number | null];
  expect(code).toBe(0);
  expect(performance.now() - began).toBeLessThan(10_000);
  expect(written()).not.toMatch(/xyzzy|Zebulonia/);
  expect(written()).not.toContain(token.split(":")[1]);
}, 60_000);
