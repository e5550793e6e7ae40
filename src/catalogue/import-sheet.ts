import { streamTable } from "./import-stream.ts";
import {
  type Columns,
  headerLine,
  type Row,
  type RowError,
  rowLine,
  showCells,
  type TableDefinition,
} from "./table.ts";

/** One row of a sheet as read; see `TableEvent`. */
export type SheetEvent<Item> =
  | { readonly kind: "row"; readonly line: number; readonly item: Item }
  | { readonly kind: "fault"; readonly key: string; readonly errors: readonly RowError[] }
  | { readonly kind: "broken"; readonly errors: readonly RowError[] };

/** A kind of table the shop keeps as CSV: how its rows become items and items rows. */
export interface Sheet<Item> {
  readonly read: (text: AsyncIterable<string>) => AsyncGenerator<SheetEvent<Item>>;
  /** What names the item, as written. Two are the same whatever their case. */
  readonly nameOf: (item: Item) => string;
  /** What stands in each column for an item, as text; "" where nothing is stated. */
  readonly cellsOf: (item: Item) => Readonly<Record<string, string>>;
  readonly header: string;
  /** The item as one line of CSV, line break included. */
  readonly line: (item: Item) => string;
}

/** The form in which two names of one item are equal. */
export const keyOf = (name: string): string => name.toLowerCase();

export function sheetOf<C extends Columns, Item>(
  table: TableDefinition<C>,
  toItem: (row: Row<C>) => Item | undefined,
  toRow: (item: Item) => Row<C>,
): Sheet<Item> {
  const names = Object.keys(table.columns);
  const texts = (item: Item) => showCells(table.columns, toRow(item));
  const cellsOf = (item: Item) => Object.fromEntries(texts(item).map((text, at) => [names[at] ?? "", text]));
  return {
    read: async function* (text) {
      for await (const event of streamTable(text, table)) {
        if (event.kind !== "row") yield event;
        else {
          const item = toItem(event.values);
          if (item !== undefined) yield { kind: "row", line: event.line, item };
        }
      }
    },
    nameOf: (item) => String(toRow(item)[table.key] ?? ""),
    cellsOf,
    header: headerLine(table.columns),
    line: (item) => rowLine(texts(item)),
  };
}
