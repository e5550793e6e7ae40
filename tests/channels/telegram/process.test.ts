import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, afterEach, expect, test } from "vitest";
import { open, token } from "./stand-in/world.ts";

// `npm start` as an operator runs it, configured by the environment.

const folder = mkdtempSync(join(tmpdir(), "process-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const started: ChildProcess[] = [];
afterEach(() => {
  for (const child of started.splice(0)) child.kill("SIGKILL");
});
const main = fileURLToPath(new URL("../../../src/main.ts", import.meta.url));

function start(environment: Record<string, string>) {
  const child = spawn(process.execPath, ["--import", "tsx", main], {
    env: { PATH: process.env["PATH"], NAMEPLATE_STORE: join(folder, "desk.sqlite"), ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  started.push(child);
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream.on("data", (chunk: Buffer) => (said += chunk.toString()));
  return { child, said: () => said };
}

test("the desk starts, answers, ends on SIGTERM within ten seconds, and logs no words and no token", async () => {
  const { world } = await open();
  const group = world.addStaffGroup();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("1 hp, SF 1.65, my secret is xyzzy");
  const { child, said } = start({
    NAMEPLATE_TELEGRAM_TOKEN: token,
    NAMEPLATE_TELEGRAM_STAFF_GROUP: String(group.id),
    NAMEPLATE_TELEGRAM_API: world.apiRoot,
  });
  await world.until(() => ada.hears().length > 0, { withinMs: 20_000 });
  const began = performance.now();
  child.kill("SIGTERM");
  const [code] = (await once(child, "exit")) as [number | null];
  expect(code).toBe(0);
  expect(performance.now() - began).toBeLessThan(10_000);
  expect(said()).toContain("the desk is on Telegram");
  expect(said()).toContain("the desk has left Telegram");
  expect(said()).not.toMatch(/xyzzy/);
  expect(said()).not.toContain(token.split(":")[1]);
}, 40_000);

test("a token that Telegram refuses ends the start with one clear line", async () => {
  const { world } = await open();
  const { child, said } = start({
    NAMEPLATE_TELEGRAM_TOKEN: "424242:another-token",
    NAMEPLATE_TELEGRAM_API: world.apiRoot,
  });
  const [code] = (await once(child, "exit")) as [number | null];
  expect(code).toBe(1);
  expect(said()).toMatch(/^Telegram refuses the bot token\. Check NAMEPLATE_TELEGRAM_TOKEN/m);
  expect(said()).not.toMatch(/\n\s+at /);
}, 40_000);
