import type { CaseRow, Change, EventRow, Store } from "../store.ts";
import { type Db, nextOf } from "./database.ts";
import type { Write } from "./writes.ts";

const COLUMNS =
  "id, thread_id AS threadId, state, urgency, doc, opened_at AS openedAt, updated_at AS updatedAt";

interface EventColumns {
  readonly caseId: number;
  readonly at: string;
  readonly byId: string | null;
  readonly byName: string | null;
  readonly kind: string;
  readonly text: string;
}

/** Cases, their history, and the acts that were done. */
export function casesOf(db: Db, write: Write) {
  const all = db.prepare(`SELECT ${COLUMNS} FROM cases ORDER BY id`);
  // Left to itself SQLite looks through all that were ever closed.
  const open = db.prepare(
    `SELECT ${COLUMNS} FROM cases INDEXED BY one_open_case WHERE state <> 'closed' ORDER BY id`,
  );
  const find = db.prepare(`SELECT ${COLUMNS} FROM cases WHERE id = ?`);
  const latest = db.prepare(`SELECT ${COLUMNS} FROM cases WHERE thread_id = ? ORDER BY id DESC LIMIT 1`);
  const save = db.prepare(
    `INSERT INTO cases (id, thread_id, state, urgency, doc, opened_at, updated_at) VALUES (?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET state = excluded.state, urgency = excluded.urgency, doc = excluded.doc,
       updated_at = excluded.updated_at`,
  );
  const idsOf = db.prepare("SELECT id FROM cases WHERE thread_id = ?").pluck();
  const erase = db.prepare("DELETE FROM cases WHERE id = ?");
  const eraseActs = db.prepare("UPDATE acts SET answer = '' WHERE case_id = ?");
  const addEvent = db.prepare(
    "INSERT INTO case_events (case_id, at, by_id, by_name, kind, text) VALUES (?, ?, ?, ?, ?, ?)",
  );
  const events = db.prepare(
    `SELECT case_id AS caseId, at, by_id AS byId, by_name AS byName, kind, text
     FROM case_events WHERE case_id = ? ORDER BY id`,
  );
  const addAct = db.prepare(
    "INSERT INTO acts (id, case_id, at, done, answer) VALUES (?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
  );
  const findAct = db.prepare("SELECT done, answer FROM acts WHERE id = ?");
  const addNotice = db.prepare("INSERT INTO notices (key, at) VALUES (?, ?) ON CONFLICT (key) DO NOTHING");
  const findNotice = db.prepare("SELECT 1 FROM notices WHERE key = ?");
  const next = nextOf(db);

  const methods: Pick<
    Store,
    "newCaseId" | "cases" | "openCases" | "findCase" | "latestCase" | "events" | "actAnswer" | "noticed"
  > = {
    newCaseId: () => write(() => next("case")),
    cases: async () => all.all() as CaseRow[],
    openCases: async () => open.all() as CaseRow[],
    findCase: async (id) => find.get(id) as CaseRow | undefined,
    latestCase: async (threadId) => latest.get(threadId) as CaseRow | undefined,
    events: async (caseId) => (events.all(caseId) as EventColumns[]).map(eventOf),
    actAnswer: async (id) => {
      const found = findAct.get(id) as { done: number; answer: string } | undefined;
      return found && { done: found.done === 1, answer: found.answer };
    },
    noticed: async (key) => findNotice.get(key) !== undefined,
  };
  return {
    methods,
    save: ({ id, threadId, state, urgency, doc, openedAt, updatedAt }: CaseRow) =>
      save.run(id, threadId, state, urgency, doc, openedAt, updatedAt),
    addEvent: ({ caseId, at, by, kind, text }: EventRow) =>
      addEvent.run(caseId, at, by?.id ?? null, by?.name ?? null, kind, text),
    /** False when the act was done before. */
    addAct: ({ id, caseId, done, answer }: NonNullable<Change["acted"]>, at: string) =>
      addAct.run(id, caseId, at, done ? 1 : 0, answer).changes === 1,
    /** False when the notice was sent before. */
    addNotice: (key: string, at: string) => addNotice.run(key, at).changes === 1,
    /** The thread's cases with their history; their numbers, for the lanes that go with them. */
    erase: (threadId: string): readonly number[] => {
      const ids = idsOf.all(threadId) as number[];
      for (const id of ids) {
        eraseActs.run(id);
        erase.run(id);
      }
      return ids;
    },
  };
}

function eventOf({ byId, byName, ...event }: EventColumns): EventRow {
  return { ...event, by: byId === null ? null : { id: byId, name: byName ?? byId } };
}
