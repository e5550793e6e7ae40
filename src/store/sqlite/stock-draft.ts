import type { StockDraft, StockImport, StockKind, StockRow } from "../stock.ts";
import type { Db } from "./database.ts";
import type { Portions } from "./stock-portions.ts";

/** The current import of a table and the one before it. */
const KEPT_IMPORTS = 2;

/**
 * Drafts wait in temporary tables, which lock nothing. They are written in portions that count for nothing until one
 * short transaction makes them the table.
 */
export function draftsOf(db: Db, portions: Portions): (kind: StockKind) => Promise<StockDraft> {
  let count = 0;
  return async (kind) => openDraft(db, portions, kind, `draft_${++count}`);
}

function openDraft(db: Db, portions: Portions, kind: StockKind, name: string): StockDraft {
  db.exec(
    `CREATE TEMP TABLE ${name} (position INTEGER PRIMARY KEY, key TEXT NOT NULL UNIQUE, item TEXT NOT NULL)`,
  );
  const newest = db.prepare("SELECT max(id) FROM stock_imports WHERE kind = ? AND state = 'written'").pluck();
  const base = newest.get(kind) as number | null;
  const addRow = db.prepare(`INSERT INTO temp.${name} (key, item) VALUES (?, ?)`);
  const standing = db.prepare("SELECT item FROM stock_rows WHERE import_id = ? AND key = ?").pluck();
  const notInDraft = `FROM stock_rows WHERE import_id = ? AND key NOT IN (SELECT key FROM temp.${name})`;
  const countGone = db.prepare(`SELECT count(*) ${notInDraft}`).pluck();
  const gone = db.prepare(`SELECT key, item ${notInDraft} ORDER BY position LIMIT ?`);
  const addImport = db
    .prepare(
      `INSERT INTO stock_imports (kind, source, at, imported_on, rows, state)
       VALUES (?, ?, ?, ?, (SELECT count(*) FROM temp.${name}), 'coming') RETURNING id`,
    )
    .pluck();
  const setState = db.prepare("UPDATE stock_imports SET state = ? WHERE id = ?");
  const drop = db.prepare(
    `UPDATE stock_imports SET state = 'going' WHERE kind = $kind AND state = 'written' AND id NOT IN
       (SELECT id FROM stock_imports WHERE kind = $kind AND state = 'written' ORDER BY id DESC LIMIT ${KEPT_IMPORTS})`,
  );
  const changed = db.prepare("UPDATE counters SET value = value + 1 WHERE name = 'stock'");

  const add = db.transaction((rows: readonly StockRow[]) =>
    rows.map(({ key, item }) => {
      addRow.run(key, item);
      return base === null ? undefined : (standing.get(base, key) as string | undefined);
    }),
  );
  const overtaken = () => newest.get(kind) !== base;
  const finish = db.transaction((id: number) => {
    if (overtaken()) return false;
    setState.run("written", id);
    drop.run({ kind });
    changed.run();
    return true;
  });
  const write = async ({ source, at, importedOn }: Pick<StockImport, "source" | "at" | "importedOn">) => {
    if (overtaken()) return false;
    const id = addImport.get(kind, source, at, importedOn) as number;
    let written = false;
    try {
      written = (await portions.fill(id, `temp.${name}`, overtaken)) && finish.immediate(id);
    } finally {
      if (!written) setState.run("going", id);
    }
    await portions.clearAway(kind);
    return written;
  };
  return {
    add: async (rows) => add(rows),
    gone: async (limit) => ({
      count: base === null ? 0 : (countGone.get(base) as number),
      rows: base === null ? [] : (gone.all(base, limit) as StockRow[]),
    }),
    write,
    discard: async () => {
      db.exec(`DROP TABLE IF EXISTS temp.${name}`);
    },
  };
}
