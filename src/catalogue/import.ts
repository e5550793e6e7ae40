import type { StockMotor } from "../matching/types.ts";
import { auditNameplate } from "../nameplate/audit.ts";
import type { Doubt } from "../nameplate/reading.ts";
import type { StockDraft, StockKind } from "../store/stock.ts";
import { keyOf, type Sheet } from "./import-sheet.ts";
import { motorSheet } from "./motors-csv.ts";
import { pumpSheet } from "./pumps-csv.ts";
import { spareSheet } from "./spares-csv.ts";
import type { RowError } from "./table.ts";
import type { Pump, Spare } from "./types.ts";

/** What each table holds. */
export interface StockItems {
  readonly motors: StockMotor;
  readonly pumps: Pump;
  readonly spares: Spare;
}

export const sheets: { readonly [K in StockKind]: Sheet<StockItems[K]> } = {
  motors: motorSheet,
  pumps: pumpSheet,
  spares: spareSheet,
};

/** How many there are, and the first of them. */
export interface Listed<T> {
  readonly count: number;
  readonly first: readonly T[];
}

export interface ChangedRow {
  readonly name: string;
  readonly columns: readonly { readonly column: string; readonly was: string; readonly is: string }[];
}

export interface DoubtfulRow {
  readonly line: number;
  readonly name: string;
  readonly doubts: readonly Doubt[];
  readonly cells: Readonly<Record<string, string>>;
}

/** What an import would do, or did. */
export interface ImportFindings {
  /** Rows that can be used. */
  readonly rows: number;
  readonly added: Listed<string>;
  readonly changed: Listed<ChangedRow>;
  /** Column -> rows in which it changed. */
  readonly changedColumns: Readonly<Record<string, number>>;
  /** What stands now and would go; `bad` when its row is in the file and cannot be used. */
  readonly gone: Listed<{ readonly name: string; readonly bad: boolean }>;
  readonly doubtful: Listed<DoubtfulRow>;
  readonly faults: Listed<RowError>;
  /** The table could not be read to its end: leaving bad rows out does not help. */
  readonly broken: boolean;
}

export interface ImportOptions {
  /** Of each kind of finding, so many are kept. */
  readonly listed: number;
  /** Told now and then how many rows were read. */
  readonly onProgress?: ((rows: number) => void) | undefined;
}

const BATCH = 500;

/** Reads a table into a draft, row by row, and says what it changes. Throws what reading the file throws. */
export async function importTable<K extends StockKind>(
  kind: K,
  text: AsyncIterable<string>,
  draft: StockDraft,
  { listed, onProgress }: ImportOptions,
): Promise<ImportFindings> {
  const sheet: Sheet<StockItems[K]> = sheets[kind];
  const added = listOf<string>(listed);
  const changed = listOf<ChangedRow>(listed);
  const doubtful = listOf<DoubtfulRow>(listed);
  const faults = listOf<RowError>(listed);
  const changedColumns: Record<string, number> = {};
  const badKeys = new Set<string>();
  let broken = false;
  let rows = 0;

  let batch: { readonly key: string; readonly item: string; readonly value: StockItems[K] }[] = [];
  const pass = async () => {
    const before = await draft.add(batch.map(({ key, item }) => ({ key, item })));
    for (const [at, { item, value }] of batch.entries()) {
      const was = before[at];
      if (was === undefined) added.add(sheet.nameOf(value));
      else if (was !== item) {
        const row = changedRow(sheet, JSON.parse(was) as StockItems[K], value);
        if (row.columns.length > 0) changed.add(row);
        for (const { column } of row.columns) changedColumns[column] = (changedColumns[column] ?? 0) + 1;
      }
    }
    rows += batch.length;
    batch = [];
    onProgress?.(rows);
  };

  for await (const event of sheet.read(text)) {
    if (event.kind !== "row") {
      for (const error of event.errors) faults.add(error);
      if (event.kind === "fault") badKeys.add(keyOf(event.key));
      else broken = true;
      continue;
    }
    const name = sheet.nameOf(event.item);
    const doubts = doubtsOf(event.item);
    if (doubts.length > 0) {
      doubtful.add({ line: event.line, name, doubts, cells: sheet.cellsOf(event.item) });
    }
    batch.push({ key: keyOf(name), item: JSON.stringify(event.item), value: event.item });
    if (batch.length === BATCH) await pass();
  }
  await pass();

  const gone = await draft.gone(listed);
  return {
    rows,
    added,
    changed,
    changedColumns,
    gone: {
      count: gone.count,
      first: gone.rows.map(({ key, item }) => ({
        name: sheet.nameOf(JSON.parse(item) as StockItems[K]),
        bad: badKeys.has(key),
      })),
    },
    doubtful,
    faults,
    broken,
  };
}

/** Only a motor's label can contradict itself. */
function doubtsOf(item: StockItems[StockKind]): readonly Doubt[] {
  return "label" in item ? auditNameplate(item.label) : [];
}

function changedRow<Item>(sheet: Sheet<Item>, before: Item, after: Item): ChangedRow {
  const [were, are] = [sheet.cellsOf(before), sheet.cellsOf(after)];
  const columns = Object.keys(are)
    .map((column) => ({ column, was: were[column] ?? "", is: are[column] ?? "" }))
    .filter(({ was, is }) => was !== is);
  return { name: sheet.nameOf(after), columns };
}

function listOf<T>(limit: number) {
  const first: T[] = [];
  return {
    first,
    count: 0,
    add(one: T) {
      this.count++;
      if (first.length < limit) first.push(one);
    },
  };
}
