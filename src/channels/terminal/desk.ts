import { randomUUID } from "node:crypto";
import type { Readable, Writable } from "node:stream";
import type { Wording } from "../../conversation/wording.ts";
import { helpText, unclearText } from "../../desk/staff-help.ts";
import { readStaffLine, type StaffLine } from "../../desk/staff-line.ts";
import type { Engine } from "../../engine.ts";
import { laneKey } from "../../outgoing.ts";
import type { StaffMember } from "../../staff.ts";
import type { OutboxItem, Store } from "../../store/store.ts";
import { linesOf } from "./lines.ts";
import { wrap } from "./wrap.ts";

export interface DeskTerminalOptions {
  readonly engine: Engine;
  readonly store: Store;
  readonly wording: Wording;
  readonly input: Readable;
  readonly output: Writable;
  readonly interactive: boolean;
  readonly columns: number;
  readonly now: () => string;
  /** Who sits there. */
  readonly by: StaffMember;
  /**
   * True where this terminal is the staff's channel: it shows the desk's messages and marks them delivered.
   * False beside another channel that delivers them.
   */
  readonly delivers: boolean;
}

const LISTEN_MS = 1000;
const TICK_EVERY = 20;

/** The staff's side in the terminal: the same acts and the same relay mark as in any other channel. */
export async function deskInTerminal(options: DeskTerminalOptions): Promise<void> {
  const { engine, wording, output, interactive, now, by } = options;
  const width = Math.min(Math.max(options.columns, 40), 100);
  const print = (text: string) => output.write(`${wrap(text, width)}\n\n`);
  let opened: number | null = null;
  const prompt = () => {
    if (interactive) output.write(opened === null ? "desk: " : `case ${opened}: `);
  };

  const obey = async (line: StaffLine): Promise<string> => {
    switch (line.kind) {
      case "help":
        return helpText(wording);
      case "list":
        return (await engine.waiting(now())).text;
      case "show": {
        const shown = await engine.show(line.caseId, now());
        if (!shown) return wording.say("desk", "refused.noCase", { id: line.caseId });
        opened = line.caseId;
        return shown.text;
      }
      case "unclear":
        return unclearText(line, wording);
      case "act": {
        if (opened === null) return wording.say("desk", "unclear.noCaseOpen");
        const item = { id: `terminal:${randomUUID()}`, caseId: opened, act: line.act, by, at: now() };
        return (await engine.staff(item)).answer;
      }
    }
  };

  let busy = false;
  let listened = 0;
  const listen = async () => {
    if (busy) return;
    busy = true;
    try {
      if (listened++ % TICK_EVERY === 0) await engine.tick(now());
      const messages = await staffMessages(options, opened);
      if (messages.length > 0) {
        if (interactive) output.write("\n\n");
        for (const message of messages) print(message);
        prompt();
      }
    } finally {
      busy = false;
    }
  };

  await engine.catchUp();
  await engine.tick(now());
  for (const message of await staffMessages(options, null)) print(message);
  if (interactive) print((await engine.waiting(now())).text);
  prompt();
  const listener = interactive ? setInterval(() => void listen(), LISTEN_MS) : undefined;
  try {
    for await (const text of linesOf(options.input, { joinPasted: interactive })) {
      if (text.trim() !== "") {
        print(await obey(readStaffLine(text)));
        for (const message of await staffMessages(options, opened)) print(message);
      }
      prompt();
    }
  } finally {
    clearInterval(listener);
  }
  if (interactive) output.write("\n");
}

/** What all staff should see: alerts, digests, and what happens in cases. Briefs only of the case in view. */
async function staffMessages(
  { store, delivers }: DeskTerminalOptions,
  opened: number | null,
): Promise<readonly string[]> {
  if (!delivers) return [];
  const messages = (await store.undelivered()).filter(({ lane }) => lane.kind !== "customer");
  for (const { id } of messages) await store.delivered(id);
  return messages.filter((message) => isNews(message, opened)).map(showMessage);
}

function isNews({ lane, slot }: OutboxItem, opened: number | null): boolean {
  // The same alert is in the desk's lane, with the number to call.
  if (lane.kind === "on-call") return false;
  return slot !== "brief" || (lane.kind === "case" && lane.caseId === opened);
}

function showMessage({ lane, content }: OutboxItem): string {
  return lane.kind === "case" ? `[${laneKey(lane).replace(":", " ")}] ${content.text}` : content.text;
}
