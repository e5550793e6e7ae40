import { randomUUID } from "node:crypto";
import type { Readable, Writable } from "node:stream";
import type { Engine } from "../../engine.ts";
import type { Store } from "../../store/store.ts";
import { linesOf } from "./lines.ts";
import { wrap } from "./wrap.ts";

/** The one customer of a terminal. */
export const TERMINAL_THREAD = "terminal";

export interface TerminalOptions {
  readonly engine: Engine;
  readonly store: Store;
  readonly input: Readable;
  readonly output: Writable;
  /** A person types: show a prompt and join pasted lines. Otherwise each line is a message and only replies show. */
  readonly interactive: boolean;
  readonly columns: number;
  readonly now: () => string;
  /** Shown once at the start of an interactive chat; empty for none. */
  readonly greeting: (known: boolean) => Promise<string>;
}

const PROMPT = "> ";

/** Runs the chat until the input ends. Replies left over from a killed run are shown first. */
export async function chatInTerminal(options: TerminalOptions): Promise<void> {
  const { engine, store, output, interactive, now } = options;
  const width = Math.min(Math.max(options.columns, 40), 88);
  const print = (text: string) => output.write(`${wrap(text, width)}\n\n`);
  const deliver = async () => {
    for (const { id, text } of await store.undelivered(TERMINAL_THREAD)) {
      print(text);
      await store.delivered(id);
    }
  };

  await engine.catchUp();
  await deliver();
  if (interactive) {
    const { lines } = await engine.thread(TERMINAL_THREAD);
    const greeting = await options.greeting(lines.length > 0);
    if (greeting !== "") print(greeting);
    output.write(PROMPT);
  }
  for await (const text of linesOf(options.input, { joinPasted: interactive })) {
    if (text.trim() !== "" || !interactive) {
      if (interactive) output.write("\n");
      await engine.handle({ id: `terminal:${randomUUID()}`, threadId: TERMINAL_THREAD, text, at: now() });
      await deliver();
    }
    if (interactive) output.write(PROMPT);
  }
  if (interactive) output.write("\n");
}
