import type { Cell } from "./cells.ts";
import { horsepower, names, oneOf, text } from "./cells.ts";
import { type Sheet, sheetOf } from "./import-sheet.ts";
import type { Row, RowError, TableDefinition } from "./table.ts";
import { readTable, writeTable } from "./table.ts";
import type { Pump } from "./types.ts";

const frameBody: Cell<48 | 56> = {
  expected: "48 or 56",
  read: (cell) => (cell === "48" ? 48 : cell === "56" ? 56 : undefined),
  show: String,
};

/**
 * The table of pumps (wet ends), one row a model:
 * `flange` square, round or through-bolt and `shaft` threaded or keyed: what the motor must have;
 * `total_hp`: what the impeller in it takes; `frame_body`: 48 or 56, the body its base is made for;
 * `seal_sku` to `diffuser_sku`: rows of the spares table; `aliases`: other spellings, separated by `|`.
 */
const columns = {
  model: { ...text, expected: "a model name" },
  maker: text,
  description: text,
  flange: oneOf(["square", "round", "through-bolt"]),
  shaft: oneOf(["threaded", "keyed"]),
  total_hp: horsepower,
  frame_body: frameBody,
  seal_sku: text,
  gasket_sku: text,
  impeller_sku: text,
  diffuser_sku: text,
  aliases: names,
} as const;

const table: TableDefinition<typeof columns> = {
  columns,
  key: "model",
  required: ["flange", "shaft", "total_hp"],
  filled: ["flange", "shaft", "total_hp"],
};

/** Reads the table of pumps. Never throws on its text; rows with a fault are left out. */
export function parsePumps(csvText: string): { pumps: readonly Pump[]; errors: readonly RowError[] } {
  const { rows, errors } = readTable(csvText, table);
  return { pumps: rows.flatMap(({ values }) => toPump(values) ?? []), errors };
}

/** Writes pumps as the table `parsePumps` reads. */
export function formatPumps(pumps: Iterable<Pump>): string {
  return writeTable(columns, Array.from(pumps, toRow));
}

/** The table for imports and exports. */
export const pumpSheet: Sheet<Pump> = sheetOf(table, toPump, toRow);

function toPump(row: Row<typeof columns>): Pump | undefined {
  const { model, flange, shaft, total_hp: totalHp } = row;
  // The table reports a row with one of these empty; here the types learn it.
  if (!model || !flange || !shaft || !totalHp) return undefined;
  return {
    model,
    maker: row.maker ?? "",
    description: row.description ?? "",
    flange,
    shaft,
    totalHp,
    frameBody: row.frame_body,
    sealSku: row.seal_sku,
    gasketSku: row.gasket_sku,
    impellerSku: row.impeller_sku,
    diffuserSku: row.diffuser_sku,
    aliases: row.aliases ?? [],
  };
}

function toRow(pump: Pump): Row<typeof columns> {
  return {
    model: pump.model,
    maker: pump.maker,
    description: pump.description,
    flange: pump.flange,
    shaft: pump.shaft,
    total_hp: pump.totalHp,
    frame_body: pump.frameBody,
    seal_sku: pump.sealSku,
    gasket_sku: pump.gasketSku,
    impeller_sku: pump.impellerSku,
    diffuser_sku: pump.diffuserSku,
    aliases: [...pump.aliases],
  };
}
