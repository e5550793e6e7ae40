import { randomUUID } from "node:crypto";
import { z } from "zod";
import { openDesk } from "../compose.ts";
import { readConfig } from "../config.ts";
import type { Thread } from "../conversation/thread.ts";
import { openLog } from "../ops/log.ts";
import { answerJsonLines } from "./json-lines.ts";
import { showMatch } from "./show-match.ts";

const lineSchema = z.object({
  thread: z.union([z.string(), z.number()]).transform(String),
  text: z.string(),
  at: z.iso.datetime({ offset: true, local: true }).optional(),
});

export interface ChatFiles {
  readonly catalogueFile?: string | undefined;
  readonly storeFile?: string | undefined;
}

/** The `chat --json` surface: messages of any number of threads in, replies with verdict and case out. */
export async function runChatJson({ catalogueFile, storeFile = ":memory:" }: ChatFiles): Promise<void> {
  const now = () => new Date().toISOString();
  const config = readConfig();
  const desk = await openDesk(config, {
    log: await openLog(config, "nowhere"),
    catalogueFile,
    storeFile,
    today: now().slice(0, 10),
    onTrouble: ({ threadId }, error) =>
      process.stderr.write(`A message of thread ${threadId} could not be handled: ${String(error)}\n`),
  });
  const { engine, store, content } = desk;
  await engine.catchUp();
  await answerJsonLines(lineSchema, async ({ thread: threadId, text, at }) => {
    const item = { id: `json:${randomUUID()}`, threadId, text, at: at ?? now() };
    const { replies, thread, assessment } = await engine.handle(item);
    for (const { id } of await store.undelivered({ kind: "customer", threadId })) await store.delivered(id);
    const match = thread.hazard === null ? assessment?.match : null;
    return {
      thread: threadId,
      replies,
      verdict: match ? showMatch(match, assessment?.ask ?? [], content.wording) : null,
      case: showCase(thread),
    };
  });
  await desk.close();
}

function showCase({ case: open }: Thread): { priority: string; state: string } | null {
  return open.state === "none" ? null : { priority: open.urgency, state: open.state };
}
