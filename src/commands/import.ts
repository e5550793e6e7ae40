import { readConfig } from "../config.ts";
import { auditNameplate } from "../nameplate/audit.ts";
import { readMotorsFile } from "../stock-files.ts";
import { openSqliteStore } from "../store/sqlite.ts";

export interface ImportOptions {
  readonly write?: boolean;
  readonly store?: string;
}

/** Checks a stock CSV and, with `write`, makes it the stock: all or nothing. */
export async function runImport(
  file: string,
  { write = false, store: storeFile }: ImportOptions,
): Promise<void> {
  const motors = readMotorsFile(file);
  const doubtful = motors.filter(({ label }) => auditNameplate(label).length > 0);
  process.stdout.write(`${motors.length} motors read.\n`);
  for (const { sku, label } of doubtful) {
    const checks = auditNameplate(label).map(({ check, ratings }) => `${check} (${ratings.join(", ")})`);
    process.stdout.write(`Doubtful: ${sku}: ${checks.join("; ")}\n`);
  }
  if (!write) {
    process.stdout.write("Nothing written. Add --write to make this the stock.\n");
    return;
  }
  const store = openSqliteStore(storeFile ?? readConfig().storeFile);
  try {
    await store.replaceStock(motors, new Date().toISOString().slice(0, 10));
  } finally {
    await store.close();
  }
  process.stdout.write("Written. The next start uses it.\n");
}
