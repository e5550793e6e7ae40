import type { StockKind } from "../stock.ts";
import type { Db } from "./database.ts";

/** Small enough that whoever else writes waits a few dozen milliseconds for it. */
const ROWS = 1000;
/** The file is left alone between portions as long as one took, within these bounds. */
const PAUSE_MS = { least: 5, most: 100 };

/** Writes many rows in portions, each a transaction of its own with a pause after it for everybody else. */
export interface Portions {
  /** Fills an import that is coming with the rows of a table; false when it was overtaken by another. */
  readonly fill: (id: number, from: string, overtaken: () => boolean) => Promise<boolean>;
  /** Removes what is going, and what was left half written by somebody who can no longer finish it. */
  readonly clearAway: (kind: StockKind) => Promise<void>;
}

export function portionsOf(db: Db): Portions {
  const dead = db
    .prepare(
      `SELECT id FROM stock_imports WHERE kind = $kind AND (state = 'going' OR (state = 'coming' AND id <
         (SELECT max(id) FROM stock_imports WHERE kind = $kind AND state = 'written')))`,
    )
    .pluck();
  const removeRows = db.prepare(
    `DELETE FROM stock_rows WHERE import_id = $id AND position <=
       (SELECT min(position) + ${ROWS - 1} FROM stock_rows WHERE import_id = $id)`,
  );
  const removeImport = db.prepare("DELETE FROM stock_imports WHERE id = ?");

  return {
    fill: async (id, from, overtaken) => {
      const copy = db.prepare(
        `INSERT INTO stock_rows (import_id, position, key, item)
         SELECT ?, position, key, item FROM ${from} WHERE position > ? ORDER BY position LIMIT ${ROWS}`,
      );
      const portion = db.transaction((after: number) => (overtaken() ? null : copy.run(id, after).changes));
      for (let after = 0; ; after += ROWS) {
        const copied = await takingTurns(() => portion.immediate(after));
        if (copied === null) return false;
        if (copied < ROWS) return true;
      }
    },
    clearAway: async (kind) => {
      for (const id of dead.all({ kind }) as number[]) {
        while ((await takingTurns(() => removeRows.run({ id }).changes)) > 0);
        removeImport.run(id);
      }
    },
  };
}

/** Does the work, then leaves others their turn. */
async function takingTurns<T>(work: () => T): Promise<T> {
  const began = performance.now();
  const result = work();
  const took = performance.now() - began;
  const pause = Math.min(Math.max(took, PAUSE_MS.least), PAUSE_MS.most);
  await new Promise((resolve) => setTimeout(resolve, pause));
  return result;
}
