import type { IncomingMessage } from "node:http";
import type { Opts } from "grammy/types";
import type { Upload } from "../files.ts";
import type { MethodName } from "../protocol.ts";
import { badRequest, Refusal } from "../refusal.ts";
import { readMultipart } from "./multipart.ts";

/** Uploads of up to 50 MB (Bot API, "Sending files"), and room for the rest of the form. */
const bodyLimitBytes = 51 * 1024 * 1024;

type EveryField = { [M in MethodName]: keyof Opts<M> }[MethodName];

const numbers = [
  "message_thread_id",
  "message_id",
  "reply_to_message_id",
  "user_id",
  "offset",
  "limit",
  "timeout",
  "max_connections",
  "icon_color",
  "cache_time",
] as const satisfies readonly EveryField[];
const flags = [
  "drop_pending_updates",
  "show_alert",
  "disable_notification",
  "protect_content",
] as const satisfies readonly EveryField[];
const structures = [
  "allowed_updates",
  "entities",
  "caption_entities",
  "reply_parameters",
  "reply_markup",
  "media",
  "commands",
  "scope",
  "link_preview_options",
] as const satisfies readonly EveryField[];

/** Numbers, or the public name of a chat. */
const chats = ["chat_id", "from_chat_id"] as const satisfies readonly EveryField[];

export interface Body {
  readonly params: Readonly<Record<string, unknown>>;
  readonly uploads: ReadonlyMap<string, Upload>;
}

/** Parameters of a call from its query string and body: JSON, a URL-encoded form, or multipart. Throws a 400. */
export async function readBody(request: IncomingMessage, query: URLSearchParams): Promise<Body> {
  const type = request.headers["content-type"] ?? "";
  const body = await readAll(request);
  const fromQuery = Object.fromEntries(query);
  if (body.length === 0) return { params: typed(fromQuery), uploads: new Map() };
  if (type.startsWith("multipart/form-data")) {
    const { fields, uploads } = readMultipart(body, type);
    return { params: typed({ ...fromQuery, ...fields }), uploads };
  }
  const text = body.toString("utf8");
  const fields = type.startsWith("application/json")
    ? readJson(text)
    : Object.fromEntries(new URLSearchParams(text));
  return { params: typed({ ...fromQuery, ...fields }), uploads: new Map() };
}

async function readAll(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > bodyLimitBytes) throw new Refusal(413, "Request Entity Too Large");
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

function readJson(text: string): Record<string, unknown> {
  const value = parseJson(text);
  if (typeof value !== "object" || value === null || Array.isArray(value))
    throw badRequest("can't parse JSON object");
  return value as Record<string, unknown>;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw badRequest("can't parse JSON object");
  }
}

/** Gives every parameter the type its name asks for, however it came in; what cannot have it is left out. */
function typed(fields: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, value]) => {
      if (value === null || value === undefined) return [];
      const fitting = typedValue(name, value);
      return fitting === undefined ? [] : [[name, fitting]];
    }),
  );
}

function typedValue(name: string, value: unknown): unknown {
  if (isOneOf(numbers, name)) {
    const number = Number(value);
    return Number.isSafeInteger(number) && value !== "" ? number : undefined;
  }
  if (isOneOf(chats, name)) return /^-?\d{1,15}$/.test(String(value)) ? Number(value) : String(value);
  if (isOneOf(flags, name)) return value === true || value === "true" || value === "True" || value === "1";
  if (isOneOf(structures, name)) {
    const structure = typeof value === "string" ? parseJson(value) : value;
    return typeof structure === "object" ? structure : undefined;
  }
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

const isOneOf = (names: readonly string[], name: string): boolean => names.includes(name);
