import { count, horsepower, names, oneOf, positive, price, text } from "./cells.ts";
import { type Sheet, sheetOf } from "./import-sheet.ts";
import type { Row, RowError, TableDefinition } from "./table.ts";
import { readTable, writeTable } from "./table.ts";
import { type Spare, spareKinds } from "./types.ts";

/**
 * The table of spares, one row a part: `kind` is one of `spareKinds`; `fits` lists pump models separated by
 * `|`; `total_hp` (impellers, diffusers) is the motor they are made for; `capacitor_uf` (capacitors) in
 * microfarad.
 */
const columns = {
  sku: { ...text, expected: "a stock number" },
  kind: oneOf(spareKinds),
  description: text,
  fits: names,
  total_hp: horsepower,
  capacitor_uf: positive,
  price_usd: price,
  in_stock: count,
} as const;

const table: TableDefinition<typeof columns> = {
  columns,
  key: "sku",
  required: ["kind", "fits"],
  filled: ["kind"],
};

/** Reads the table of spares. Never throws on its text; rows with a fault are left out. */
export function parseSpares(csvText: string): { spares: readonly Spare[]; errors: readonly RowError[] } {
  const { rows, errors } = readTable(csvText, table);
  return { spares: rows.flatMap(({ values }) => toSpare(values) ?? []), errors };
}

/** Writes spares as the table `parseSpares` reads. */
export function formatSpares(spares: Iterable<Spare>): string {
  return writeTable(columns, Array.from(spares, toRow));
}

/** The table for imports and exports. */
export const spareSheet: Sheet<Spare> = sheetOf(table, toSpare, toRow);

function toSpare(row: Row<typeof columns>): Spare | undefined {
  // The table reports a row with one of these empty; here the types learn it.
  if (!row.sku || !row.kind) return undefined;
  return {
    sku: row.sku,
    kind: row.kind,
    description: row.description ?? "",
    fits: row.fits ?? [],
    totalHp: row.total_hp,
    capacitorUf: row.capacitor_uf,
    priceUsd: row.price_usd,
    inStock: row.in_stock ?? 0,
  };
}

function toRow(spare: Spare): Row<typeof columns> {
  return {
    sku: spare.sku,
    kind: spare.kind,
    description: spare.description,
    fits: [...spare.fits],
    total_hp: spare.totalHp,
    capacitor_uf: spare.capacitorUf,
    price_usd: spare.priceUsd,
    in_stock: spare.inStock,
  };
}
