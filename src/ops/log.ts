import { createHmac } from "node:crypto";
import type { Config } from "../config.ts";
import type { Watch } from "./observed.ts";

/** Structured lines for the operator. What people wrote, and secrets, never go in; people go in by {@link namesWith}. */
export interface Log {
  readonly info: (about: object, text: string) => void;
  readonly warn: (about: object, text: string) => void;
  readonly error: (about: object, text: string) => void;
}

type LogConfig = Pick<Config, "logLevel" | "logFile">;

/** The configured log: a file where one is named, else stderr or nowhere. The library is loaded only if it is used. */
export async function openLog(config: LogConfig, otherwise: "stderr"): Promise<Log>;
export async function openLog(config: LogConfig, otherwise: "nowhere"): Promise<Log | null>;
export async function openLog(
  { logLevel, logFile }: LogConfig,
  otherwise: "stderr" | "nowhere",
): Promise<Log | null> {
  if (logFile === null && otherwise === "nowhere") return null;
  const { default: pino } = await import("pino");
  const to =
    logFile === null ? { fd: 2, sync: true } : { dest: logFile, mkdir: true, sync: true, mode: 0o600 };
  const log: Log = pino(
    { level: logLevel, base: null, timestamp: pino.stdTimeFunctions.isoTime },
    pino.destination(to),
  );
  return log;
}

/**
 * Names for people in the log: the same person has the same name, and nobody without the key can tell who it is
 * (HMAC, RFC 2104, with SHA-256, cut to 48 bits).
 */
export function namesWith(key: string): (id: string) => string {
  return (id) => createHmac("sha256", key).update(id).digest("hex").slice(0, 12);
}

/** Where an error came from. Its message stays out: it may hold what a customer wrote. */
export function whereabouts(error: unknown): { readonly error: string; readonly where?: readonly string[] } {
  if (!(error instanceof Error)) return { error: "unknown" };
  const { stack = "", message } = error;
  const frames = stack
    .slice(Math.max(0, stack.indexOf(message)) + message.length)
    .split("\n")
    .filter((line) => /^\s+at .*\/src\/.*:\d+:\d+\)?$/.test(line))
    .map((line) =>
      line
        .trim()
        .replace(/^at /, "")
        .replace(/\(?(?:file:\/\/)?\/\S*?\/src\//, "src/")
        .replace(/\)$/, ""),
    )
    .slice(0, 5);
  return { error: error.name, ...(frames.length === 0 ? {} : { where: frames }) };
}

/** Writes a line for each message and act: who by name, how long it took, what it led to. */
export function logging(log: Log, nameOf: (id: string) => string): Watch {
  const rounded = (ms: number) => Math.round(ms * 10) / 10;
  return {
    handled: ({ threadId }, ms, { replies, thread }) =>
      log.info(
        {
          thread: nameOf(threadId),
          ms: rounded(ms),
          replies: replies.length,
          case: thread.case.state,
          ...(thread.case.state === "none" ? {} : { urgency: thread.case.urgency }),
        },
        "message",
      ),
    acted: ({ caseId, act, by }, ms, { done }) =>
      log.info({ case: caseId, act: act.kind, by: nameOf(by.id), ms: rounded(ms), done }, "act"),
    failed: ({ threadId }, error) =>
      log.error({ thread: nameOf(threadId), ...whereabouts(error) }, "a message could not be stored"),
  };
}
