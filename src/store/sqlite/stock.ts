import type { StockImport, StockKind, StockStore } from "../stock.ts";
import type { Db } from "./database.ts";
import { draftsOf } from "./stock-draft.ts";
import { portionsOf } from "./stock-portions.ts";

const PORTION = 1000;

/** The imported tables. */
export function stockOf(db: Db): StockStore {
  const version = db.prepare("SELECT value FROM counters WHERE name = 'stock'").pluck();
  const changed = db.prepare("UPDATE counters SET value = value + 1 WHERE name = 'stock'");
  const newest = db.prepare(
    `SELECT id, kind, source, at, imported_on AS importedOn, rows
     FROM stock_imports WHERE kind = ? AND state = 'written' ORDER BY id DESC LIMIT 2`,
  );
  const items = db
    .prepare("SELECT item FROM stock_rows WHERE import_id = ? AND position > ? ORDER BY position LIMIT ?")
    .pluck();
  const remove = db.prepare("UPDATE stock_imports SET state = 'going' WHERE id = ?");
  const rows = portionsOf(db);

  type Row = StockImport & { readonly id: number };
  const latest = (kind: StockKind) => newest.all(kind) as readonly Row[];
  const undo = db.transaction((kind: StockKind) => {
    const [last, before] = latest(kind);
    if (last === undefined || before === undefined) return undefined;
    remove.run(last.id);
    changed.run();
    return { taken: importOf(last), now: importOf(before) };
  });

  async function* portions(last: Row | undefined): AsyncGenerator<readonly string[]> {
    if (last === undefined) return;
    for (let after = 0; ; after += PORTION) {
      const portion = items.all(last.id, after, PORTION) as string[];
      if (portion.length > 0) yield portion;
      if (portion.length < PORTION) return;
    }
  }

  return {
    version: async () => version.get() as number,
    current: async (kind) => {
      const [last] = latest(kind);
      return last && importOf(last);
    },
    items: async (kind) => portions(latest(kind)[0]),
    draft: draftsOf(db, rows),
    undo: async (kind) => {
      const undone = undo.immediate(kind);
      await rows.clearAway(kind);
      return undone;
    },
  };
}

const importOf = ({ kind, source, at, importedOn, rows }: StockImport): StockImport => ({
  kind,
  source,
  at,
  importedOn,
  rows,
});
