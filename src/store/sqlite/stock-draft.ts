import type { StockDraft, StockImport, StockKind, StockRow } from "../stock.ts";
import type { Db } from "./database.ts";

/** The current import of a table and the one before it. */
const KEPT_IMPORTS = 2;

/**
 * Drafts wait in temporary tables, which lock nothing: whoever else uses the file goes on until the one short
 * transaction that writes.
 */
export function draftsOf(db: Db): (kind: StockKind) => Promise<StockDraft> {
  let count = 0;
  return async (kind) => openDraft(db, kind, `draft_${++count}`);
}

function openDraft(db: Db, kind: StockKind, name: string): StockDraft {
  db.exec(
    `CREATE TEMP TABLE ${name} (position INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE, item TEXT NOT NULL)`,
  );
  const newest = db.prepare("SELECT max(id) FROM stock_imports WHERE kind = ?").pluck();
  const base = newest.get(kind) as number | null;
  const addRow = db.prepare(`INSERT INTO temp.${name} (key, item) VALUES (?, ?)`);
  const standing = db.prepare("SELECT item FROM stock_rows WHERE import_id = ? AND key = ?").pluck();
  const notInDraft = `FROM stock_rows WHERE import_id = ? AND key NOT IN (SELECT key FROM temp.${name})`;
  const countGone = db.prepare(`SELECT count(*) ${notInDraft}`).pluck();
  const gone = db.prepare(`SELECT key, item ${notInDraft} ORDER BY position LIMIT ?`);
  const addImport = db
    .prepare(
      `INSERT INTO stock_imports (kind, source, at, imported_on, rows)
       VALUES (?, ?, ?, ?, (SELECT count(*) FROM temp.${name})) RETURNING id`,
    )
    .pluck();
  const takeRows = db.prepare(
    `INSERT INTO stock_rows (import_id, position, key, item)
     SELECT ?, position, key, item FROM temp.${name} ORDER BY position`,
  );
  const drop = db.prepare(
    `DELETE FROM stock_imports WHERE kind = $kind AND id NOT IN
       (SELECT id FROM stock_imports WHERE kind = $kind ORDER BY id DESC LIMIT ${KEPT_IMPORTS})`,
  );
  const changed = db.prepare("UPDATE counters SET value = value + 1 WHERE name = 'stock'");

  const add = db.transaction((rows: readonly StockRow[]) =>
    rows.map(({ key, item }) => {
      addRow.run(key, item);
      return base === null ? undefined : (standing.get(base, key) as string | undefined);
    }),
  );
  const write = db.transaction(
    ({ source, at, importedOn }: Pick<StockImport, "source" | "at" | "importedOn">) => {
      if (newest.get(kind) !== base) return false;
      takeRows.run(addImport.get(kind, source, at, importedOn));
      drop.run({ kind });
      changed.run();
      return true;
    },
  );
  return {
    add: async (rows) => add(rows),
    gone: async (limit) => ({
      count: base === null ? 0 : (countGone.get(base) as number),
      rows: base === null ? [] : (gone.all(base, limit) as StockRow[]),
    }),
    write: async (from) => write.immediate(from),
    discard: async () => {
      db.exec(`DROP TABLE IF EXISTS temp.${name}`);
    },
  };
}
