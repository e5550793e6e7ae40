import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { migrations } from "../../src/store/migrations.ts";
import { openDatabase } from "../../src/store/sqlite/database.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { StoreError } from "../../src/store/store.ts";
import { storeContract } from "./contract.ts";

storeContract("the SQLite store", () => {
  const folder = mkdtempSync(join(tmpdir(), "store-"));
  const reopen = () => openSqliteStore(join(folder, "desk.sqlite"));
  return { store: reopen(), reopen, cleanUp: () => rmSync(folder, { recursive: true, force: true }) };
});

describe("the file", () => {
  let folder: string;
  let file: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "store-"));
    file = join(folder, "desk.sqlite");
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  test("two programs on one file see each other's work and never write over it", async () => {
    const bot = openSqliteStore(file);
    const terminal = openSqliteStore(file);
    const at = "2026-11-25T16:00:00.000Z";
    const thread = { id: "ana", state: '{"by":"bot"}', version: 0 };
    expect(await bot.commit({ at, thread, outgoing: [] })).toBe("done");
    expect(await terminal.commit({ at, thread, outgoing: [] })).toBe("stale");
    const { version = 0 } = (await terminal.findThread("ana")) ?? {};
    expect(await terminal.commit({ at, thread: { ...thread, version }, outgoing: [] })).toBe("done");
    await bot.close();
    await terminal.close();
  });

  test("a customer's words are nowhere in the file after an erasure", async () => {
    const store = openSqliteStore(file);
    const at = "2026-11-25T16:00:00.000Z";
    const secret = "call me at 555-0199";
    await store.receive({ id: "u1", threadId: "ana", text: secret, at });
    await store.commit({
      at,
      handled: "u1",
      thread: { id: "ana", state: JSON.stringify({ said: secret }), version: 0 },
      outgoing: [{ lane: { kind: "customer", threadId: "ana" }, content: { text: secret } }],
    });
    const { version = 0 } = (await store.findThread("ana")) ?? {};
    const found = () =>
      readdirSync(folder).filter((name) => readFileSync(join(folder, name)).includes("555-0199"));
    expect(found()).not.toEqual([]);
    await store.commit({ at, erase: true, thread: { id: "ana", state: "{}", version }, outgoing: [] });
    expect(found()).toEqual([]);
    await store.close();
    expect(found()).toEqual([]);
  });

  test("waits for the disk at each commit and for whoever holds it, keeps references whole, overwrites what goes", () => {
    // sqlite.org, "PRAGMA Statements": synchronous 2 is FULL, the others count from 0 as off.
    const db = openDatabase(file);
    const told = (name: string) => db.pragma(name, { simple: true });
    expect(
      ["journal_mode", "synchronous", "foreign_keys", "busy_timeout", "secure_delete"].map(told),
    ).toEqual(["wal", 2, 1, 5000, 1]);
    const tables = db.pragma("table_list") as {
      schema: string;
      name: string;
      type: string;
      strict: number;
    }[];
    const ours = tables.filter(({ schema, name }) => schema === "main" && !name.startsWith("sqlite_"));
    expect(ours.length).toBeGreaterThan(10);
    expect(ours.filter(({ strict }) => strict === 0)).toEqual([]);
    db.close();
  });

  test("is for the desk's own user only, and so is what SQLite puts beside it", async () => {
    const store = openSqliteStore(file);
    await store.receive({ id: "u1", threadId: "ana", text: "hello", at: "2026-11-25T16:00:00.000Z" });
    const names = readdirSync(folder);
    expect(names).toContain("desk.sqlite-wal");
    for (const name of names) expect(statSync(join(folder, name)).mode & 0o077).toBe(0);
    await store.close();
  });

  test("holds what was given to be stored just before it was closed", async () => {
    const store = openSqliteStore(file);
    const received = store.receive({
      id: "u1",
      threadId: "ana",
      text: "hello",
      at: "2026-11-25T16:00:00.000Z",
    });
    await store.close();
    expect(await received).toBe(true);
    const again = openSqliteStore(file);
    expect(await again.unhandled()).toMatchObject([{ id: "u1" }]);
    await again.close();
  });

  test("a file that is no database is a clear error with the file's name", () => {
    writeFileSync(file, "this is a shopping list, not a database ".repeat(50));
    expect(() => openSqliteStore(file)).toThrow(StoreError);
    expect(() => openSqliteStore(file)).toThrow(file);
  });

  test("a file of a newer version is refused, not guessed at", async () => {
    await openSqliteStore(file).close();
    const raw = openFile(file);
    raw.pragma("user_version = 99");
    raw.close();
    expect(() => openSqliteStore(file)).toThrow(/newer version/);
  });

  describe("of an earlier version", () => {
    beforeEach(() => {
      const old = openDatabase(file, migrations.slice(0, 1));
      old.exec(`
        INSERT INTO threads VALUES ('ana', '{"facts":{}}', '2026-11-20T10:00:00Z');
        INSERT INTO inbox (id, thread_id, text, at) VALUES ('u1', 'ana', '56Y', '2026-11-20T10:00:00Z');
        INSERT INTO outbox (id, thread_id, text, created_at, delivered) VALUES
          (1, 'ana', 'old and said', '2026-11-20T10:00:00Z', 1), (2, 'ana', 'still "to say"', '2026-11-20T10:00:01Z', 0);
        INSERT INTO cases (id, thread_id, urgency, reason, state, brief, opened_at, updated_at) VALUES
          (7, 'ana', 'danger', 'danger', 'waiting', 'Has: 56Y', '2026-11-20T10:00:00Z', '2026-11-20T10:00:01Z');
      `);
      old.close();
    });

    test("keeps threads, messages on their way and cases", async () => {
      const store = openSqliteStore(file);
      expect(await store.findThread("ana")).toEqual({ state: '{"facts":{}}', version: 1 });
      expect(await store.unhandled()).toMatchObject([{ id: "u1", text: "56Y" }]);
      expect(await store.undelivered()).toMatchObject([
        { id: 2, lane: { kind: "customer", threadId: "ana" }, content: { text: 'still "to say"' } },
      ]);
      const row = await store.latestCase("ana");
      expect(row).toMatchObject({ id: 7, state: "waiting", urgency: "danger" });
      expect(JSON.parse(row!.doc)).toMatchObject({
        reason: "danger",
        brief: "Has: 56Y",
        standing: { state: "waiting", since: "2026-11-20T10:00:00Z" },
      });
      expect(await store.newCaseId()).toBe(8);
      await store.close();
    });

    test("is copied beside itself first, whole and as it was", async () => {
      await openSqliteStore(file).close();
      const copy = openFile(`${file}.before-step-2`, { readonly: true });
      expect(copy.pragma("integrity_check", { simple: true })).toBe("ok");
      expect(copy.pragma("user_version", { simple: true })).toBe(1);
      expect(copy.prepare("SELECT brief FROM cases").pluck().all()).toEqual(["Has: 56Y"]);
      copy.close();
    });

    test("stays as it is when a step fails, and the next try makes a copy of its own", () => {
      const broken = [migrations[0] ?? "", "CREATE TABLE half (x); THIS IS NOT SQL;"];
      expect(() => openDatabase(file, broken)).toThrow(StoreError);
      expect(() => openDatabase(file, broken)).toThrow(StoreError);
      const raw = openFile(file, { readonly: true });
      expect(raw.pragma("user_version", { simple: true })).toBe(1);
      expect(raw.prepare("SELECT count(*) FROM sqlite_master WHERE name = 'half'").pluck().get()).toBe(0);
      raw.close();
      expect(readdirSync(folder).filter((name) => name.includes("before-step"))).toHaveLength(2);
    });
  });
});
