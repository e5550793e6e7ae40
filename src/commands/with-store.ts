import { readConfig } from "../config.ts";
import { openSqliteStore } from "../store/sqlite.ts";
import type { Store } from "../store/store.ts";

/** Runs `use` on a store that is closed whatever happens; without a file, on the configured one. */
export async function withStore<T>(file: string | undefined, use: (store: Store) => Promise<T>): Promise<T> {
  const store = openSqliteStore(file ?? readConfig().storeFile);
  try {
    return await use(store);
  } finally {
    await store.close();
  }
}
