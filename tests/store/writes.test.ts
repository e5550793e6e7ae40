import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Db, openDatabase } from "../../src/store/sqlite/database.ts";
import { type Writes, writesOf } from "../../src/store/sqlite/writes.ts";

let folder: string;
let db: Db;
let other: Db;
let writes: Writes;
let add: (text: string) => number;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "writes-"));
  db = openDatabase(join(folder, "desk.sqlite"));
  db.exec("CREATE TABLE lines (text TEXT NOT NULL UNIQUE CHECK (text <> 'bad'))");
  other = openDatabase(join(folder, "desk.sqlite"));
  writes = writesOf(db);
  const insert = db.prepare("INSERT INTO lines (text) VALUES (?)");
  add = (text) => Number(insert.run(text).lastInsertRowid);
});
afterEach(() => {
  db.close();
  other.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What is on the disk, as another program sees it. */
const stored = () => other.prepare("SELECT text FROM lines ORDER BY rowid").pluck().all();

describe("what is written in one turn", () => {
  test("is on the disk, all of it, when the first hears of it", async () => {
    const first = writes.write(() => add("one"));
    const second = writes.write(() => add("two"));
    expect(stored()).toEqual([]);
    expect(await first).toBe(1);
    expect(stored()).toEqual(["one", "two"]);
    expect(await second).toBe(2);
  });

  test("is undone piece by piece: one that fails takes nothing else with it", async () => {
    const outcomes = await Promise.allSettled([
      writes.write(() => add("one")),
      writes.write(() => {
        add("half");
        add("bad");
      }),
      writes.write(() => add("three")),
    ]);
    expect(outcomes.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled"]);
    expect(stored()).toEqual(["one", "three"]);
  });

  test("is told as failed to everybody when it cannot be committed", async () => {
    other.exec("BEGIN IMMEDIATE");
    db.pragma("busy_timeout = 10");
    const outcomes = await Promise.allSettled([
      writes.write(() => add("one")),
      writes.write(() => add("two")),
    ]);
    expect(outcomes).toMatchObject([
      { status: "rejected", reason: { code: "SQLITE_BUSY" } },
      { status: "rejected", reason: { code: "SQLITE_BUSY" } },
    ]);
    other.exec("ROLLBACK");
    expect(stored()).toEqual([]);
    await writes.write(() => add("one"));
    expect(stored()).toEqual(["one"]);
  });

  test("is undone for all when one piece ends the transaction", async () => {
    const outcomes = await Promise.allSettled([
      writes.write(() => add("one")),
      writes.write(() => {
        // As SQLite does by itself on some full disks.
        db.exec("ROLLBACK");
        throw new Error("disk full");
      }),
      writes.write(() => add("three")),
    ]);
    expect(outcomes.map(({ status }) => status)).toEqual(["rejected", "rejected", "rejected"]);
    expect(stored()).toEqual([]);
  });

  test("does not wait when the store is about to close", async () => {
    const written = writes.write(() => add("one"));
    writes.settle();
    expect(stored()).toEqual(["one"]);
    expect(await written).toBe(1);
  });
});
