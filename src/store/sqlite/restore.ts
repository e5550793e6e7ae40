import { chmodSync, copyFileSync, existsSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { migrations } from "../migrations.ts";
import { storeOn } from "../sqlite.ts";
import { StoreError } from "../store.ts";
import { settle } from "./backup.ts";
import { demandWhole, look, versionOf } from "./check.ts";
import { type Db, openDatabase } from "./database.ts";
import { openFile } from "./open-file.ts";
import { plainly } from "./trouble.ts";

export interface Restored {
  /** Where the store that was replaced is now; null when there was none. */
  readonly keptAside: string | null;
  /** Customers of the backup who have had their data erased since: erased again. */
  readonly erasedAgain: number;
  /** False when the replaced store could not be asked who was erased since the backup. */
  readonly erasuresKnown: boolean;
}

export interface RestoreOptions {
  /** ISO instant. */
  readonly at: string;
  /** The operator's word that nothing runs on the file: needed only where a damaged file cannot tell itself. */
  readonly stopped: boolean;
}

/**
 * Puts a backup in the place of a store. The store that was there is kept beside it; who was erased since the backup is
 * erased again; numbers of cases are not given twice. Throws {@link StoreError}, with nothing changed, when the backup
 * is not whole or the store is in use.
 */
export async function restore(backup: string, file: string, options: RestoreOptions): Promise<Restored> {
  look(backup, (db) => demandWhole(db, backup));
  if (existsSync(`${backup}-wal`) && statSync(`${backup}-wal`).size > 0)
    throw new StoreError(`${backup}: this is a store in use, not a backup. Make one with "backup".`);
  const live = existsSync(file) ? takeAlone(file, options) : undefined;
  const fresh = `${file}.restoring`;
  try {
    for (const path of [fresh, `${fresh}-wal`, `${fresh}-shm`]) rmSync(path, { force: true });
    copyFileSync(backup, fresh);
    chmodSync(fresh, 0o600);
    const known = await bringForward(fresh, live, options.at);
    settle(fresh);
    const keptAside = existsSync(file) ? moveAside(file, options.at) : null;
    renameSync(fresh, file);
    settle(dirname(file));
    return { keptAside, ...known };
  } catch (error) {
    throw plainly(error, file);
  } finally {
    live?.close();
    rmSync(fresh, { force: true });
  }
}

/** The store, with everybody else kept out; undefined when it is too damaged to be asked. */
function takeAlone(file: string, { stopped }: RestoreOptions): Db | undefined {
  let db: Db | undefined;
  try {
    db = openFile(file, { timeout: 0 });
    // Leaving WAL needs the file for oneself (sqlite.org, "Write-Ahead Logging") and brings everything into it.
    db.pragma("journal_mode = DELETE");
    db.exec("BEGIN EXCLUSIVE");
    return db;
  } catch (error) {
    db?.close();
    if (/^SQLITE_BUSY/.test(String((error as { code?: unknown }).code)))
      throw new StoreError(
        `${file}: in use. Stop the desk and every other program on this file, then try again.`,
      );
    if (stopped) return undefined;
    throw new StoreError(
      `${file}: too damaged to tell whether a desk still runs on it. Stop the desk, then run this again with --stopped.`,
      { cause: error },
    );
  }
}

/** Brings the copy up to date with the program, and with what must not be undone. */
async function bringForward(
  fresh: string,
  live: Db | undefined,
  at: string,
): Promise<Pick<Restored, "erasedAgain" | "erasuresKnown">> {
  const db = openDatabase(fresh, migrations, { keepCopy: false });
  try {
    const erasuresKnown = live === undefined ? false : sameDesk(live, db);
    const erasedAgain = live !== undefined && erasuresKnown ? await eraseAgain(live, db, at) : 0;
    db.pragma("journal_mode = DELETE");
    return { erasedAgain, erasuresKnown };
  } finally {
    db.close();
  }
}

const keyOf = (db: Db): unknown =>
  db.prepare("SELECT value FROM facts WHERE name = 'installation'").pluck().get();

function sameDesk(live: Db, restored: Db): boolean {
  try {
    return versionOf(live) === "current" && keyOf(live) === keyOf(restored);
  } catch {
    return false; // Damaged just there: it cannot be asked.
  }
}

async function eraseAgain(live: Db, db: Db, at: string): Promise<number> {
  const later = (name: string) => live.prepare("SELECT value FROM counters WHERE name = ?").pluck().get(name);
  for (const name of ["thread", "numbers", "case"])
    db.prepare("UPDATE counters SET value = max(value, ?) WHERE name = ?").run(later(name) ?? 0, name);
  const remember = db.prepare("INSERT OR IGNORE INTO erased (serial, at) VALUES (?, ?)");
  const find = db.prepare("SELECT id, version FROM threads WHERE serial = ?");
  const store = storeOn(db);
  let count = 0;
  for (const { serial, at: when } of live.prepare("SELECT serial, at FROM erased").all() as Erased[]) {
    const thread = find.get(serial) as { id: string; version: number } | undefined;
    if (thread !== undefined) {
      await store.commit({ at, erase: true, thread: { ...thread, state: "{}" }, outgoing: [] });
      count += 1;
    }
    remember.run(serial, when);
  }
  settleSent(live, db);
  return count;
}

interface Erased {
  readonly serial: number;
  readonly at: string;
}

/** What has been delivered since the backup is not delivered again. */
function settleSent(live: Db, db: Db): void {
  const sent = live.prepare(
    "SELECT 1 FROM outbox WHERE id = ? AND lane = ? AND created_at = ? AND state <> 'waiting'",
  );
  const settled = db.prepare(
    `UPDATE outbox SET state = 'delivered',
       content = iif(lane IN ('desk', 'on-call'), json_object('text', ''), content) WHERE id = ?`,
  );
  const waiting = db.prepare("SELECT id, lane, created_at AS at FROM outbox WHERE state = 'waiting'");
  for (const { id, lane, at } of waiting.all() as { id: number; lane: string; at: string }[])
    if (sent.get(id, lane, at) !== undefined) settled.run(id);
}

function moveAside(file: string, at: string): string {
  const stamp = at.slice(0, 19).replace(/[:T]/g, "-");
  let aside = `${file}.before-restore-${stamp}`;
  for (let n = 2; existsSync(aside); n++) aside = `${file}.before-restore-${stamp}.${n}`;
  // Of a damaged store the files beside it may hold its last words.
  for (const end of ["-wal", "-shm"])
    if (existsSync(`${file}${end}`)) renameSync(`${file}${end}`, `${aside}${end}`);
  renameSync(file, aside);
  return aside;
}
