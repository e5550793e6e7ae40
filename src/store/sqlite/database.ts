import { chmodSync, existsSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import type Database from "better-sqlite3";
import { migrations } from "../migrations.ts";
import { StoreError } from "../store.ts";
import { openFile } from "./open-file.ts";
import { plainly } from "./trouble.ts";

export type Db = Database.Database;

/**
 * Opens (or creates) the database and brings its schema up to date. Throws {@link StoreError} when the file
 * cannot be opened, is damaged, or was written by a newer version.
 */
export function openDatabase(
  file: string,
  steps: readonly string[] = migrations,
  { keepCopy = true }: { readonly keepCopy?: boolean } = {},
): Db {
  let db: Db | undefined;
  try {
    if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
    const fresh = file !== ":memory:" && !existsSync(file);
    db = openFile(file);
    // Customers' words: for the desk's own user only. What SQLite puts beside the file takes its permissions.
    if (fresh) chmodSync(file, 0o600);
    db.pragma("busy_timeout = 5000");
    toWal(db);
    db.pragma("synchronous = FULL");
    db.pragma("foreign_keys = ON");
    // What a customer had erased must not stay readable in free pages of the file.
    db.pragma("secure_delete = ON");
    migrate(db, file, steps, keepCopy);
    // A file that can only be read is told now, not at the first customer. To begin is not enough: SQLite lets it.
    db.exec(`BEGIN IMMEDIATE; PRAGMA user_version = ${stepsTaken(db)}; ROLLBACK`);
    return db;
  } catch (cause) {
    db?.close();
    const told = plainly(cause, file);
    if (told instanceof StoreError) throw told;
    throw new StoreError(
      `${file}: the store cannot be opened (${(cause as Error).message}). Check that the folder exists and can be written, or choose another file with --store.`,
      { cause },
    );
  }
}

const WAL_TRIES = 50;

/** Two programs that make the same new file: SQLite does not wait by itself for this one switch. */
function toWal(db: Db): void {
  for (let left = WAL_TRIES; ; left--) {
    try {
      db.pragma("journal_mode = WAL");
      return;
    } catch (error) {
      if (left === 0 || (error as { code?: unknown }).code !== "SQLITE_BUSY") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    }
  }
}

const stepsTaken = (db: Db) => db.pragma("user_version", { simple: true }) as number;

/** All missing steps in one transaction, after a copy of the file was put beside it (a copy needs no copy). */
function migrate(db: Db, file: string, steps: readonly string[], keepCopy: boolean): void {
  const taken = stepsTaken(db);
  if (taken > steps.length) {
    throw new StoreError(
      `${file}: written by a newer version of nameplate-desk. Update the program, or use another file.`,
    );
  }
  if (taken === steps.length) return;
  if (taken > 0 && keepCopy && file !== ":memory:") copyBefore(db, file, taken);
  const takeSteps = db.transaction(() => {
    // Read again inside: another process may have taken them while this one waited for the lock.
    const first = stepsTaken(db);
    for (const step of steps.slice(first)) db.exec(step);
    db.pragma(`user_version = ${steps.length}`);
  });
  takeSteps.immediate();
}

/** A whole, checked copy of the database as it was, never over an earlier one. */
function copyBefore(db: Db, file: string, taken: number): void {
  let copy = `${file}.before-step-${taken + 1}`;
  for (let n = 2; existsSync(copy); n++) copy = `${file}.before-step-${taken + 1}.${n}`;
  db.prepare("VACUUM INTO ?").run(copy);
  const check = openFile(copy, { readonly: true });
  try {
    const state = check.pragma("quick_check", { simple: true });
    if (state !== "ok") {
      throw new StoreError(
        `${copy}: the copy made before the update is damaged (${String(state)}). Nothing was changed.`,
      );
    }
  } finally {
    check.close();
  }
}

/** A named counter's next value. */
export function nextOf(db: Db): (name: "thread" | "numbers" | "case") => number {
  const next = db.prepare("UPDATE counters SET value = value + 1 WHERE name = ? RETURNING value").pluck();
  return (name) => next.get(name) as number;
}
