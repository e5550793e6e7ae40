import type Database from "better-sqlite3";
import { openFile } from "../../../../src/store/sqlite/open-file.ts";

type Db = Database.Database;
type Row = Readonly<Record<string, string | number | null>>;

/** Looks at a desk's file from outside while the desk works on it. */
export class Onlooker {
  private readonly db: Db;

  constructor(file: string) {
    this.db = openFile(file, { readonly: true });
  }

  /** True when everything that came in was handled and all it led to was delivered. */
  settled(): boolean {
    const waiting = this.db
      .prepare(
        `SELECT (SELECT count(*) FROM telegram_updates WHERE state = 'waiting')
              + (SELECT count(*) FROM inbox WHERE handled = 0)
              + (SELECT count(*) FROM outbox WHERE state = 'waiting') AS count`,
      )
      .get() as { count: number };
    return waiting.count === 0;
  }

  /** Topic of the customer's open case. */
  topicOf(threadId: string): number | undefined {
    const row = this.db
      .prepare(
        `SELECT theirs FROM links JOIN cases ON lane = 'case:' || cases.id
         WHERE kind = 'topic' AND thread_id = ? AND cases.state <> 'closed'`,
      )
      .get(threadId) as { theirs: string } | undefined;
    return row === undefined ? undefined : Number(row.theirs.split("/").at(-1));
  }

  /**
   * Everything kept, by customer, without instants and with case numbers blotted out: both depend on the order in
   * which chats get their turn, which is free.
   */
  everything(): Readonly<Record<string, unknown>> {
    const all = (sql: string, ...values: readonly string[]) => this.db.prepare(sql).all(...values) as Row[];
    const threads = all("SELECT id, state FROM threads ORDER BY id");
    const of = (threadId: string) => {
      const cases = all(
        "SELECT id, state, urgency, doc FROM cases WHERE thread_id = ? ORDER BY id",
        threadId,
      );
      return {
        cases: cases.map(({ id, state, urgency, doc }) => ({
          state,
          urgency,
          doc: plain(String(doc)),
          events: all(
            "SELECT kind, text, by_name FROM case_events WHERE case_id = ? ORDER BY id",
            String(id),
          ),
          shown: sent(all("SELECT content, state FROM outbox WHERE lane = ? ORDER BY id", `case:${id}`)),
        })),
        sent: sent(
          all("SELECT content, state FROM outbox WHERE lane = ? ORDER BY id", `customer:${threadId}`),
        ),
      };
    };
    return Object.fromEntries(
      threads.map(({ id, state }) => [String(id), { thread: plain(String(state)), ...of(String(id)) }]),
    );
  }

  /** Messages and updates that were given up. */
  parked(): number {
    const row = this.db
      .prepare(
        `SELECT (SELECT count(*) FROM telegram_updates WHERE state = 'parked')
              + (SELECT count(*) FROM outbox WHERE state = 'parked') AS count`,
      )
      .get() as { count: number };
    return row.count;
  }

  /** SQLite's own word on the file: "ok". */
  integrity(): string {
    return String(this.db.pragma("integrity_check", { simple: true }));
  }

  close(): void {
    this.db.close();
  }
}

const sent = (rows: readonly Row[]) =>
  rows.map(({ content, state }) => [state, (plain(String(content)) as { text?: unknown }).text]);

/** JSON without instants and case numbers, and without numbers of messages, which count over all topics. */
function plain(json: string): unknown {
  return JSON.parse(json, (key, value: unknown) => {
    if (
      ["at", "since", "openedAt", "updatedAt", "id", "answers", "from"].includes(key) &&
      typeof value !== "object"
    )
      return key === "from" && !/^\d+$/.test(String(value)) ? value : undefined;
    return typeof value === "string" ? value.replace(/\b([Cc]ase) \d+/g, "$1 N") : value;
  });
}
