import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type Desk, openDesk } from "../../src/compose.ts";
import { type Ops, startOps } from "../../src/ops/ops.ts";
import { watchFiles } from "../../src/ops/reload.ts";

const project = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
let folder: string;
let desk: Desk;
let count = 0;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "reload-"));
  for (const part of ["intents", "data"]) cpSync(project(part), join(folder, part), { recursive: true });
  desk = await openDesk(
    { storeFile: ":memory:", intentsFolder: join(folder, "intents"), dataFolder: join(folder, "data") },
    { today: "2026-11-24" },
  );
});
afterEach(async () => {
  await desk.close();
  rmSync(folder, { recursive: true, force: true });
});

const says = async (text: string) =>
  (
    await desk.engine.handle({ id: `u${++count}`, threadId: "ana", text, at: "2026-11-24T16:00:00.000Z" })
  ).replies.join("\n");
const texts = (group: string) => join(folder, "intents", "answers", `${group}.json`);
function change(file: string, edit: (json: Record<string, string>) => void): void {
  const json = JSON.parse(readFileSync(file, "utf8")) as Record<string, string>;
  edit(json);
  writeFileSync(file, JSON.stringify(json));
}

describe("a reload", () => {
  test("takes changed texts and opening hours up in the middle of a conversation", async () => {
    await says("1 hp, SF 1.65");
    change(texts("replies"), (json) => {
      json["thanks"] = "Any time, friend.";
    });
    expect(await says("thanks")).not.toMatch(/friend/);
    expect(desk.reload()).toEqual({ kind: "taken" });
    expect(await says("thanks a lot")).toMatch(/Any time, friend\./);
    expect(await says("what do you have so far?")).toMatch(/1 hp/);
    expect(await says("when is somebody there?")).toMatch(/open now/);
    change(join(folder, "data", "desk-hours.json"), (json) => {
      (json["weekly"] as unknown as Record<string, unknown[]>)["tuesday"] = [];
    });
    expect(desk.reload()).toEqual({ kind: "taken" });
    expect(await says("when is somebody there?")).toMatch(/closed now/);
  });

  test.each([
    ["cut off in the middle", "replies", () => '{ "thanks": "Any ti', /replies\.json: not valid JSON/],
    [
      "with a text that is none",
      "replies",
      (old: string) => old.replace(/"thanks": "[^"]*"/, '"thanks": 7'),
      /key "thanks"/,
    ],
    [
      "without a text the desk needs",
      "replies",
      (old: string) => old.replace(/"thanks":/, '"thankz":'),
      /replies\.json: the key "thanks" is missing/,
    ],
    [
      "with a blank nobody fills",
      "replies",
      (old: string) => old.replace(/"thanks": "/, '"thanks": "{nobody} '),
      /nothing fills the blank \{nobody\}/,
    ],
  ])("of a file %s changes nothing and says what is wrong", async (_, group, edit, problem) => {
    writeFileSync(texts(group), edit(readFileSync(texts(group), "utf8")));
    expect(desk.reload()).toEqual({ kind: "refused", problem: expect.stringMatching(problem) });
    expect(await says("thanks")).toMatch(/You're welcome/);
  });

  test("of an intent with a broken pattern, of a folder that is gone, of bad hours: refused, and work goes on", async () => {
    writeFileSync(join(folder, "intents", "said", "price.json"), '{"about": 1}');
    expect(desk.reload()).toMatchObject({ kind: "refused", problem: expect.stringMatching(/price\.json/) });
    rmSync(join(folder, "intents", "said"), { recursive: true });
    expect(desk.reload()).toMatchObject({
      kind: "refused",
      problem: expect.stringMatching(/said: this folder/),
    });
    cpSync(project("intents/said"), join(folder, "intents", "said"), { recursive: true });
    writeFileSync(join(folder, "data", "desk-hours.json"), '{"timeZone": "Nowhere/Land"}');
    expect(desk.reload()).toMatchObject({
      kind: "refused",
      problem: expect.stringMatching(/desk-hours\.json/),
    });
    expect(await says("1 hp 56Y")).toMatch(/Got it: 1 hp/);
  });
});

test("a file that is being written counts once it has stayed the same for two looks", () => {
  vi.useFakeTimers();
  let changes = 0;
  const file = texts("replies");
  const unwatch = watchFiles({
    folders: [join(folder, "intents")],
    everyMs: 1000,
    onChange: () => {
      changes += 1;
    },
  });
  try {
    for (let part = 1; part <= 3; part += 1) {
      writeFileSync(file, "x".repeat(part));
      vi.advanceTimersByTime(1000);
    }
    expect(changes).toBe(0);
    vi.advanceTimersByTime(1000);
    expect(changes).toBe(1);
    vi.advanceTimersByTime(5000);
    expect(changes).toBe(1);
  } finally {
    unwatch();
    vi.useRealTimers();
  }
});

describe("while the bot runs", () => {
  const lines: { level: string; about: object; text: string }[] = [];
  const keep = (level: string) => (about: object, text: string) => void lines.push({ level, about, text });
  const log = { info: keep("info"), warn: keep("warn"), error: keep("error") };
  let ops: Ops;
  beforeEach(async () => {
    lines.length = 0;
    const config = { intentsFolder: join(folder, "intents"), dataFolder: join(folder, "data"), http: null };
    ops = await startOps(config, desk, log, false, 15);
  });
  afterEach(() => ops.stop());
  const until = async (found: () => boolean) => {
    for (let left = 300; left > 0 && !found(); left -= 1) await pause(10);
    expect(found()).toBe(true);
  };

  test("a changed file is noticed by itself; a bad one is told to log and desk, once, and mended is taken", async () => {
    const good = readFileSync(texts("replies"), "utf8");
    writeFileSync(texts("replies"), "{");
    await until(() => lines.some(({ level }) => level === "error"));
    expect(await says("thanks")).toMatch(/You're welcome/);
    const told = await desk.store.undelivered({ kind: "desk" });
    expect(told.map(({ content }) => content.text)).toEqual([
      expect.stringMatching(/cannot be used: .*replies\.json: not valid JSON.*stays in use/),
    ]);
    writeFileSync(texts("replies"), good.replace("You're welcome.", "Any time, friend."));
    await until(() => lines.some(({ level }) => level === "info"));
    expect(await says("thanks")).toMatch(/friend/);
  });

  test("SIGHUP reads everything again", async () => {
    process.emit("SIGHUP", "SIGHUP");
    expect(lines).toMatchObject([{ level: "info", text: "texts and data were read again" }]);
  });

  test("one and the same mistake, looked at twice, is told to the desk once", async () => {
    writeFileSync(texts("replies"), "{");
    for (let n = 0; n < 2; n += 1) process.emit("SIGHUP", "SIGHUP");
    expect(lines.filter(({ level }) => level === "error").length).toBeGreaterThanOrEqual(2);
    await pause(1);
    expect(await desk.store.undelivered({ kind: "desk" })).toHaveLength(1);
  });
});
