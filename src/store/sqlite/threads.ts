import type { Attachment } from "../../outgoing.ts";
import type { InboxItem, Store, StoredThread } from "../store.ts";
import { type Db, nextOf } from "./database.ts";
import type { Write } from "./writes.ts";

type InboxRow = Omit<InboxItem, "attachments" | "message" | "edited"> & {
  readonly attachments: string | null;
  readonly message: string | null;
  readonly edited: number;
};

const itemOf = ({ attachments, message, edited, ...item }: InboxRow): InboxItem => ({
  ...item,
  ...(attachments === null ? {} : { attachments: JSON.parse(attachments) as Attachment[] }),
  ...(message === null ? {} : { message }),
  ...(edited === 1 ? { edited: true } : {}),
});

/** Threads and the messages that came in. */
export function threadsOf(db: Db, write: Write) {
  const find = db.prepare("SELECT state, version FROM threads WHERE id = ?");
  const versionOf = db.prepare("SELECT version FROM threads WHERE id = ?").pluck();
  const save = db.prepare(
    `INSERT INTO threads (id, state, version, updated_at, serial) VALUES (?, ?, ?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET state = excluded.state, version = excluded.version, updated_at = excluded.updated_at`,
  );
  const receive = db.prepare(
    `INSERT INTO inbox (id, thread_id, text, at, attachments, message, edited) VALUES (?, ?, ?, ?, ?, ?, ?)
     ON CONFLICT (id) DO NOTHING`,
  );
  const unhandled = db.prepare(
    `SELECT id, thread_id AS threadId, text, at, attachments, message, edited
     FROM inbox WHERE handled = 0 ORDER BY seq`,
  );
  const markHandled = db.prepare("UPDATE inbox SET handled = 1 WHERE id = ? AND handled = 0");
  const eraseInbox = db.prepare(
    "UPDATE inbox SET text = '', attachments = NULL, message = NULL, thread_id = '', handled = 1 WHERE thread_id = ?",
  );
  const rememberErased = db.prepare(
    "INSERT OR IGNORE INTO erased (serial, at) SELECT serial, ? FROM threads WHERE id = ?",
  );
  const eraseLinks = db.prepare("DELETE FROM links WHERE lane = 'customer:' || ?");
  const eraseThread = db.prepare("DELETE FROM threads WHERE id = ?");
  const next = nextOf(db);

  const methods: Pick<Store, "findThread" | "receive" | "unhandled"> = {
    findThread: async (threadId) => find.get(threadId) as StoredThread | undefined,
    receive: async ({ id, threadId, text, at, attachments, message = null, edited = false }) => {
      const files = attachments === undefined ? null : JSON.stringify(attachments);
      return write(() => receive.run(id, threadId, text, at, files, message, edited ? 1 : 0).changes === 1);
    },
    unhandled: async () => (unhandled.all() as InboxRow[]).map(itemOf),
  };
  return {
    methods,
    /** False when the message was handled before. */
    markHandled: (id: string) => markHandled.run(id).changes === 1,
    isCurrent: (id: string, version: number) => ((versionOf.get(id) as number | undefined) ?? 0) === version,
    save: (id: string, state: string, at: string) => {
      const version = next("thread");
      save.run(id, state, version, at, version);
    },
    /**
     * Ids of messages stay, without text or thread: a message that is delivered twice stays erased. The thread's serial
     * number stays too, so that a backup that is restored can be erased again.
     */
    erase: (id: string, at: string) => {
      eraseInbox.run(id);
      eraseLinks.run(id);
      rememberErased.run(at, id);
      eraseThread.run(id);
    },
  };
}
