/** Schema steps in order; a database remembers in `user_version` how many it has taken. Never edit a step. */
export const migrations: readonly string[] = [
  `
  CREATE TABLE threads (
    id TEXT PRIMARY KEY,
    state TEXT NOT NULL CHECK (json_valid(state)),
    updated_at TEXT NOT NULL
  ) STRICT;

  CREATE TABLE inbox (
    seq INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    thread_id TEXT NOT NULL,
    text TEXT NOT NULL,
    at TEXT NOT NULL,
    handled INTEGER NOT NULL DEFAULT 0 CHECK (handled IN (0, 1))
  ) STRICT;
  CREATE INDEX inbox_unhandled ON inbox (seq) WHERE handled = 0;

  CREATE TABLE outbox (
    id INTEGER PRIMARY KEY,
    thread_id TEXT NOT NULL,
    text TEXT NOT NULL,
    created_at TEXT NOT NULL,
    delivered INTEGER NOT NULL DEFAULT 0 CHECK (delivered IN (0, 1))
  ) STRICT;
  CREATE INDEX outbox_undelivered ON outbox (thread_id, id) WHERE delivered = 0;

  CREATE TABLE cases (
    id INTEGER PRIMARY KEY,
    thread_id TEXT NOT NULL,
    urgency TEXT NOT NULL,
    reason TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('waiting', 'taken', 'closed')),
    brief TEXT NOT NULL,
    opened_at TEXT NOT NULL,
    updated_at TEXT NOT NULL
  ) STRICT;
  CREATE UNIQUE INDEX one_open_case ON cases (thread_id) WHERE state <> 'closed';

  CREATE TABLE stock (
    position INTEGER PRIMARY KEY,
    sku TEXT NOT NULL UNIQUE,
    motor TEXT NOT NULL CHECK (json_valid(motor))
  ) STRICT;

  CREATE TABLE facts (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
  ) STRICT;
  `,
];
