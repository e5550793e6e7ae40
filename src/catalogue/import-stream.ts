import { Readable } from "node:stream";
import { CsvError, parse } from "csv-parse";
import { EncodingFault } from "./import-text.ts";
import {
  type Columns,
  delimiterOf,
  parserOptions,
  type TableDefinition,
  type TableEvent,
  tableReader,
  unclosedQuote,
} from "./table.ts";

/** A row longer than this is the work of a quote that never ends; without a limit it would hold the whole file. */
const LONGEST_ROW_BYTES = 1_000_000;
/** A header row is looked for in so many characters, to find the separator it uses. */
const LONGEST_HEADER = 65_536;

/**
 * Reads a table piece by piece, never holding more than a few rows: the same events, row by row, that
 * `readTable` collects. Ends after a `broken` event. Throws only what reading the file throws.
 */
export async function* streamTable<C extends Columns>(
  text: AsyncIterable<string>,
  table: TableDefinition<C>,
): AsyncGenerator<TableEvent<C>> {
  const pieces = text[Symbol.asyncIterator]();
  let nextLine = 1;
  /** Lines on which the records begin that are parsed and not yet taken. */
  const starts: number[] = [];
  /** Text from line `unreadLine` on that the parser has been given: shows how a broken row begins. */
  let unread = "";
  let unreadLine = 1;
  const drop = () => {
    for (; unreadLine < nextLine; unreadLine++) unread = unread.slice(unread.indexOf("\n") + 1);
  };
  const keep = (piece: string) => {
    drop();
    unread += piece;
  };
  try {
    const { head, delimiter } = await beginning(pieces);
    const parser = parse({
      ...parserOptions(delimiter),
      max_record_size: LONGEST_ROW_BYTES,
      on_record: (cells: string[], { lines }: { readonly lines: number }) => {
        starts.push(nextLine);
        nextLine = lines + 1;
        return cells;
      },
    });
    const source = Readable.from(allOf(head, pieces, keep));
    source.once("error", (error) => parser.destroy(error));
    source.pipe(parser);
    const reader = tableReader(table);
    for await (const cells of parser as AsyncIterable<readonly string[]>) {
      const event = reader.take({ line: starts.shift() ?? 0, cells: cells.map((cell) => cell.trim()) });
      if (event) yield event;
      if (event?.kind === "broken") return;
    }
    const missing = reader.end();
    if (missing) yield missing;
  } catch (error) {
    if (error instanceof EncodingFault) yield { kind: "broken", errors: [error.fault] };
    else if (error instanceof CsvError) {
      drop();
      const found = unread.slice(0, 60).split("\n")[0] ?? "";
      yield { kind: "broken", errors: [unclosedQuote(nextLine, found)] };
    } else throw error;
  }
}

/** Enough of the text to see the header row, and the separator it uses. */
async function beginning(pieces: AsyncIterator<string>): Promise<{ head: string; delimiter: string }> {
  let head = "";
  while (!/[^\n]\n/.test(head) && head.length < LONGEST_HEADER) {
    const next = await pieces.next();
    if (next.done) break;
    head += next.value;
  }
  return { head, delimiter: delimiterOf(head) };
}

async function* allOf(
  head: string,
  pieces: AsyncIterator<string>,
  keep: (piece: string) => void,
): AsyncGenerator<string> {
  for (let piece: string | undefined = head; piece !== undefined; ) {
    keep(piece);
    if (piece !== "") yield piece;
    const next = await pieces.next();
    piece = next.done ? undefined : next.value;
  }
}
