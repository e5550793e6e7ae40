import {
  closeSync,
  copyFileSync,
  existsSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { migrations } from "../../src/store/migrations.ts";
import { backUp } from "../../src/store/sqlite/backup.ts";
import { openDatabase } from "../../src/store/sqlite/database.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { restore } from "../../src/store/sqlite/restore.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { type Store, StoreError } from "../../src/store/store.ts";

const at = "2026-11-25T16:00:00.000Z";
const stopped = { at, stopped: false };
let folder: string;
let file: string;
let copy: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "backup-"));
  file = join(folder, "desk.sqlite");
  copy = join(folder, "copy.sqlite");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

let count = 0;
async function says(store: Store, thread: string, text: string): Promise<void> {
  const id = `m${++count}`;
  await store.receive({ id, threadId: thread, text, at });
  const { version = 0 } = (await store.findThread(thread)) ?? {};
  await store.commit({
    at,
    handled: id,
    thread: { id: thread, state: JSON.stringify({ said: text }), version },
    outgoing: [{ lane: { kind: "customer", threadId: thread }, content: { text: `You said ${text}` } }],
  });
}

async function erase(store: Store, thread: string): Promise<void> {
  const { version = 0 } = (await store.findThread(thread)) ?? {};
  await store.commit({ at, erase: true, thread: { id: thread, state: "{}", version }, outgoing: [] });
}

const saidIn = async (store: Store, thread: string) => (await store.findThread(thread))?.state;

/** Rubbish over the pages of a file, from the third on. */
function damage(path: string): void {
  const handle = openSync(path, "r+");
  for (let page = 2; page < statSync(path).size / 4096; page += 1)
    writeSync(handle, Buffer.alloc(1000, 0xa5), 0, 1000, page * 4096);
  closeSync(handle);
}

describe("a backup", () => {
  test("holds what was committed while the desk goes on, is one file, whole, and for its owner only", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    const copying = backUp(file, copy);
    await says(store, "ben", "48Y");
    await copying;
    await says(store, "cleo", "56J");
    expect(readdirSync(folder).filter((name) => name.startsWith("copy"))).toEqual(["copy.sqlite"]);
    expect(statSync(copy).mode & 0o077).toBe(0);
    const db = openFile(copy, { readonly: true });
    expect(db.pragma("integrity_check", { simple: true })).toBe("ok");
    const threads = db.prepare("SELECT id FROM threads ORDER BY id").pluck().all();
    expect(threads).toContain("ana");
    expect(threads).not.toContain("cleo");
    db.close();
    await store.close();
  });

  test("is never written over another file, and not made of what is no store", async () => {
    await openSqliteStore(file).close();
    writeFileSync(copy, "dear to somebody");
    await expect(backUp(file, copy)).rejects.toThrow(/never written over/);
    expect(readFileSync(copy, "utf8")).toBe("dear to somebody");
    await expect(backUp(join(folder, "none.sqlite"), `${copy}2`)).rejects.toThrow(/no such file/);
    await expect(backUp(copy, `${copy}2`)).rejects.toThrow(StoreError);
    await expect(backUp(file, join(folder, "no", "where.sqlite"))).rejects.toThrow(/no such folder/);
  });

  test("of a damaged store is refused, and nothing is left that looks like a backup", async () => {
    const store = openSqliteStore(file);
    for (let n = 0; n < 50; n += 1) await says(store, `c${n}`, "x".repeat(200));
    await store.close();
    damage(file);
    await expect(backUp(file, copy)).rejects.toThrow(/damaged/);
    expect(readdirSync(folder).filter((name) => name.startsWith("copy"))).toEqual([]);
  });
});

