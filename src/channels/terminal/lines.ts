import { createInterface } from "node:readline";
import type { Readable } from "node:stream";

/** Lines that arrive within this time of each other were pasted, not typed. */
const PASTE_GAP_MS = 40;

/**
 * The messages of a line-based input. With `joinPasted`, lines that arrive together (a label copied line by
 * line) make one message.
 */
export async function* linesOf(
  input: Readable,
  { joinPasted }: { joinPasted: boolean },
): AsyncGenerator<string> {
  const lines = createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })[Symbol.asyncIterator]();
  let ahead: Promise<IteratorResult<string>> | undefined;
  for (;;) {
    const first = await (ahead ?? lines.next());
    ahead = undefined;
    if (first.done) return;
    const message = [first.value];
    while (joinPasted) {
      ahead = lines.next();
      const next = await Promise.race([ahead, pause(PASTE_GAP_MS)]);
      if (next === "typed") break;
      ahead = undefined;
      if (next.done) {
        yield message.join("\n");
        return;
      }
      message.push(next.value);
    }
    yield message.join("\n");
  }
}

function pause(ms: number): Promise<"typed"> {
  return new Promise((resolve) => setTimeout(() => resolve("typed"), ms));
}
