import { casesOf } from "./sqlite/cases.ts";
import { type Db, openDatabase } from "./sqlite/database.ts";
import { linksOf } from "./sqlite/links.ts";
import { numbersOf } from "./sqlite/numbers.ts";
import { outboxOf } from "./sqlite/outbox.ts";
import { sentPicturesOf } from "./sqlite/sent-pictures.ts";
import { stockOf } from "./sqlite/stock.ts";
import { telegramOf } from "./sqlite/telegram.ts";
import { threadsOf } from "./sqlite/threads.ts";
import { inPlainWords } from "./sqlite/trouble.ts";
import { upkeepOf } from "./sqlite/upkeep.ts";
import { verdictsOf } from "./sqlite/verdicts.ts";
import { writesOf } from "./sqlite/writes.ts";
import type { Change, Committed, Store } from "./store.ts";

/** Undoes a transaction that found its work done before, or the thread changed. */
class Undone extends Error {
  readonly why: Exclude<Committed, "done">;

  constructor(why: Exclude<Committed, "done">) {
    super(why);
    this.why = why;
  }
}

/**
 * Opens (or creates) the store in `file`; `:memory:` keeps nothing. Throws {@link StoreError} when the
 * file cannot be opened or was written by a newer version. So does every method when the disk, the file or
 * another program stands in the way.
 */
export function openSqliteStore(file: string): Store {
  return inPlainWords(storeOn(openDatabase(file)), file);
}

/** The store on an open database; errors are SQLite's own. */
export function storeOn(db: Db): Store {
  const { write, settle } = writesOf(db);
  const threads = threadsOf(db, write);
  const outbox = outboxOf(db, write);
  const cases = casesOf(db, write);
  const numbers = numbersOf(db);
  const verdicts = verdictsOf(db);

  const store = (change: Change) => {
    const { at, thread } = change;
    if (change.handled !== undefined && !threads.markHandled(change.handled)) throw new Undone("seen");
    for (const id of change.handledToo ?? []) threads.markHandled(id);
    if (change.acted && !cases.addAct(change.acted, at)) throw new Undone("seen");
    if (change.notice !== undefined && !cases.addNotice(change.notice, at)) throw new Undone("seen");
    if (thread && !threads.isCurrent(thread.id, thread.version)) throw new Undone("stale");
    if (thread && change.erase) {
      threads.erase(thread.id, at);
      outbox.erase({ kind: "customer", threadId: thread.id });
      for (const caseId of cases.erase(thread.id)) outbox.erase({ kind: "case", caseId });
      outbox.eraseParkedNews();
    } else if (thread) threads.save(thread.id, thread.state, at);
    if (change.case) cases.save(change.case);
    for (const event of change.events ?? []) cases.addEvent(event);
    if (change.numbers) numbers.edit(change.numbers.edits, change.numbers.by, at);
    for (const row of change.doubted ?? []) numbers.addDoubted(row);
    if (change.verdict && thread) verdicts.add(change.verdict, thread.id, at);
    for (const message of change.outgoing) outbox.add(message, at);
  };

  return {
    ...threads.methods,
    ...outbox.methods,
    ...cases.methods,
    ...numbers.methods,
    ...verdicts.methods,
    ...linksOf(db, write),
    sentPictures: sentPicturesOf(db, write),
    stock: stockOf(db),
    telegram: telegramOf(db, write, outbox.add),
    upkeep: upkeepOf(db, write),
    commit: async (change) => {
      try {
        await write(() => store(change));
        if (change.erase) db.pragma("wal_checkpoint(TRUNCATE)"); // the log would keep the erased words
        return "done";
      } catch (error) {
        if (error instanceof Undone) return error.why;
        throw error;
      }
    },
    close: async () => {
      settle();
      db.close();
    },
  };
}
