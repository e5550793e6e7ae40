import { type Content, type Lane, laneKey, laneOfKey, type Outgoing } from "../../outgoing.ts";
import type { OutboxItem, ParkedItem, Store } from "../store.ts";
import type { Db } from "./database.ts";
import type { Write } from "./writes.ts";

interface Row {
  readonly id: number;
  readonly lane: string;
  readonly slot: "brief" | null;
  readonly content: string;
  readonly createdAt: string;
  readonly attempts: number;
  readonly retryAt: string | null;
  readonly error: string | null;
}

const itemOf = ({ id, lane, slot, content, createdAt, attempts, retryAt }: Row): OutboxItem => ({
  id,
  lane: laneOfKey(lane),
  content: JSON.parse(content) as Content,
  ...(slot === null ? {} : { slot }),
  createdAt,
  attempts,
  retryAt,
});

const COLUMNS = "id, lane, slot, content, created_at AS createdAt, attempts, retry_at AS retryAt, error";

/** Messages on their way out. */
export function outboxOf(db: Db, write: Write) {
  const add = db.prepare("INSERT INTO outbox (lane, slot, content, created_at) VALUES (?, ?, ?, ?)");
  const waiting = db.prepare(`SELECT ${COLUMNS} FROM outbox WHERE state = 'waiting' ORDER BY id`);
  // Left to itself SQLite looks through all that the lane ever held.
  const waitingIn = db.prepare(
    `SELECT ${COLUMNS} FROM outbox INDEXED BY outbox_waiting WHERE state = 'waiting' AND lane = ? ORDER BY id`,
  );
  const parked = db.prepare(`SELECT ${COLUMNS} FROM outbox WHERE state = 'parked' ORDER BY id`);
  // What all staff saw may speak of several customers, one of whom may ask to be erased: not kept.
  const deliver = db.prepare(
    `UPDATE outbox SET state = 'delivered',
       content = iif(lane IN ('desk', 'on-call'), json_object('text', ''), content) WHERE id = ?`,
  );
  const postpone = db.prepare("UPDATE outbox SET attempts = attempts + 1, retry_at = ? WHERE id = ?");
  const park = db.prepare("UPDATE outbox SET state = 'parked', error = ? WHERE id = ?");
  const erase = db.prepare("DELETE FROM outbox WHERE lane = ?");
  const eraseParkedNews = db.prepare(
    `UPDATE outbox SET content = json_object('text', '')
     WHERE lane IN ('desk', 'on-call') AND state = 'parked' AND content <> json_object('text', '')`,
  );

  const methods: Pick<Store, "undelivered" | "delivered" | "postponed" | "park" | "parked"> = {
    undelivered: async (lane) =>
      ((lane === undefined ? waiting.all() : waitingIn.all(laneKey(lane))) as Row[]).map(itemOf),
    delivered: async (id) => {
      await write(() => deliver.run(id));
    },
    postponed: async (id, retryAt) => {
      await write(() => postpone.run(retryAt, id));
    },
    park: async (id, error) => {
      await write(() => park.run(error, id));
    },
    parked: async () =>
      (parked.all() as Row[]).map((row): ParkedItem => ({ ...itemOf(row), error: row.error ?? "" })),
  };
  return {
    methods,
    add: ({ lane, slot, content }: Outgoing, at: string) =>
      add.run(laneKey(lane), slot ?? null, JSON.stringify(content), at),
    erase: (lane: Lane) => erase.run(laneKey(lane)),
    /** What all staff were to see and never did may speak of the customer who is erased: only that it was stays. */
    eraseParkedNews: () => eraseParkedNews.run(),
  };
}
