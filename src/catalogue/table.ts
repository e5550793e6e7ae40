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

export type Columns = Readonly<Record<string, Cell<unknown>>>;

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

/** The cells of one row as they stand in the text, trimmed. */
export interface RawRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/** What one record of a table turns out to be. */
export type TableEvent<C extends Columns> =
  | { readonly kind: "row"; readonly line: number; readonly values: Row<C> }
  /** This row, or a column of the header, cannot be used; all else can. `key` names the row, "" where it has none. */
  | { readonly kind: "fault"; readonly key: string; readonly errors: readonly RowError[] }
  /** Nothing more of the table can be used. */
  | { readonly kind: "broken"; readonly errors: readonly RowError[] };

/**
 * Reads a table with a header row. Separators `,` `;` and tab, a byte-order mark, quoted cells, headers in
 * any order and case. Faults are collected, never thrown; rows with a fault are left out of `rows`.
 */
export function readTable<C extends Columns>(csvText: string, table: TableDefinition<C>): TableReading<C> {
  const rows: { line: number; values: Row<C> }[] = [];
  const errors: RowError[] = [];
  const reader = tableReader(table);
  const take = (event: TableEvent<C> | undefined) => {
    if (event?.kind === "row") rows.push(event);
    else if (event) errors.push(...event.errors);
  };
  const unclosed = splitCells(csvText, (record) => take(reader.take(record)));
  // A quote that never ends may have swallowed any number of rows: none of them is trusted.
  if (unclosed) return { rows: [], errors: [unclosed] };
  take(reader.end());
  return { rows, errors };
}

/** Takes the records of one table one after the other, the header first. */
export interface TableReader<C extends Columns> {
  /** Undefined for a blank row, a header without fault, and all that follows on a broken table. */
  readonly take: (record: RawRecord) => TableEvent<C> | undefined;
  /** What is missing at the end of the text, if anything. */
  readonly end: () => TableEvent<C> | undefined;
}

export function tableReader<C extends Columns>(table: TableDefinition<C>): TableReader<C> {
  let order: readonly (string | undefined)[] | null = null;
  let broken = false;
  const firstLine = new Map<string, number>();

  const takeRow = (record: RawRecord, columns: readonly (string | undefined)[]): TableEvent<C> => {
    const { values, faults } = readRow(record, columns, table);
    const key = keyOf(record, columns, table);
    const seenOn = key === "" ? undefined : firstLine.get(key.toLowerCase());
    if (seenOn !== undefined) {
      faults.push(fault(record.line, table.key, key, `a value not used before (line ${seenOn} has it)`));
    } else {
      firstLine.set(key.toLowerCase(), record.line);
    }
    return faults.length === 0
      ? { kind: "row", line: record.line, values }
      : { kind: "fault", key, errors: faults };
  };

  return {
    take: (record) => {
      if (broken || record.cells.every((cell) => cell === "")) return undefined;
      if (order !== null) return takeRow(record, order);
      const header = readHeader(record, table);
      order = header.order;
      broken = !header.usable;
      if (broken) return { kind: "broken", errors: header.errors };
      return header.errors.length === 0 ? undefined : { kind: "fault", key: "", errors: header.errors };
    },
    end: () => (order === null ? { kind: "broken", errors: [fault(1, "", "", "a header row")] } : undefined),
  };
}

/** Writes rows back as comma-separated text that `readTable` reads to the same values. */
export function writeTable<C extends Columns>(columns: C, rows: Iterable<Row<C>>): string {
  const lines = [headerLine(columns)];
  for (const row of rows) lines.push(rowLine(showCells(columns, row)));
  return lines.join("");
}

/** The header row, line break included. */
export function headerLine(columns: Columns): string {
  return rowLine(Object.keys(columns));
}

/** The texts of a row's cells, in the order of the columns; "" where nothing is stated. */
export function showCells<C extends Columns>(columns: C, row: Row<C>): readonly string[] {
  return Object.entries(columns).map(([name, cell]) => {
    const value = row[name];
    return value === undefined ? "" : cell.show(value);
  });
}

/** One row as comma-separated text, line break included. */
export function rowLine(cells: readonly string[]): string {
  return `${cells.map(quoted).join(",")}\n`;
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

/** Hands every record on; gives the fault when a quoted cell never ends. */
function splitCells(csvText: string, take: (record: RawRecord) => void): RowError | undefined {
  // The parser counts a CR LF inside quotes as two lines: one kind of line break keeps line numbers true.
  const text = csvText.replaceAll(/\r\n?/g, "\n");
  let line = 1;
  try {
    parse(text, {
      ...parserOptions(delimiterOf(text)),
      on_record: (record: string[], { lines }: { readonly lines: number }) => {
        take({ line, cells: record.map((cell) => cell.trim()) });
        line = lines + 1;
        return null;
      },
    });
    return undefined;
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    // The parser knows where it gave up; a person needs the line where the broken row starts.
    return unclosedQuote(line, (text.split("\n")[line - 1] ?? "").slice(0, 60));
  }
}

/** How cells are told apart. */
export function parserOptions(delimiter: string) {
  return {
    bom: true,
    delimiter,
    relax_column_count: true,
    relax_quotes: true,
    // Trimming would swallow the tabs between empty cells; every cell is trimmed afterwards.
    trim: delimiter !== "\t",
  };
}

/** The fault of a row whose quoted cell never ends; `found` is how that row begins. */
export function unclosedQuote(line: number, found: string): RowError {
  return fault(line, "", found, "each quoted cell to end with a double quote before the separator");
}

/** The separator a text's header row uses most. */
export function delimiterOf(text: string): string {
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
