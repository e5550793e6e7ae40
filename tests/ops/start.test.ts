import { cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openDesk } from "../../src/compose.ts";
import { ConfigError, readConfig } from "../../src/config.ts";
import { ContentError } from "../../src/content.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { nameplate } from "../commands/run.ts";

const project = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "start-"));
  for (const part of ["intents", "data"]) cpSync(project(part), join(folder, part), { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const start = (over: object = {}) =>
  openDesk(
    {
      storeFile: join(folder, "desk.sqlite"),
      intentsFolder: join(folder, "intents"),
      dataFolder: join(folder, "data"),
    },
    { today: "2026-11-24", ...over },
  );

describe("a start on files that cannot be used names the file and what is wrong with it", () => {
  test.each([
    [
      "a catalogue that is not there",
      {},
      { catalogueFile: "/nowhere/stock.csv" },
      /stock\.csv: this file cannot be read/,
    ],
    ["a folder of texts that is not there", { intents: null }, {}, /intents/],
    ["an intent that is no JSON", { "intents/said/price.json": "{" }, {}, /price\.json: not valid JSON/],
    [
      "an intent with a key of the wrong kind",
      { "intents/said/price.json": '{"about": 7}' },
      {},
      /price\.json, key "/,
    ],
    [
      "opening hours in no time zone",
      { "data/desk-hours.json": '{"timeZone": "Nowhere/Land"}' },
      {},
      /desk-hours\.json, key "/,
    ],
    ["demo motors that are no table", { "data/motors.csv": "a shopping list" }, {}, /motors\.csv/],
    ["demo motors that are not there", { "data/motors.csv": null }, {}, /motors\.csv/],
  ] as const)("%s", async (_, files, over, words) => {
    for (const [name, text] of Object.entries(files)) {
      if (text === null) rmSync(join(folder, name), { recursive: true });
      else writeFileSync(join(folder, name), text);
    }
    const error = await start(over).then(
      () => undefined,
      (thrown: unknown) => thrown,
    );
    expect(error).toBeInstanceOf(ContentError);
    expect((error as Error).message).toMatch(words);
    expect((error as Error).message).not.toMatch(/\n\s+at /);
  });

  test("and the next start on mended files is as if nothing had happened", async () => {
    writeFileSync(join(folder, "data", "motors.csv"), "a shopping list");
    await expect(start()).rejects.toThrow(ContentError);
    cpSync(project("data/motors.csv"), join(folder, "data", "motors.csv"));
    const desk = await start();
    const at = "2026-11-24T16:00:00.000Z";
    const { replies } = await desk.engine.handle({ id: "u1", threadId: "ana", text: "1 hp 56Y", at });
    expect(replies.join()).toMatch(/Got it: 1 hp/);
    await desk.close();
  });
});

describe("settings", () => {
  test("of keeping, limits, log and health have careful values by themselves", () => {
    expect(readConfig({})).toMatchObject({
      keepDays: 365,
      limits: { perThread: 20, overall: 1200 },
      http: null,
      logFile: null,
    });
    expect(readConfig({ NAMEPLATE_HTTP_PORT: "9464" }).http).toEqual({ host: "127.0.0.1", port: 9464 });
    expect(
      readConfig({ NAMEPLATE_KEEP_DAYS: "0", NAMEPLATE_HTTP_PORT: "", NAMEPLATE_LOG: " " }),
    ).toMatchObject({
      keepDays: null,
      http: null,
      logFile: null,
    });
  });

  test.each([
    ["NAMEPLATE_KEEP_DAYS", "-1"],
    ["NAMEPLATE_KEEP_DAYS", "a year"],
    ["NAMEPLATE_LIMIT_THREAD", "0"],
    ["NAMEPLATE_LIMIT_ALL", "1.5"],
    ["NAMEPLATE_HTTP_PORT", "70000"],
  ])("%s=%s is refused by name", (name, value) => {
    expect(() => readConfig({ [name]: value })).toThrow(ConfigError);
    expect(() => readConfig({ [name]: value })).toThrow(name);
  });
});

test("customer-data prints one customer's data as JSON; nobody's is told in words", async () => {
  const store = openSqliteStore(join(folder, "desk.sqlite"));
  await store.receive({
    id: "u1",
    threadId: "telegram:7",
    text: "hello there",
    at: "2026-11-24T16:00:00.000Z",
  });
  await store.close();
  const environment = { NAMEPLATE_STORE: join(folder, "desk.sqlite") };
  const printed = nameplate(["customer-data", "telegram:7"], "", environment);
  expect(JSON.parse(printed.stdout)).toMatchObject({
    threadId: "telegram:7",
    received: [{ text: "hello there" }],
  });
  const nobody = nameplate(["customer-data", "--case", "12"], "", environment);
  expect([nobody.status, nobody.stderr]).toEqual([
    1,
    expect.stringMatching(/Nothing is kept of the customer of case 12/),
  ]);
  expect(existsSync(join(folder, "desk.sqlite"))).toBe(true);
});
