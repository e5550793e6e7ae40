import Database from "better-sqlite3";

interface Native {
  prepare(...given: readonly unknown[]): unknown;
}

const isNative = (value: unknown): value is Native =>
  typeof value === "object" && value !== null && typeof (value as Partial<Native>).prepare === "function";

/** Statements of every database this process has opened. */
const kept: unknown[] = [];

/** From this version of Node on, a statement that is collected while nothing runs ends the process (better-sqlite3 12). */
const FIRST_THAT_ENDS = 24;

/**
 * Opens an SQLite file. On the versions of Node that need it all statements are kept to the end of the process: the store
 * prepares each of its own once, so these are few.
 */
export function openFile(file: string, options: Database.Options = {}): Database.Database {
  const db = new Database(file, options);
  if (Number.parseInt(process.versions.node, 10) < FIRST_THAT_ENDS) return db;
  const held = db as unknown as Record<symbol, unknown>;
  const native = Object.getOwnPropertySymbols(db)
    .map((symbol) => held[symbol])
    .find(isNative);
  if (!native) return db;
  const prepare = native.prepare.bind(native);
  native.prepare = (...given) => {
    const statement = prepare(...given);
    kept.push(statement);
    return statement;
  };
  return db;
}
