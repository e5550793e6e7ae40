import { StoreError } from "../store.ts";

/** What SQLite's result codes (sqlite.org, "Result and Error Codes") mean for whoever runs the desk. */
const meanings: readonly (readonly [code: RegExp, words: string])[] = [
  [
    /^SQLITE_FULL/,
    "the disk is full, so this could not be stored. What was stored before is whole. Free some space; nothing else is needed.",
  ],
  [
    /^SQLITE_READONLY/,
    "the store can be read but not written. Give the desk's user write permission to the file and its folder, then start again.",
  ],
  [
    /^SQLITE_BUSY/,
    "another program has held the store for over 5 seconds. End it (a second desk, a copy or a database tool), then try again. Nothing was lost.",
  ],
  [
    /^SQLITE_(?:CORRUPT|NOTADB)/,
    'the store is damaged or is no store. Stop the desk and keep the file; the command "doctor" says what is wrong, "restore" brings a backup back.',
  ],
  [
    /^SQLITE_(?:IOERR|CANTOPEN)/,
    "the disk does not let the store be read or written. Check that the disk is there, healthy and has space, and that folder and file belong to the desk's user, or choose another file with --store.",
  ],
];

/** An error of SQLite as a {@link StoreError} a person can act on; any other comes back as it was. */
export function plainly(error: unknown, file: string): unknown {
  const code = (error as { readonly code?: unknown } | null)?.code;
  if (!(error instanceof Error) || typeof code !== "string") return error;
  const [, words] = meanings.find(([known]) => known.test(code)) ?? [];
  return words === undefined ? error : new StoreError(`${file}: ${words} (${code})`, { cause: error });
}

/** The same methods, asynchronous as they were, with errors told by {@link plainly}. */
export function inPlainWords<T extends object>(methods: T, file: string): T {
  const told = Object.entries(methods).map(([name, method]) => [
    name,
    typeof method === "function"
      ? async (...given: unknown[]) => {
          try {
            return await method(...given);
          } catch (error) {
            throw plainly(error, file);
          }
        }
      : inPlainWords(method, file),
  ]);
  return Object.fromEntries(told) as T;
}
