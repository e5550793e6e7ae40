import { readConfig } from "../config.ts";
import { restore } from "../store/sqlite/restore.ts";

export interface RestoreCommandOptions {
  readonly store?: string;
  readonly stopped?: boolean;
}

/** Puts a backup in the place of the store, which is kept beside it. */
export async function runRestore(
  backup: string,
  { store = readConfig().storeFile, stopped = false }: RestoreCommandOptions,
): Promise<void> {
  const at = new Date().toISOString();
  const { keptAside, erasedAgain, erasuresKnown } = await restore(backup, store, { at, stopped });
  const lines = [
    `${store}: restored from ${backup} and checked.`,
    ...(keptAside === null
      ? []
      : [`The store that was there is now ${keptAside}; delete it once all is well.`]),
    ...(erasedAgain === 0 ? [] : [`Erased again, because it was asked since the backup: ${erasedAgain}.`]),
    ...(erasuresKnown || keptAside === null
      ? []
      : [
          "The replaced store could not tell who was erased since the backup: look through your notes and erase them again.",
        ]),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
}