describe("a restore", () => {
  test("brings back what was, and keeps what was there", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await backUp(file, copy);
    await says(store, "ana", "no, 48Y");
    await store.close();
    const { keptAside } = await restore(copy, file, stopped);
    const restored = openSqliteStore(file);
    expect(await saidIn(restored, "ana")).toBe('{"said":"56Y"}');
    await restored.close();
    const aside = openSqliteStore(keptAside ?? "");
    expect(await saidIn(aside, "ana")).toBe('{"said":"no, 48Y"}');
    await aside.close();
    expect(existsSync(copy)).toBe(true);
  });

  test("is refused while a program has the store open, even one that does nothing, and changes nothing", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await backUp(file, copy);
    await expect(restore(copy, file, stopped)).rejects.toThrow(/in use. Stop the desk/);
    await says(store, "ana", "48Y");
    expect(await saidIn(store, "ana")).toBe('{"said":"48Y"}');
    await store.close();
    expect(readdirSync(folder).sort()).toEqual(["copy.sqlite", "desk.sqlite"]);
  });

  test("erases again who was erased since the backup, and only them", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "my number is 555-0123");
    await says(store, "ben", "48Y");
    await backUp(file, copy);
    await erase(store, "ana");
    // Somebody new since the backup, and somebody erased who is not in it.
    await says(store, "cleo", "56J");
    await erase(store, "cleo");
    await store.close();
    expect(await restore(copy, file, stopped)).toMatchObject({ erasedAgain: 1, erasuresKnown: true });
    expect(readFileSync(file).includes("555-0123")).toBe(false);
    const restored = openSqliteStore(file);
    expect(await restored.findThread("ana")).toBeUndefined();
    expect(await saidIn(restored, "ben")).toBe('{"said":"48Y"}');
    await restored.close();
  });

  test("leaves alone who was erased before the backup and came back", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "first");
    await erase(store, "ana");
    await says(store, "ana", "second");
    await backUp(file, copy);
    await store.close();
    expect(await restore(copy, file, stopped)).toMatchObject({ erasedAgain: 0 });
    const restored = openSqliteStore(file);
    expect(await saidIn(restored, "ana")).toBe('{"said":"second"}');
    await restored.close();
  });

  test("does not give a case number twice, nor deliver again what was delivered since", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await store.newCaseId();
    await backUp(file, copy);
    const later = await store.newCaseId();
    for (const { id } of await store.undelivered()) await store.delivered(id);
    await store.close();
    await restore(copy, file, stopped);
    const restored = openSqliteStore(file);
    expect(await restored.newCaseId()).toBe(later + 1);
    expect(await restored.undelivered()).toEqual([]);
    await restored.close();
  });

  test("in the place of a store of another desk erases nothing and says that it cannot know", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await backUp(file, copy);
    await store.close();
    const other = join(folder, "other.sqlite");
    const stranger = openSqliteStore(other);
    await says(stranger, "zoe", "48Y");
    await erase(stranger, "zoe");
    await stranger.close();
    expect(await restore(copy, other, stopped)).toMatchObject({ erasedAgain: 0, erasuresKnown: false });
  });

  test("over a store too damaged to tell wants the operator's word, and keeps the damaged file", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await backUp(file, copy);
    await store.close();
    writeFileSync(file, "rubbish ".repeat(2000));
    await expect(restore(copy, file, stopped)).rejects.toThrow(/--stopped/);
    expect(readFileSync(file, "utf8").startsWith("rubbish")).toBe(true);
    const { keptAside } = await restore(copy, file, { at, stopped: true });
    expect(readFileSync(keptAside ?? "", "utf8").startsWith("rubbish")).toBe(true);
    const restored = openSqliteStore(file);
    expect(await saidIn(restored, "ana")).toBe('{"said":"56Y"}');
    await restored.close();
  });

  test("of a damaged backup, of a store in use or of a strange file changes nothing", async () => {
    const store = openSqliteStore(file);
    for (let n = 0; n < 50; n += 1) await says(store, `c${n}`, "x".repeat(200));
    await backUp(file, copy);
    await store.close();
    const before = readFileSync(file);
    damage(copy);
    await expect(restore(copy, file, stopped)).rejects.toThrow(/damaged/);
    writeFileSync(`${copy}.txt`, "not a store ".repeat(100));
    await expect(restore(`${copy}.txt`, file, stopped)).rejects.toThrow(StoreError);
    await expect(restore(join(folder, "none"), file, stopped)).rejects.toThrow(/no such file/);
    expect(readFileSync(file).equals(before)).toBe(true);
    expect(readdirSync(folder).filter((name) => /restor/.test(name))).toEqual([]);
  });

  test("brings a backup of an earlier version up to date", async () => {
    openDatabase(copy, migrations.slice(0, 2)).close();
    const old = openFile(copy);
    old.pragma("journal_mode = DELETE");
    old.prepare("INSERT INTO threads (id, state, updated_at, version) VALUES ('ana', '{}', ?, 7)").run(at);
    old.close();
    expect(await restore(copy, file, stopped)).toMatchObject({ keptAside: null });
    const restored = openSqliteStore(file);
    expect(await restored.findThread("ana")).toMatchObject({ version: 7 });
    await restored.close();
    expect(readdirSync(folder).sort()).toEqual(["copy.sqlite", "desk.sqlite"]);
  });

  test("where there was nothing simply puts the backup there", async () => {
    const store = openSqliteStore(file);
    await says(store, "ana", "56Y");
    await backUp(file, copy);
    await store.close();
    const fresh = join(folder, "fresh.sqlite");
    copyFileSync(copy, `${copy}.again`);
    expect(await restore(`${copy}.again`, fresh, stopped)).toMatchObject({ keptAside: null });
  });
});
