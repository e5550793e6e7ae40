import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import Database from "better-sqlite3";
import type { StockMotor } from "../matching/types.ts";
import { migrations } from "./migrations.ts";
import {
  type CaseRecord,
  type InboxItem,
  type OutboxItem,
  type Store,
  StoreError,
  type Turn,
} from "./store.ts";

/**
 * Opens (or creates) the store in `file`; `:memory:` keeps nothing. Throws {@link StoreError} when the
 * file cannot be opened or was written by a newer version.
 */
export function openSqliteStore(file: string): Store {
  const db = openDatabase(file);
  const statements = prepare(db);

  const commit = db.transaction((turn: Turn) => {
    const { item } = turn;
    if (turn.erase) {
      statements.eraseInbox.run(item.threadId);
      statements.eraseOutbox.run(item.threadId);
      statements.eraseCases.run(item.threadId);
      statements.eraseThread.run(item.threadId);
    } else {
      statements.saveThread.run(item.threadId, turn.state, item.at);
      statements.markHandled.run(item.id);
    }
    if (turn.case) {
      const { urgency, reason, brief } = turn.case;
      const changed = statements.updateCase.run(urgency, reason, brief, item.at, item.threadId).changes;
      if (changed === 0) statements.openCase.run(item.threadId, urgency, reason, brief, item.at, item.at);
    }
    for (const text of turn.replies) statements.queueReply.run(item.threadId, text, item.at);
  });

  const replaceStock = db.transaction((motors: readonly StockMotor[], importedOn: string) => {
    statements.clearStock.run();
    for (const motor of motors) statements.addMotor.run(motor.sku, JSON.stringify(motor));
    statements.saveFact.run("stock.importedOn", importedOn);
  });

  return {
    findThread: async (threadId) =>
      (statements.findThread.get(threadId) as { state: string } | undefined)?.state,
    receive: async ({ id, threadId, text, at }) =>
      statements.receive.run(id, threadId, text, at).changes === 1,
    unhandled: async () => statements.unhandled.all() as InboxItem[],
    commit: async (turn) => commit.immediate(turn),
    undelivered: async (threadId) =>
      (threadId === undefined
        ? statements.undelivered.all()
        : statements.undeliveredOf.all(threadId)) as OutboxItem[],
    delivered: async (id) => {
      statements.markDelivered.run(id);
    },
    cases: async () => statements.cases.all() as CaseRecord[],
    openCase: async (threadId) => statements.openCaseOf.get(threadId) as CaseRecord | undefined,
    replaceStock: async (motors, importedOn) => replaceStock.immediate(motors, importedOn),
    stock: async () => ({
      motors: (statements.stock.all() as { motor: string }[]).map(
        ({ motor }) => JSON.parse(motor) as StockMotor,
      ),
      importedOn:
        (statements.findFact.get("stock.importedOn") as { value: string } | undefined)?.value ?? null,
    }),
    close: async () => {
      db.close();
    },
  };
}

function openDatabase(file: string): Database.Database {
  try {
    if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
    const db = new Database(file);
    db.pragma("journal_mode = WAL");
    db.pragma("synchronous = FULL");
    db.pragma("foreign_keys = ON");
    db.pragma("busy_timeout = 5000");
    migrate(db, file);
    return db;
  } catch (cause) {
    if (cause instanceof StoreError) throw cause;
    throw new StoreError(
      `${file}: the store cannot be opened (${(cause as Error).message}). Check that the folder exists and can be written, or choose another file with --store.`,
      { cause },
    );
  }
}

function migrate(db: Database.Database, file: string): void {
  const taken = db.pragma("user_version", { simple: true }) as number;
  if (taken > migrations.length) {
    throw new StoreError(
      `${file}: written by a newer version of nameplate-desk. Update the program, or use another file.`,
    );
  }
  migrations.slice(taken).forEach((step, index) => {
    db.transaction(() => {
      db.exec(step);
      db.pragma(`user_version = ${taken + index + 1}`);
    })();
  });
}

const CASE_COLUMNS = `id, thread_id AS threadId, urgency, reason, state, brief, opened_at AS openedAt, updated_at AS updatedAt`;

function prepare(db: Database.Database) {
  return {
    findThread: db.prepare("SELECT state FROM threads WHERE id = ?"),
    saveThread: db.prepare(
      `INSERT INTO threads (id, state, updated_at) VALUES (?, ?, ?)
       ON CONFLICT (id) DO UPDATE SET state = excluded.state, updated_at = excluded.updated_at`,
    ),
    receive: db.prepare(
      "INSERT INTO inbox (id, thread_id, text, at) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
    ),
    unhandled: db.prepare(
      "SELECT id, thread_id AS threadId, text, at FROM inbox WHERE handled = 0 ORDER BY seq",
    ),
    markHandled: db.prepare("UPDATE inbox SET handled = 1 WHERE id = ?"),
    queueReply: db.prepare("INSERT INTO outbox (thread_id, text, created_at) VALUES (?, ?, ?)"),
    undelivered: db.prepare(
      "SELECT id, thread_id AS threadId, text FROM outbox WHERE delivered = 0 ORDER BY id",
    ),
    undeliveredOf: db.prepare(
      "SELECT id, thread_id AS threadId, text FROM outbox WHERE delivered = 0 AND thread_id = ? ORDER BY id",
    ),
    markDelivered: db.prepare("UPDATE outbox SET delivered = 1 WHERE id = ?"),
    updateCase: db.prepare(
      `UPDATE cases SET urgency = ?, reason = ?, brief = ?, updated_at = ? WHERE thread_id = ? AND state <> 'closed'`,
    ),
    openCase: db.prepare(
      `INSERT INTO cases (thread_id, urgency, reason, state, brief, opened_at, updated_at)
       VALUES (?, ?, ?, 'waiting', ?, ?, ?)`,
    ),
    openCaseOf: db.prepare(`SELECT ${CASE_COLUMNS} FROM cases WHERE thread_id = ? AND state <> 'closed'`),
    cases: db.prepare(`SELECT ${CASE_COLUMNS} FROM cases ORDER BY id`),
    clearStock: db.prepare("DELETE FROM stock"),
    addMotor: db.prepare("INSERT INTO stock (sku, motor) VALUES (?, ?)"),
    stock: db.prepare("SELECT motor FROM stock ORDER BY position"),
    saveFact: db.prepare(
      "INSERT INTO facts (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
    ),
    findFact: db.prepare("SELECT value FROM facts WHERE name = ?"),
    eraseInbox: db.prepare("DELETE FROM inbox WHERE thread_id = ?"),
    eraseOutbox: db.prepare("DELETE FROM outbox WHERE thread_id = ?"),
    eraseCases: db.prepare("DELETE FROM cases WHERE thread_id = ?"),
    eraseThread: db.prepare("DELETE FROM threads WHERE id = ?"),
  };
}
