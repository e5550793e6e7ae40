import type { CustomerData } from "../upkeep.ts";
import type { Db } from "./database.ts";

type Row = Readonly<Record<string, unknown>>;

/** The columns that hold JSON are given as what they say. */
const JSON_COLUMNS = ["state", "attachments", "content", "doc", "body", "request"];

const shown = (row: Row): Row =>
  Object.fromEntries(
    Object.entries(row).map(([name, value]) => [
      name,
      JSON_COLUMNS.includes(name) && typeof value === "string" && /^[{[]/.test(value)
        ? (JSON.parse(value) as unknown)
        : value,
    ]),
  );

/** Collects what is kept of a thread, table by table. */
export function customerDataOf(db: Db): (threadId: string) => Promise<CustomerData | undefined> {
  const thread = db.prepare("SELECT id, state, updated_at AS updatedAt FROM threads WHERE id = ?");
  const received = db.prepare(
    "SELECT id, at, text, attachments, message, edited, handled FROM inbox WHERE thread_id = ? ORDER BY seq",
  );
  const sent = db.prepare(
    "SELECT lane, content, created_at AS createdAt, state, error FROM outbox WHERE lane = ? ORDER BY id",
  );
  const cases = db.prepare(
    "SELECT id, state, urgency, doc, opened_at AS openedAt, updated_at AS updatedAt FROM cases WHERE thread_id = ? ORDER BY id",
  );
  const events = db.prepare(
    "SELECT at, by_name AS by, kind, text FROM case_events WHERE case_id = ? ORDER BY id",
  );
  const acts = db.prepare("SELECT at, done, answer FROM acts WHERE case_id = ? ORDER BY at, id");
  const numbers = db.prepare("SELECT number, sku, at, standing FROM numbers WHERE case_id = ? ORDER BY id");
  const doubted = db.prepare("SELECT sku, finding, at FROM doubted WHERE case_id = ? ORDER BY id");
  const verdicts = db.prepare(
    "SELECT at, verdict, sku, messages, request FROM verdicts WHERE case_id = ? ORDER BY id",
  );
  const places = db.prepare("SELECT channel, theirs, kind FROM links WHERE lane = ? ORDER BY rowid");
  const updates = db.prepare(
    "SELECT id, at, state, error, body FROM telegram_updates WHERE queue = ? ORDER BY id",
  );

  return async (threadId) => {
    const lane = `customer:${threadId}`;
    const found = thread.get(threadId) as Row | undefined;
    const came = [...(received.all(threadId) as Row[]), ...(updates.all(threadId) as Row[])];
    const went = sent.all(lane) as Row[];
    const own = cases.all(threadId) as (Row & { readonly id: number })[];
    if (found === undefined && came.length + went.length + own.length === 0) return undefined;
    return {
      thread: found === undefined ? null : shown(found),
      received: came.map(shown),
      sent: went.map(shown),
      cases: own.map((row) => ({
        ...shown(row),
        history: events.all(row.id),
        acts: acts.all(row.id),
        shownToStaff: (sent.all(`case:${row.id}`) as Row[]).map(shown),
        verdicts: (verdicts.all(row.id) as Row[]).map(shown),
        numbersOnRecord: numbers.all(row.id),
        findingsDoubted: doubted.all(row.id),
        places: places.all(`case:${row.id}`),
      })),
      places: places.all(lane),
    };
  };
}
