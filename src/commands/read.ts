import { z } from "zod";
import { openUnderstanding } from "../understanding.ts";
import { answerJsonLines, lineId } from "./json-lines.ts";

const lineSchema = z.object({ id: lineId, text: z.string() });

/** The `read` surface: messages in, what each states out. */
export async function runRead(): Promise<void> {
  const understand = openUnderstanding();
  await answerJsonLines(lineSchema, ({ id, text }) => ({ id: id ?? null, ...understand(text) }));
}
