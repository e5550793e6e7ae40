import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openStandIn } from "../../src/channels/telegram/stand-in/stand-in.ts";
import { type Config, readConfig } from "../../src/config.ts";
import { examine } from "../../src/ops/doctor.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";

const project = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const token = "424242:invented-token-of-nobody";
let folder: string;
let config: Config;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "doctor-"));
  cpSync(project("intents"), join(folder, "intents"), { recursive: true });
  cpSync(project("data"), join(folder, "data"), { recursive: true });
  config = {
    ...readConfig({}),
    storeFile: join(folder, "desk.sqlite"),
    intentsFolder: join(folder, "intents"),
    dataFolder: join(folder, "data"),
  };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const about = async (name: string, over: Partial<Config> = {}) =>
  (await examine({ ...config, ...over })).filter((finding) => finding.about === name);

test("a fresh installation has nothing wrong, and looking makes no store", async () => {
  expect((await examine(config)).filter(({ state }) => state === "bad")).toEqual([]);
  expect(await about("store")).toMatchObject([
    { state: "note", text: expect.stringMatching(/not there yet/) },
  ]);
});

test("a missing catalogue, a broken intents file and a bad shop are each named with file and key", async () => {
  rmSync(join(folder, "data", "motors.csv"));
  writeFileSync(join(folder, "intents", "said", "price.json"), "{ not json");
  writeFileSync(join(folder, "data", "shop.json"), JSON.stringify({ name: "" }));
  expect(await about("demo tables")).toMatchObject([
    { state: "bad", text: expect.stringMatching(/motors\.csv/) },
  ]);
  expect(await about("texts and intents")).toMatchObject([
    { state: "bad", text: expect.stringMatching(/price\.json: not valid JSON/) },
  ]);
  expect(await about("shop and opening hours")).toMatchObject([
    { state: "bad", text: expect.stringMatching(/shop\.json, key "name"/) },
  ]);
});

test("a store whose rows belong to nothing is damaged, and told with what to do", async () => {
  await openSqliteStore(config.storeFile).close();
  const raw = openFile(config.storeFile);
  raw.pragma("foreign_keys = OFF");
  raw.exec("INSERT INTO case_events (case_id, at, kind, text) VALUES (99, '2026-11-25', 'opened', '')");
  raw.close();
  expect(await about("store")).toMatchObject([
    { state: "bad", text: expect.stringMatching(/damaged: a row of case_events.*restore a backup/) },
  ]);
});

test("what waits and what was parked is counted", async () => {
  const store = openSqliteStore(config.storeFile);
  const at = "2026-11-25T16:00:00.000Z";
  await store.receive({ id: "u1", threadId: "ana", text: "56Y", at });
  const told = { lane: { kind: "customer", threadId: "ana" }, content: { text: "hi" } } as const;
  await store.commit({ at, outgoing: [told, told] });
  const [first] = await store.undelivered();
  await store.park(first!.id, "shut out");
  await store.close();
  expect(await about("pending")).toMatchObject([
    { text: `1 to handle, 1 to deliver, the oldest since ${at}` },
  ]);
  expect(await about("parked")).toMatchObject([
    { state: "note", text: expect.stringMatching(/^1 could never/) },
  ]);
});

describe("reaching Telegram", () => {
  const telegram = { token, staffGroup: null, onCall: null, webhook: null };

  test("the bot, the staff group and what waits there; a wrong token and a wrong group are told apart", async () => {
    const world = await openStandIn({ token, now: () => new Date().toISOString() });
    try {
      const group = world.addStaffGroup({ topics: true });
      const own = { ...telegram, apiRoot: world.apiRoot, staffGroup: group.id };
      const fine = await about("Telegram", { telegram: own });
      expect(fine.map(({ state }) => state)).toEqual(["good", "good", "good"]);
      expect(fine[1]?.text).toBe("staff group supergroup can be reached");
      const strange = await about("Telegram", { telegram: { ...own, staffGroup: -100_999 } });
      expect(strange.map(({ state }) => state)).toEqual(["good", "bad", "good"]);
      const wrong = await about("Telegram", { telegram: { ...own, token: "1:another-token" } });
      expect(wrong).toMatchObject([{ state: "bad", text: expect.stringMatching(/40[14]/) }]);
    } finally {
      await world.close();
    }
  });

  test("nobody answers: told, in words that do not hold the token", async () => {
    const found = await about("Telegram", { telegram: { ...telegram, apiRoot: "http://127.0.0.1:9" } });
    expect(found).toMatchObject([{ state: "bad" }]);
    expect(JSON.stringify(found)).not.toContain("invented-token");
  });
});
