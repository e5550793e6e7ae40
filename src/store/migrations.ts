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
  // Cases as documents with four states and a history; messages with lanes; numbers on record; versions.
  `
  ALTER TABLE threads ADD COLUMN version INTEGER NOT NULL DEFAULT 1;
  ALTER TABLE inbox ADD COLUMN attachments TEXT CHECK (attachments IS NULL OR json_valid(attachments));

  CREATE TABLE counters (name TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT;
  INSERT INTO counters VALUES ('thread', 1), ('numbers', 0), ('case', (SELECT coalesce(max(id), 0) FROM cases));

  ALTER TABLE outbox RENAME TO outbox_1;
  CREATE TABLE outbox (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    lane TEXT NOT NULL,
    slot TEXT,
    content TEXT NOT NULL CHECK (json_valid(content)),
    created_at TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'delivered', 'parked')),
    attempts INTEGER NOT NULL DEFAULT 0,
    retry_at TEXT,
    error TEXT
  ) STRICT;
  INSERT INTO outbox (id, lane, content, created_at, state)
    SELECT id, 'customer:' || thread_id, json_object('text', text), created_at,
           iif(delivered = 1, 'delivered', 'waiting')
    FROM outbox_1;
  DROP TABLE outbox_1;
  CREATE INDEX outbox_waiting ON outbox (lane, id) WHERE state = 'waiting';
  CREATE INDEX outbox_lane ON outbox (lane);

  ALTER TABLE cases RENAME TO cases_1;
  DROP INDEX one_open_case;
  CREATE TABLE cases (
    id INTEGER PRIMARY KEY,
    thread_id TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('waiting', 'taken', 'with-bot', 'closed')),
    urgency TEXT NOT NULL,
    doc TEXT NOT NULL CHECK (json_valid(doc)),
    opened_at TEXT NOT NULL,
    updated_at TEXT NOT NULL
  ) STRICT;
  INSERT INTO cases (id, thread_id, state, urgency, doc, opened_at, updated_at)
    SELECT id, thread_id, 'waiting', urgency,
           json_object('id', id, 'threadId', thread_id, 'urgency', urgency, 'reason', reason,
                       'standing', json_object('state', 'waiting', 'since', opened_at), 'unanswered', json_object('since', opened_at, 'promised', json('true')), 'alerted', NULL,
                       'offered', NULL, 'fits', NULL, 'sale', NULL, 'headline', '', 'brief', brief,
                       'openedAt', opened_at, 'updatedAt', updated_at),
           opened_at, updated_at
    FROM cases_1 WHERE state <> 'closed';
  DROP TABLE cases_1;
  CREATE UNIQUE INDEX one_open_case ON cases (thread_id) WHERE state <> 'closed';
  CREATE INDEX cases_thread ON cases (thread_id, id);

  CREATE TABLE case_events (
    id INTEGER PRIMARY KEY,
    case_id INTEGER NOT NULL REFERENCES cases (id) ON DELETE CASCADE,
    at TEXT NOT NULL,
    by_id TEXT,
    by_name TEXT,
    kind TEXT NOT NULL,
    text TEXT NOT NULL
  ) STRICT;
  CREATE INDEX case_events_case ON case_events (case_id, id);

  CREATE TABLE acts (
    id TEXT PRIMARY KEY,
    case_id INTEGER NOT NULL,
    at TEXT NOT NULL,
    done INTEGER NOT NULL CHECK (done IN (0, 1)),
    answer TEXT NOT NULL
  ) STRICT;

  CREATE TABLE notices (key TEXT PRIMARY KEY, at TEXT NOT NULL) STRICT;

  CREATE TABLE numbers (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    number TEXT NOT NULL,
    sku TEXT NOT NULL,
    case_id INTEGER REFERENCES cases (id) ON DELETE SET NULL,
    by_id TEXT NOT NULL,
    by_name TEXT NOT NULL,
    at TEXT NOT NULL,
    standing TEXT NOT NULL DEFAULT 'used' CHECK (standing IN ('used', 'withdrawn', 'struck')),
    ended_by_id TEXT,
    ended_by_name TEXT,
    ended_at TEXT
  ) STRICT;

  CREATE TABLE doubted (
    id INTEGER PRIMARY KEY,
    case_id INTEGER REFERENCES cases (id) ON DELETE SET NULL,
    sku TEXT NOT NULL,
    finding TEXT NOT NULL CHECK (json_valid(finding)),
    by_id TEXT NOT NULL,
    by_name TEXT NOT NULL,
    at TEXT NOT NULL
  ) STRICT;

  CREATE TABLE links (
    channel TEXT NOT NULL,
    theirs TEXT NOT NULL,
    lane TEXT NOT NULL,
    kind TEXT NOT NULL,
    PRIMARY KEY (channel, theirs)
  ) STRICT;
  CREATE INDEX links_lane ON links (channel, lane);
  `,
  // Telegram's updates as they came in. Erasing a thread drops what is kept of it here too.
  `
  CREATE TABLE telegram_updates (
    id INTEGER PRIMARY KEY,
    queue TEXT NOT NULL,
    body TEXT NOT NULL,
    at TEXT NOT NULL,
    album INTEGER,
    state TEXT NOT NULL DEFAULT 'waiting' CHECK (state IN ('waiting', 'handled', 'parked')),
    error TEXT
  ) STRICT;
  CREATE INDEX telegram_updates_waiting ON telegram_updates (id) WHERE state = 'waiting';
  CREATE TRIGGER telegram_updates_erased AFTER DELETE ON threads BEGIN
    UPDATE telegram_updates SET body = '', queue = '' WHERE queue = OLD.id AND state <> 'waiting';
  END;
  `,
  // Which message an item is of, so that an edit is known as one also after a crash.
  `
  ALTER TABLE inbox ADD COLUMN message TEXT;
  ALTER TABLE inbox ADD COLUMN edited INTEGER NOT NULL DEFAULT 0 CHECK (edited IN (0, 1));
  `,
  // Numbers by which an erased thread is known again in a backup without telling whose it was; a key of the installation's own.
  `
  ALTER TABLE threads ADD COLUMN serial INTEGER NOT NULL DEFAULT 0;
  UPDATE threads SET serial = rowid + (SELECT value FROM counters WHERE name = 'thread');
  UPDATE counters SET value = value + (SELECT coalesce(max(rowid), 0) FROM threads) WHERE name = 'thread';
  CREATE INDEX threads_updated ON threads (updated_at);
  CREATE TABLE erased (serial INTEGER PRIMARY KEY, at TEXT NOT NULL) STRICT;
  INSERT INTO facts VALUES ('installation', lower(hex(randomblob(32))));
  `,
  // Imports of motors, pumps and spares, the one before the current one kept; what became of each request.
  `
  CREATE TABLE stock_imports (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    kind TEXT NOT NULL CHECK (kind IN ('motors', 'pumps', 'spares')),
    source TEXT NOT NULL,
    at TEXT NOT NULL,
    imported_on TEXT NOT NULL,
    rows INTEGER NOT NULL
  ) STRICT;
  CREATE INDEX stock_imports_kind ON stock_imports (kind, id);

  CREATE TABLE stock_rows (
    import_id INTEGER NOT NULL REFERENCES stock_imports (id) ON DELETE CASCADE,
    position INTEGER NOT NULL,
    key TEXT NOT NULL,
    item TEXT NOT NULL CHECK (json_valid(item)),
    PRIMARY KEY (import_id, position),
    UNIQUE (import_id, key)
  ) STRICT, WITHOUT ROWID;

  INSERT INTO stock_imports (kind, source, at, imported_on, rows)
    SELECT 'motors', '', value || 'T00:00:00.000Z', value, (SELECT count(*) FROM stock)
    FROM facts WHERE name = 'stock.importedOn';
  INSERT INTO stock_rows (import_id, position, key, item)
    SELECT stock_imports.id, position, lower(sku), motor FROM stock, stock_imports;
  DROP TABLE stock;
  DELETE FROM facts WHERE name = 'stock.importedOn';
  INSERT INTO counters VALUES ('stock', (SELECT count(*) FROM stock_imports));

  CREATE TABLE verdicts (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    at TEXT NOT NULL,
    case_id INTEGER REFERENCES cases (id) ON DELETE SET NULL,
    verdict TEXT NOT NULL,
    sku TEXT,
    messages INTEGER NOT NULL,
    request TEXT NOT NULL CHECK (json_valid(request))
  ) STRICT;
  CREATE INDEX verdicts_at ON verdicts (at);
  CREATE INDEX verdicts_case ON verdicts (case_id);
  CREATE INDEX inbox_thread ON inbox (thread_id);
  `,
  // What a channel calls pictures of ours that it has once: they are not uploaded again. None shows a customer's words.
  `
  CREATE TABLE sent_pictures (
    account TEXT NOT NULL,
    picture TEXT NOT NULL,
    name TEXT NOT NULL,
    PRIMARY KEY (account, picture)
  ) STRICT, WITHOUT ROWID;
  `,
  // Imports are written and cleared away bit by bit, so that nobody waits long: only a written one counts.
  `
  ALTER TABLE stock_imports ADD COLUMN state TEXT NOT NULL DEFAULT 'written'
    CHECK (state IN ('coming', 'written', 'going'));
  `,
];
