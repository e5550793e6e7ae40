import type { NumberOnRecord } from "../../catalogue/numbers-on-record.ts";
import type { StaffMember } from "../../staff.ts";
import type { DoubtedRow, NumberEdit, Store } from "../store.ts";
import { type Db, nextOf } from "./database.ts";

interface NumberColumns extends Omit<NumberOnRecord, "by" | "ended"> {
  readonly byId: string;
  readonly byName: string;
  readonly endedById: string | null;
  readonly endedByName: string | null;
  readonly endedAt: string | null;
}

function numberOf({ byId, byName, endedById, endedByName, endedAt, ...row }: NumberColumns): NumberOnRecord {
  const ended =
    endedById === null || endedAt === null
      ? null
      : { by: { id: endedById, name: endedByName ?? endedById }, at: endedAt };
  return { ...row, by: { id: byId, name: byName }, ended };
}

/** Numbers on record and the findings that parts which came back speak against. */
export function numbersOf(db: Db) {
  const all = db.prepare(
    `SELECT id, number, sku, case_id AS caseId, by_id AS byId, by_name AS byName, at, standing,
            ended_by_id AS endedById, ended_by_name AS endedByName, ended_at AS endedAt
     FROM numbers ORDER BY id`,
  );
  const version = db.prepare("SELECT value FROM counters WHERE name = 'numbers'").pluck();
  const add = db.prepare(
    "INSERT INTO numbers (number, sku, case_id, by_id, by_name, at) VALUES (?, ?, ?, ?, ?, ?)",
  );
  const end = db.prepare(
    `UPDATE numbers SET standing = ?, ended_by_id = ?, ended_by_name = ?, ended_at = ?
     WHERE id = ? AND standing = 'used'`,
  );
  const addDoubted = db.prepare(
    "INSERT INTO doubted (case_id, sku, finding, by_id, by_name, at) VALUES (?, ?, ?, ?, ?, ?)",
  );
  const doubted = db.prepare(
    "SELECT case_id AS caseId, sku, finding, by_id AS byId, by_name AS byName, at FROM doubted ORDER BY id",
  );
  const next = nextOf(db);

  const methods: Pick<Store, "numbers" | "numbersVersion" | "doubted"> = {
    numbers: async () => (all.all() as NumberColumns[]).map(numberOf),
    numbersVersion: async () => version.get() as number,
    doubted: async () =>
      (doubted.all() as (Omit<DoubtedRow, "by"> & { byId: string; byName: string })[]).map(
        ({ byId, byName, ...row }) => ({ ...row, by: { id: byId, name: byName } }),
      ),
  };
  return {
    methods,
    edit: (edits: readonly NumberEdit[], by: StaffMember, at: string) => {
      for (const change of edits) {
        if (change.kind === "add") add.run(change.number, change.sku, change.caseId, by.id, by.name, at);
        else end.run(change.kind === "strike" ? "struck" : "withdrawn", by.id, by.name, at, change.id);
      }
      if (edits.length > 0) next("numbers");
    },
    addDoubted: ({ caseId, sku, finding, by, at }: DoubtedRow) =>
      addDoubted.run(caseId, sku, finding, by.id, by.name, at),
  };
}
