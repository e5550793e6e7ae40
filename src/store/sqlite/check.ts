import { existsSync } from "node:fs";
import { migrations } from "../migrations.ts";
import { StoreError } from "../store.ts";
import type { Db } from "./database.ts";
import { openFile } from "./open-file.ts";
import { plainly } from "./trouble.ts";

/** Of many damages these are enough. */
const SHOWN = 5;

/** What SQLite finds wrong with a whole database, in its own words; nothing is wrong when the list is empty. */
export function damagesOf(db: Db): readonly string[] {
  const found = (db.pragma("integrity_check") as { readonly integrity_check: string }[])
    .map(({ integrity_check }) => integrity_check)
    .filter((line) => line !== "ok");
  const loose = (db.pragma("foreign_key_check") as { readonly table: string }[]).map(
    ({ table }) => `a row of ${table} belongs to nothing`,
  );
  return [...found, ...loose].slice(0, SHOWN);
}

/** How an existing file stands to this version of the program. */
export function versionOf(db: Db): "none" | "earlier" | "current" | "newer" {
  const taken = db.pragma("user_version", { simple: true }) as number;
  if (taken === 0) return "none";
  if (taken === migrations.length) return "current";
  return taken < migrations.length ? "earlier" : "newer";
}

/**
 * Looks at a store as it is: nothing is made, nothing brought up to date. Throws {@link StoreError} when there is no
 * such file, it is damaged, or it is no store of ours.
 */
export function look<T>(file: string, at: (db: Db) => T): T {
  if (!existsSync(file)) throw new StoreError(`${file}: there is no such file.`);
  let db: Db | undefined;
  try {
    db = openFile(file, { fileMustExist: true });
    db.pragma("busy_timeout = 5000");
    const version = versionOf(db);
    if (version === "none") throw new StoreError(`${file}: this is no store of nameplate-desk.`);
    if (version === "newer")
      throw new StoreError(
        `${file}: written by a newer version of nameplate-desk. Update the program first.`,
      );
    return at(db);
  } catch (error) {
    throw plainly(error, file);
  } finally {
    db?.close();
  }
}

/** Throws {@link StoreError} when a database is damaged. */
export function demandWhole(db: Db, file: string): void {
  const damages = damagesOf(db);
  if (damages.length > 0) throw new StoreError(`${file}: this file is damaged: ${damages.join("; ")}.`);
}
