import type { Counts, QuietThread, UpkeepStore } from "../upkeep.ts";
import { customerDataOf } from "./customer-data.ts";
import type { Db } from "./database.ts";
import type { Write } from "./writes.ts";

/** Ages, counts and small notes. */
export function upkeepOf(db: Db, write: Write): UpkeepStore {
  const find = db.prepare("SELECT value FROM facts WHERE name = ?").pluck();
  const keep = db.prepare(
    "INSERT INTO facts (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
  );
  const quiet = db.prepare(
    `SELECT id, version FROM threads
     WHERE updated_at < ? AND NOT EXISTS (SELECT 1 FROM cases WHERE thread_id = threads.id AND state <> 'closed')
     ORDER BY updated_at LIMIT ?`,
  );
  const retryBy = db.prepare("UPDATE outbox SET retry_at = NULL WHERE state = 'waiting' AND retry_at > ?");
  const looseEnds = [
    `DELETE FROM inbox WHERE handled = 1 AND at < ?
       AND NOT EXISTS (SELECT 1 FROM threads WHERE id = inbox.thread_id)`,
    `DELETE FROM outbox WHERE state <> 'waiting' AND created_at < ? AND (
       lane IN ('desk', 'on-call')
       OR (lane GLOB 'customer:*' AND NOT EXISTS (SELECT 1 FROM threads WHERE id = substr(lane, 10)))
       OR (lane GLOB 'case:*' AND NOT EXISTS (SELECT 1 FROM cases WHERE id = CAST(substr(lane, 6) AS INTEGER))))`,
    "DELETE FROM acts WHERE at < ? AND NOT EXISTS (SELECT 1 FROM cases WHERE id = acts.case_id)",
    "DELETE FROM telegram_updates WHERE state <> 'waiting' AND at < ?",
    "DELETE FROM erased WHERE at < ?",
  ].map((sql) => db.prepare(sql));
  const counts = countsOf(db);
  return {
    installationKey: async () => find.get("installation") as string,
    counts: async () => counts(),
    quietThreads: async (before, limit) => quiet.all(before, limit) as QuietThread[],
    forgetLoose: (before) =>
      write(() => {
        for (const remove of looseEnds) remove.run(before);
      }),
    retryBy: async (latest) => {
      await write(() => retryBy.run(latest));
    },
    note: async (name) => find.get(`note.${name}`) as string | undefined,
    keepNote: async (name, value) => {
      await write(() => keep.run(`note.${name}`, value));
    },
    customerData: customerDataOf(db),
  };
}

/** What there is and what waits, of a database of the current schema. */
export function countsOf(db: Db): () => Counts {
  const numbers = db.prepare(
    `SELECT (SELECT count(*) FROM threads) AS threads,
            (SELECT count(*) FROM inbox WHERE handled = 0) AS unhandled,
            (SELECT count(*) FROM outbox WHERE state = 'waiting') AS outboxWaiting,
            (SELECT min(created_at) FROM outbox WHERE state = 'waiting') AS oldestWaiting,
            (SELECT count(*) FROM outbox WHERE state = 'parked') AS outboxParked,
            (SELECT count(*) FROM telegram_updates WHERE state = 'waiting') AS updatesWaiting,
            (SELECT count(*) FROM telegram_updates WHERE state = 'parked') AS updatesParked,
            (SELECT count(*) FROM cases WHERE state <> 'closed') AS casesOpen`,
  );
  const waiting = db.prepare(
    "SELECT urgency, count(*) AS count FROM cases WHERE state = 'waiting' GROUP BY urgency",
  );
  return () => ({
    ...(numbers.get() as Omit<Counts, "casesWaiting">),
    casesWaiting: Object.fromEntries(
      (waiting.all() as { urgency: string; count: number }[]).map(({ urgency, count }) => [urgency, count]),
    ),
  });
}
