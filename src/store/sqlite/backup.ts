import { chmodSync, closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { StoreError } from "../store.ts";
import { demandWhole, look, versionOf } from "./check.ts";
import { openFile } from "./open-file.ts";
import { plainly } from "./trouble.ts";

/** More pages than a store has: copied in one go, because a copy in small steps starts anew at every write. */
const ALL_PAGES = 2 ** 30;

/**
 * Copies a store while the desk works on it, checks the copy, and only then gives it its name. Throws
 * {@link StoreError} when the copy cannot be made or is not whole; nothing stays behind then.
 */
export async function backUp(file: string, copy: string): Promise<void> {
  if (existsSync(copy))
    throw new StoreError(
      `${copy}: there is a file of this name already. Choose another; backups are never written over.`,
    );
  if (!existsSync(dirname(copy)))
    throw new StoreError(`${dirname(copy)}: there is no such folder. Make it first.`);
  look(file, () => {});
  const part = `${copy}.part`;
  rmSync(part, { force: true });
  const db = openFile(file, { fileMustExist: true });
  try {
    await db.backup(part, { progress: () => ALL_PAGES });
    chmodSync(part, 0o600);
    checkCopy(part);
    settle(part);
    renameSync(part, copy);
    settle(dirname(copy));
  } catch (error) {
    rmSync(part, { force: true });
    throw plainly(error, copy);
  } finally {
    db.close();
  }
}

function checkCopy(part: string): void {
  const db = openFile(part);
  try {
    // One file that needs no other beside it.
    db.pragma("journal_mode = DELETE");
    if (versionOf(db) === "none") throw new StoreError(`${part}: the copy is empty.`);
    demandWhole(db, part);
  } finally {
    db.close();
  }
}

/** Returns once a file, or a folder's list of files, is on the disk. */
export function settle(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
