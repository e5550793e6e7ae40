import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { type InboxItem, StoreError, type Turn } from "../../src/store/store.ts";

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "store-"));
  file = join(folder, "desk.sqlite");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const item = (id: string, text = "56Y"): InboxItem => ({
  id,
  threadId: "ana",
  text,
  at: "2026-11-25T10:00:00Z",
});
const turn = (id: string, over: Partial<Turn> = {}): Turn => ({
  item: item(id),
  state: '{"facts":{}}',
  replies: ["Got it."],
  case: null,
  erase: false,
  ...over,
});

describe("the SQLite store", () => {
  test("a message is taken once, however often it is delivered", async () => {
    const store = openSqliteStore(file);
    expect(await store.receive(item("update:1"))).toBe(true);
    expect(await store.receive(item("update:1"))).toBe(false);
    expect(await store.unhandled()).toHaveLength(1);
    await store.close();
  });

  test("what was received and not handled is still there after a restart", async () => {
    const before = openSqliteStore(file);
    await before.receive(item("update:1", "1.5 hp"));
    await before.close();
    const after = openSqliteStore(file);
    expect(await after.unhandled()).toEqual([item("update:1", "1.5 hp")]);
    await after.close();
  });

  test("thread, replies and case of one message are kept together", async () => {
    const store = openSqliteStore(file);
    await store.receive(item("update:1"));
    await store.commit(
      turn("update:1", { case: { urgency: "pump-down", reason: "asked-for-person", brief: "Has: 56Y" } }),
    );
    expect(await store.findThread("ana")).toBe('{"facts":{}}');
    expect(await store.undelivered()).toMatchObject([{ threadId: "ana", text: "Got it." }]);
    expect(await store.openCase("ana")).toMatchObject({
      urgency: "pump-down",
      state: "waiting",
      brief: "Has: 56Y",
    });
    expect(await store.unhandled()).toEqual([]);
    await store.close();
  });

  test("a turn that cannot be stored leaves nothing behind", async () => {
    const store = openSqliteStore(file);
    await store.receive(item("update:1"));
    await expect(store.commit(turn("update:1", { state: "not json" }))).rejects.toThrow();
    expect(await store.findThread("ana")).toBeUndefined();
    expect(await store.undelivered()).toEqual([]);
    expect(await store.unhandled()).toHaveLength(1);
    await store.close();
  });

  test("a case is opened once and refreshed after that", async () => {
    const store = openSqliteStore(file);
    for (const [id, brief] of [
      ["update:1", "first"],
      ["update:2", "second"],
    ] as const) {
      await store.receive(item(id));
      await store.commit(turn(id, { case: { urgency: "pump-down", reason: "nothing-fits", brief } }));
    }
    expect((await store.cases()).map(({ brief }) => brief)).toEqual(["second"]);
    await store.close();
  });

  test("replies are given out in order and only until they are delivered", async () => {
    const store = openSqliteStore(file);
    await store.receive(item("update:1"));
    await store.commit(turn("update:1", { replies: ["one", "two"] }));
    const [first] = await store.undelivered("ana");
    await store.delivered(first!.id);
    expect((await store.undelivered("ana")).map(({ text }) => text)).toEqual(["two"]);
    await store.close();
  });

  test("erasing takes everything of the thread but the last word", async () => {
    const store = openSqliteStore(file);
    await store.receive(item("update:1", "my number is 555-0100"));
    await store.commit(
      turn("update:1", { case: { urgency: "pump-down", reason: "nothing-fits", brief: "x" } }),
    );
    await store.receive(item("update:2", "delete my data"));
    await store.commit(turn("update:2", { erase: true, replies: ["Done."] }));
    await store.close();
    const raw = new Database(file, { readonly: true });
    const count = (table: string) =>
      (raw.prepare(`SELECT count(*) AS n FROM ${table}`).get() as { n: number }).n;
    expect([count("threads"), count("inbox"), count("cases"), count("outbox")]).toEqual([0, 0, 0, 1]);
    raw.close();
  });

  test("a stock is replaced as a whole, and a doubled number changes nothing", async () => {
    const store = openSqliteStore(file);
    const motor = { sku: "A-1", maker: "", description: "", label: { hp: 1 }, inStock: 1, replaces: [] };
    await store.replaceStock([motor], "2026-11-20");
    await expect(
      store.replaceStock(
        [
          { ...motor, sku: "B" },
          { ...motor, sku: "B" },
        ],
        "2026-11-25",
      ),
    ).rejects.toThrow();
    expect(await store.stock()).toEqual({ motors: [motor], importedOn: "2026-11-20" });
    await store.close();
  });

  test("a file that is no database is a clear error with the file's name", () => {
    writeFileSync(file, "this is a shopping list, not a database ".repeat(50));
    expect(() => openSqliteStore(file)).toThrow(StoreError);
    expect(() => openSqliteStore(file)).toThrow(file);
  });

  test("a file of a newer version is refused, not guessed at", async () => {
    await openSqliteStore(file).close();
    const raw = new Database(file);
    raw.pragma("user_version = 99");
    raw.close();
    expect(() => openSqliteStore(file)).toThrow(/newer version/);
  });
});
