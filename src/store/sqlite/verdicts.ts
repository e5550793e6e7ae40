import type { Store } from "../store.ts";
import type { GivenVerdict, VerdictRow } from "../verdicts.ts";
import type { Db } from "./database.ts";

/** Verdicts given, for the report on what the shop should stock. */
export function verdictsOf(db: Db) {
  const add = db.prepare(
    `INSERT INTO verdicts (at, case_id, verdict, sku, request, messages)
     SELECT $at, $caseId, $verdict, $sku, $request, count(*) FROM inbox
     WHERE thread_id = $threadId AND edited = 0 AND julianday(at) > coalesce(
       (SELECT max(julianday(updated_at)) FROM cases WHERE thread_id = $threadId AND state = 'closed'), 0)`,
  );
  const since = db.prepare(
    `SELECT at, case_id AS caseId, verdict, sku, request, messages FROM verdicts
     WHERE julianday(at) >= julianday(?) ORDER BY id`,
  );
  const methods: Pick<Store, "verdicts"> = {
    verdicts: async (from) => since.all(from) as GivenVerdict[],
  };
  return {
    methods,
    add: (row: VerdictRow, threadId: string, at: string) => add.run({ ...row, threadId, at }),
  };
}
