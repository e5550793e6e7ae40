import { createHash, timingSafeEqual } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { Update } from "grammy/types";
import { z } from "zod";
import type { KeptUpdate, TelegramStore } from "../../store/telegram.ts";
import { bodyOf } from "../http-body.ts";
import type { Clock } from "./clock.ts";
import { intakeOf } from "./intake.ts";
import type { Log } from "./log.ts";

/** An update is a few kilobytes; nothing honest is larger than this. */
export const BODY_BYTES = 512 * 1024;

export interface WebhookSettings {
  /** The public https address Telegram sends to; its path is the one listened on. */
  readonly url: string;
  /** 16 to 256 of A-Z a-z 0-9 _ - (Bot API, setWebhook). */
  readonly secret: string;
  readonly host: string;
  readonly port: number;
}

export interface WebhookParts {
  readonly settings: WebhookSettings;
  readonly store: Pick<TelegramStore, "keepUpdates">;
  readonly clock: Clock;
  readonly log: Log;
  readonly onKept: (updates: readonly KeptUpdate[]) => void;
}

const updateSchema = z.looseObject({ update_id: z.number().int().nonnegative() });

/** Listens for updates. Each is stored, then answered, then worked on; what is not stored Telegram sends again. */
export function listenForUpdates(parts: WebhookParts): Promise<Server> {
  const { settings, log } = parts;
  const path = new URL(settings.url).pathname;
  const server = createServer((request, response) => {
    answer(parts, path, request)
      .catch((error: unknown) => {
        log.error({ failure: error instanceof Error ? error.name : "unknown" }, "an update was not stored");
        return 500;
      })
      .then((status) => finish(request, response, status));
  });
  server.requestTimeout = 20_000;
  server.headersTimeout = 10_000;
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(settings.port, settings.host, () => resolve(server));
  });
}

async function answer(
  { settings, store, clock, onKept }: WebhookParts,
  path: string,
  request: IncomingMessage,
): Promise<number> {
  if (request.url?.split("?")[0] !== path) return 404;
  if (request.method !== "POST") return 405;
  // Before the body: a stranger's bytes are not even read.
  if (!sameSecret(request.headers["x-telegram-bot-api-secret-token"], settings.secret)) return 401;
  const body = await bodyOf(request, BODY_BYTES);
  if (body === undefined) return 413;
  const update = parse(body);
  if (update === undefined) return 400;
  const kept = await store.keepUpdates([intakeOf(update)], clock.now());
  if (kept.length > 0) setImmediate(() => onKept(kept));
  return 200;
}

/** Compares hashes, so that neither length nor content shows in the time it takes. */
function sameSecret(given: string | string[] | undefined, secret: string): boolean {
  if (typeof given !== "string") return false;
  const hash = (text: string) => createHash("sha256").update(text).digest();
  return timingSafeEqual(hash(given), hash(secret));
}

function parse(body: string): Update | undefined {
  try {
    const checked = updateSchema.safeParse(JSON.parse(body));
    return checked.success ? (checked.data as unknown as Update) : undefined;
  } catch {
    return undefined;
  }
}

function finish(request: IncomingMessage, response: ServerResponse, status: number): void {
  if (response.headersSent || response.destroyed) return;
  // Whoever was refused has bytes on the way that nobody will read.
  if (status !== 200) response.setHeader("connection", "close");
  response.writeHead(status, { "content-length": 0 }).end();
  if (!request.complete) request.resume();
}
