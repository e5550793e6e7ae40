import { CsvError, parse } from "csv-parse/sync";
import type { Cell } from "./cells.ts";

/** Something in a table that cannot be used. Line 1 is the header row. */
export interface RowError {
  readonly line: number;
  /** Header name of the column; empty when the whole row is meant. */
  readonly column: string;
  /** What stands there now. */
  readonly value: string;
  readonly expected: string;
}

type Columns = Readonly<Record<string, Cell<unknown>>>;

/** The values of one row; undefined is an empty cell. */
export type Row<C extends Columns> = {
  readonly [K in keyof C]: (C[K] extends Cell<infer Value> ? Value : never) | undefined;
};

export interface TableDefinition<C extends Columns> {
  /** Header name -> how its cells are read, in the order they are written. */
  readonly columns: C;
  /** The column that names a row: never empty, no value twice (ignoring case). */
  readonly key: keyof C & string;
  /** Further columns that must be there, though single cells may be empty. */
  readonly required: readonly (keyof C & string)[];
  /** Columns whose cells may not be empty, besides the key. */
  readonly filled?: readonly (keyof C & string)[];
}

export interface TableReading<C extends Columns> {
  /** The rows without a fault, each with the line it starts on. */
  readonly rows: readonly { readonly line: number; readonly values: Row<C> }[];
  readonly errors: readonly RowError[];
}

interface RawRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Reads a table with a header row. Separators `,` `;` and tab, a byte-order mark, quoted cells, headers in
 * any order and case. Faults are collected, never thrown; rows with a fault are left out of `rows`.
 */
export function readTable<C extends Columns>(csvText: string, table: TableDefinition<C>): TableReading<C> {
  const raw = splitCells(csvText);
  if ("fault" in raw) return { rows: [], errors: [raw.fault] };
  const [header, ...body] = raw.records;
  if (!header) return { rows: [], errors: [fault(1, "", "", "a header row")] };

  const { order, errors, usable } = readHeader(header, table);
  if (!usable) return { rows: [], errors };

  const rows: { line: number; values: Row<C> }[] = [];
  const firstLine = new Map<string, number>();
  for (const record of body) {
    const { values, faults } = readRow(record, order, table);
    const key = keyOf(record, order, table);
    const seenOn = key === "" ? undefined : firstLine.get(key.toLowerCase());
    if (seenOn !== undefined) {
      faults.push(fault(record.line, table.key, key, `a value not used before (line ${seenOn} has it)`));
    } else {
      firstLine.set(key.toLowerCase(), record.line);
    }
    if (faults.length === 0) rows.push({ line: record.line, values });
    errors.push(...faults);
  }
  return { rows, errors };
}

/** Writes rows back as comma-separated text that `readTable` reads to the same values. */
export function writeTable<C extends Columns>(columns: C, rows: Iterable<Row<C>>): string {
  const lines = [Object.keys(columns).join(",")];
  for (const row of rows) {
    const cells = Object.entries(columns).map(([name, cell]) => {
      const value = row[name];
      return value === undefined ? "" : quoted(cell.show(value));
    });
    lines.push(cells.join(","));
  }
  return `${lines.join("\n")}\n`;
}

/** The fault as one line for a person: `Line 14, column volts: "23O" found, expected ...`. */
export function showRowError({ line, column, value, expected }: RowError): string {
  const place = column === "" ? `Line ${line}` : `Line ${line}, column ${column}`;
  const found = value === "" ? "nothing found" : `"${value}" found`;
  return `${place}: ${found}, expected ${expected}.`;
}

function readHeader<C extends Columns>(header: RawRecord, { columns, key, required }: TableDefinition<C>) {
  const order: (string | undefined)[] = [];
  const errors: RowError[] = [];
  for (const cell of header.cells) {
    const name = cell.toLowerCase().replaceAll(/[\s-]+/g, "_");
    const known = Object.hasOwn(columns, name) && !order.includes(name);
    order.push(known ? name : undefined);
    if (order.indexOf(name) === -1) {
      const names = Object.keys(columns).join(", ");
      errors.push(fault(header.line, cell, cell, `one of the columns ${names}`));
    } else if (!known) {
      errors.push(fault(header.line, name, cell, "each column once"));
    }
  }
  const missing = [key, ...required].filter((name) => !order.includes(name));
  errors.push(...missing.map((name) => fault(header.line, name, "", `a column named ${name}`)));
  return { order, errors, usable: missing.length === 0 };
}

function readRow<C extends Columns>(
  record: RawRecord,
  order: readonly (string | undefined)[],
  { columns, key, filled = [] }: TableDefinition<C>,
): { values: Row<C>; faults: RowError[] } {
  const values: Record<string, unknown> = {};
  const faults: RowError[] = [];
  if (record.cells.length !== order.length) {
    const found = `${record.cells.length} cells`;
    faults.push(fault(record.line, "", found, `${order.length} cells, as in the header row`));
  }
  for (const [index, name] of order.entries()) {
    const cell = name === undefined ? undefined : columns[name];
    const text = record.cells[index] ?? "";
    if (name === undefined || cell === undefined) continue;
    if (text === "") {
      if (name === key || filled.includes(name)) faults.push(fault(record.line, name, "", cell.expected));
      continue;
    }
    const value = cell.read(text);
    if (value === undefined) faults.push(fault(record.line, name, text, cell.expected));
    else values[name] = value;
  }
  return { values: values as Row<C>, faults };
}

function keyOf<C extends Columns>(
  record: RawRecord,
  order: readonly (string | undefined)[],
  { key }: TableDefinition<C>,
): string {
  return record.cells[order.indexOf(key)] ?? "";
}

function splitCells(csvText: string): { records: RawRecord[] } | { fault: RowError } {
  // The parser counts a CR LF inside quotes as two lines: one kind of line break keeps line numbers true.
  const text = csvText.replaceAll(/\r\n?/g, "\n");
  const delimiter = delimiterOf(text);
  const records: RawRecord[] = [];
  let line = 1;
  const collect = (record: string[], { lines }: { readonly lines: number }) => {
    records.push({ line, cells: record.map((cell) => cell.trim()) });
    line = lines + 1;
    return null;
  };
  try {
    parse(text, {
      bom: true,
      delimiter,
      on_record: collect,
      relax_column_count: true,
      relax_quotes: true,
      // Trimming would swallow the tabs between empty cells; every cell is trimmed above.
      trim: delimiter !== "\t",
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    // The parser knows where it gave up; a person needs the line where the broken row starts.
    const found = (text.split("\n")[line - 1] ?? "").slice(0, 60);
    return {
      fault: fault(line, "", found, "each quoted cell to end with a double quote before the separator"),
    };
  }
  return { records: records.filter(({ cells }) => cells.some((cell) => cell !== "")) };
}

function delimiterOf(text: string): string {
  const header = /[^\n]+/.exec(text)?.[0] ?? "";
  const uses = (mark: string) => header.split(mark).length;
  return [",", ";", "\t"].reduce((best, mark) => (uses(mark) > uses(best) ? mark : best));
}

function quoted(text: string): string {
  return /[",;\t\r\n]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
}

const fault = (line: number, column: string, value: string, expected: string): RowError => ({
  line,
  column,
  value,
  expected,
});
