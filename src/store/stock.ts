/** The tables a shop imports. */
export const stockKinds = ["motors", "pumps", "spares"] as const;
export type StockKind = (typeof stockKinds)[number];

/** One import of one table. */
export interface StockImport {
  readonly kind: StockKind;
  /** Where it came from: a file's name. */
  readonly source: string;
  /** ISO instant. */
  readonly at: string;
  /** Day that prices and stock are of, ISO `YYYY-MM-DD`. */
  readonly importedOn: string;
  readonly rows: number;
}

/** A row on its way in. Rows with the same key are the same thing; `item` is JSON the store does not look into. */
export interface StockRow {
  readonly key: string;
  readonly item: string;
}

/** A table on its way in: none of it counts before it is written, and nobody waits for it until then. */
export interface StockDraft {
  /** Adds rows in order; gives what now stands under each of their keys. Throws when a key comes twice. */
  readonly add: (rows: readonly StockRow[]) => Promise<readonly (string | undefined)[]>;
  /** What stands now and is not in the draft: how many, and the first `limit` of it in order. */
  readonly gone: (limit: number) => Promise<{ readonly count: number; readonly rows: readonly StockRow[] }>;
  /** Makes the draft the table. False, and nothing changed, when somebody imported since it was begun. */
  readonly write: (from: Pick<StockImport, "source" | "at" | "importedOn">) => Promise<boolean>;
  readonly discard: () => Promise<void>;
}

/** What the shop has. The import before the current one is kept, so that it can be taken back. */
export interface StockStore {
  /** Changes whenever a table does, whoever changed it. */
  readonly version: () => Promise<number>;
  /** The import a table stands as; undefined before the first. */
  readonly current: (kind: StockKind) => Promise<StockImport | undefined>;
  /** The items of a table as JSON, in the order they were imported, in portions. */
  readonly items: (kind: StockKind) => Promise<AsyncIterable<readonly string[]>>;
  readonly draft: (kind: StockKind) => Promise<StockDraft>;
  /** Takes the last import back; undefined, and nothing changed, when there is none before it. */
  readonly undo: (
    kind: StockKind,
  ) => Promise<{ readonly taken: StockImport; readonly now: StockImport } | undefined>;
}
