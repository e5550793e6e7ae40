import { randomUUID } from "node:crypto";
import type { Readable, Writable } from "node:stream";
import type { Engine } from "../../engine.ts";
import type { Lane } from "../../outgoing.ts";
import type { Store } from "../../store/store.ts";
import { linesOf } from "./lines.ts";
import { wrap } from "./wrap.ts";

/** The one customer of a terminal. */
export const TERMINAL_THREAD = "terminal";
const LANE: Lane = { kind: "customer", threadId: TERMINAL_THREAD };

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
/** How often words from the desk are looked for while the customer types nothing. */
const LISTEN_MS = 1000;

/** Runs the chat until the input ends. Replies left over from a killed run are shown first. */
export async function chatInTerminal(options: TerminalOptions): Promise<void> {
  const { engine, store, output, interactive, now } = options;
  const width = Math.min(Math.max(options.columns, 40), 88);
  const print = (text: string) => output.write(`${wrap(text, width)}\n\n`);
  const deliver = async () => {
    const waiting = await store.undelivered(LANE);
    for (const { id, content } of waiting) {
      print(content.text);
      await store.delivered(id);
    }
    return waiting.length;
  };

  await engine.catchUp();
  await deliver();
  if (interactive) {
    const { lines } = await engine.thread(TERMINAL_THREAD);
    const greeting = await options.greeting(lines.length > 0);
    if (greeting !== "") print(greeting);
    output.write(PROMPT);
  }
  let answering = false;
  const listen = async () => {
    if (answering || (await store.undelivered(LANE)).length === 0) return;
    output.write("\n\n");
    await deliver();
    output.write(PROMPT);
  };
  const listener = interactive ? setInterval(() => void listen(), LISTEN_MS) : undefined;
  try {
    for await (const text of linesOf(options.input, { joinPasted: interactive })) {
      answering = true;
      if (text.trim() !== "" || !interactive) {
        if (interactive) output.write("\n");
        await engine.handle({ id: `terminal:${randomUUID()}`, threadId: TERMINAL_THREAD, text, at: now() });
        await deliver();
      }
      if (interactive) output.write(PROMPT);
      answering = false;
    }
  } finally {
    clearInterval(listener);
  }
  if (interactive) output.write("\n");
}
