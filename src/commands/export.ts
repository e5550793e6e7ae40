import { once } from "node:events";
import { exportLines } from "../stock-files.ts";
import { StoreError } from "../store/store.ts";
import { type KindOptions, kindOf } from "./import.ts";
import { withStore } from "./with-store.ts";

export interface ExportOptions extends KindOptions {
  readonly store?: string;
}

/** Writes a table as the CSV that `import` reads back to the same. */
export function runExport(options: ExportOptions): Promise<void> {
  const kind = kindOf(options);
  return withStore(options.store, async (store) => {
    if (!(await store.stock.current(kind))) {
      throw new StoreError(
        `No ${kind} are in this store yet. Import some, or start the desk once: it takes the demo's.`,
      );
    }
    for await (const lines of exportLines(store, kind)) {
      if (!process.stdout.write(lines)) await once(process.stdout, "drain");
    }
  });
}
