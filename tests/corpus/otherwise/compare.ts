import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";
import type { ReadingMessage } from "../score/messages.ts";
import { ways } from "./ways.ts";

/** A message that is read otherwise when it is said otherwise. */
export interface Change {
  readonly id: string;
  readonly text: string;
  readonly before: string;
  readonly after: string;
}

export interface Compared {
  readonly way: string;
  readonly tried: number;
  readonly changes: readonly Change[];
}

const read = (text: string) => JSON.stringify(valuesOf(readMessage(text)));

/** The same numbers on every run. */
function dice(): () => number {
  let state = 7;
  return () => {
    state = (state * 1_103_515_245 + 12_345) & 0x7fffffff;
    return state / 0x7fffffff;
  };
}

/** Says every message in every way, and tells which are read otherwise. */
export function compare(messages: readonly ReadingMessage[]): readonly Compared[] {
  return Object.entries(ways).map(([way, say]) => {
    const roll = dice();
    const changes: Change[] = [];
    let tried = 0;
    for (const message of messages) {
      const text = say(message, roll);
      if (text === undefined) continue;
      tried += 1;
      const [before, after] = [read(message.text), read(text)];
      if (before !== after) changes.push({ id: message.id, text, before, after });
    }
    return { way, tried, changes };
  });
}
