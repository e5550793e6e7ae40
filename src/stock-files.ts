import { createReadStream, readFileSync } from "node:fs";
import { join } from "node:path";
import { type ImportFindings, importTable, type StockItems, sheets } from "./catalogue/import.ts";
import { textOf } from "./catalogue/import-text.ts";
import { parseMotors, type RowError, showRowError } from "./catalogue/motors-csv.ts";
import { parsePumps } from "./catalogue/pumps-csv.ts";
import { parseSpares } from "./catalogue/spares-csv.ts";
import type { Pump, Spare } from "./catalogue/types.ts";
import { ContentError } from "./content.ts";
import type { StockMotor } from "./matching/types.ts";
import { type StockKind, stockKinds } from "./store/stock.ts";
import { type Store, StoreError } from "./store/store.ts";

/** Of many bad rows these are enough to see what is wrong. */
export const SHOWN_ERRORS = 10;

/** Reads a table file, all or nothing. Throws {@link ContentError} listing the rows that cannot be used. */
function readRows<T extends { readonly errors: readonly RowError[] }>(
  file: string,
  parse: (csv: string) => T,
): T {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (cause) {
    throw new ContentError(`${file}: this file cannot be read. Check the path.`, { cause });
  }
  const table = parse(text);
  if (table.errors.length > 0) throw badRows(file, table.errors, table.errors.length);
  return table;
}

/** The error that lists the first bad rows of a file. */
export function badRows(file: string, errors: readonly RowError[], count: number): ContentError {
  const shown = errors.slice(0, SHOWN_ERRORS).map((error) => `  ${showRowError(error)}`);
  const more = count > shown.length ? [`  … and ${count - shown.length} more`] : [];
  return new ContentError(
    [`${file}: nothing was taken from it, these rows need mending:`, ...shown, ...more].join("\n"),
  );
}

/** The motors of a catalogue CSV. Throws {@link ContentError}. */
export function readMotorsFile(file: string): readonly StockMotor[] {
  return readRows(file, parseMotors).motors;
}

/** Wet ends and spares from the data folder. Throws {@link ContentError}. */
export function readPumpsAndSpares(folder: string): { pumps: readonly Pump[]; spares: readonly Spare[] } {
  return {
    pumps: readRows(join(folder, "pumps.csv"), parsePumps).pumps,
    spares: readRows(join(folder, "spares.csv"), parseSpares).spares,
  };
}

export interface FileImport {
  /** Whether to write, once it is known what the file holds. */
  readonly write: (findings: ImportFindings) => boolean;
  /** ISO instant; its day is what prices and stock are dated with. */
  readonly at: string;
  readonly source: string;
  /** Of each kind of finding, so many are kept. */
  readonly listed: number;
  /** Told now and then how many rows were read, and how much of the file in bytes. */
  readonly onProgress?: (rows: number, bytes: number) => void;
}

/**
 * Reads a file into the store, all or nothing and never wholly in memory; gives what changed, or would. Throws
 * {@link ContentError} when the file cannot be read, {@link StoreError} when somebody imported meanwhile.
 */
export async function importFile(
  store: Store,
  kind: StockKind,
  file: string,
  { write, at, source, listed, onProgress }: FileImport,
): Promise<{ readonly findings: ImportFindings; readonly written: boolean }> {
  const draft = await store.stock.draft(kind);
  try {
    const stream = createReadStream(file);
    const findings = await importTable(kind, textOf(readable(stream, file)), draft, {
      listed,
      onProgress: onProgress && ((rows) => onProgress(rows, stream.bytesRead)),
    });
    if (!write(findings)) return { findings, written: false };
    if (!(await draft.write({ source, at, importedOn: at.slice(0, 10) }))) {
      throw new StoreError(
        "Somebody else imported while this file was read. Nothing was written; import again.",
      );
    }
    return { findings, written: true };
  } finally {
    await draft.discard();
  }
}

async function* readable(chunks: AsyncIterable<Uint8Array>, file: string): AsyncGenerator<Uint8Array> {
  try {
    yield* chunks;
  } catch (cause) {
    throw new ContentError(`${file}: this file cannot be read. Check the path.`, { cause });
  }
}

/** The items of a table as they stand in the store. */
export async function storedItems<K extends StockKind>(
  store: Store,
  kind: K,
): Promise<readonly StockItems[K][]> {
  const items: StockItems[K][] = [];
  for await (const portion of await store.stock.items(kind)) {
    for (const item of portion) items.push(JSON.parse(item) as StockItems[K]);
  }
  return items;
}

/** Gives a fresh store the tables of the data folder. Throws {@link ContentError} naming bad rows. */
export async function takeDemoStock(
  store: Store,
  folder: string,
  at: string,
  kinds: readonly StockKind[] = stockKinds,
): Promise<void> {
  for (const kind of kinds) {
    if (await store.stock.current(kind)) continue;
    const file = join(folder, `${kind}.csv`);
    const { findings } = await importFile(store, kind, file, {
      write: ({ faults }) => faults.count === 0,
      at,
      source: `${kind}.csv`,
      listed: SHOWN_ERRORS,
    });
    if (findings.faults.count > 0) throw badRows(file, findings.faults.first, findings.faults.count);
  }
}

/** The lines of a table as CSV, header first, portion by portion. */
export async function* exportLines<K extends StockKind>(store: Store, kind: K): AsyncGenerator<string> {
  const sheet = sheets[kind];
  yield sheet.header;
  for await (const portion of await store.stock.items(kind)) {
    yield portion.map((item) => sheet.line(JSON.parse(item) as StockItems[K])).join("");
  }
}
