import { createInterface } from "node:readline";
import { z } from "zod";

/** A line that could not be used; `id` is the line's own where it could be read. */
export interface LineError {
  readonly id: unknown;
  readonly error: string;
}

/**
 * Answers each JSON line of stdin with one JSON line on stdout, in order. A line that is not valid gives
 * `{"id", "error"}`, the run goes on, and the exit status is 1 at the end.
 */
export async function answerJsonLines<T>(
  schema: z.ZodType<T>,
  answer: (line: T) => unknown | Promise<unknown>,
): Promise<void> {
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line.trim() === "") continue;
    const read = readLine(line, schema);
    if ("error" in read) process.exitCode = 1;
    const out = "error" in read ? read : await answer(read.value);
    process.stdout.write(`${JSON.stringify(out)}\n`);
  }
}

/** One JSON line through a schema; the error names the field and what was expected. */
export function readLine<T>(line: string, schema: z.ZodType<T>): { readonly value: T } | LineError {
  let parsed: unknown;
  try {
    parsed = JSON.parse(line);
  } catch (cause) {
    return { id: null, error: `not valid JSON: ${(cause as Error).message}` };
  }
  const checked = schema.safeParse(parsed);
  if (checked.success) return { value: checked.data };
  const problems = checked.error.issues.map(({ path, message }) => `${path.join(".") || "line"}: ${message}`);
  return { id: idOf(parsed), error: problems.join("; ") };
}

function idOf(parsed: unknown): unknown {
  return typeof parsed === "object" && parsed !== null && "id" in parsed ? parsed.id : null;
}

/** A line's own name for itself: anything JSON can say that is not a structure. */
export const lineId = z.union([z.string(), z.number(), z.boolean(), z.null()]).optional();
