import type { Db } from "./database.ts";

/** Does some writing; resolves once it is on the disk, rejects when nothing of it is stored. */
export type Write = <T>(work: () => T) => Promise<T>;

export interface Writes {
  readonly write: Write;
  /** Commits what waits now instead of a moment later. */
  readonly settle: () => void;
}

interface Waiting {
  /** Does the writing; gives what is to be told once it is committed. */
  readonly work: () => () => void;
  readonly failed: (error: unknown) => void;
}

/**
 * What is written within one turn of the event loop shares one commit, because a commit waits for the disk far longer than
 * the writing takes. Each piece is done or undone by itself (a savepoint); nobody hears of it before the commit. Reading
 * shows what is committed only.
 */
export function writesOf(db: Db): Writes {
  let waiting: Waiting[] = [];
  const byItself = db.transaction((work: Waiting["work"]) => work());
  const together = db.transaction((group: readonly Waiting[]) => group.map(doOne));

  function doOne({ work, failed }: Waiting): () => void {
    try {
      return byItself(work);
    } catch (error) {
      // A full disk may end the whole transaction: then nothing of the others is stored either.
      if (!db.inTransaction) throw error;
      return () => failed(error);
    }
  }

  const settle = () => {
    const group = waiting;
    waiting = [];
    if (group.length === 0) return;
    let told: readonly (() => void)[];
    try {
      told = together.immediate(group);
    } catch (error) {
      told = group.map(
        ({ failed }) =>
          () =>
            failed(error),
      );
    }
    for (const tell of told) tell();
  };

  return {
    settle,
    write: (work) =>
      new Promise((resolve, failed) => {
        const told = () => {
          const result = work();
          return () => resolve(result);
        };
        if (waiting.push({ work: told, failed }) === 1) setImmediate(settle);
      }),
  };
}
