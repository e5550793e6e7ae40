import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { bodyOf } from "../http-body.ts";
import { actSchema, type Outcome } from "./acts.ts";
import { Events } from "./events.ts";
import { pageFile } from "./page-files.ts";
import type { Place } from "./place.ts";

/** An act is a message of at most 4096 characters and where it goes. */
export const BODY_BYTES = 32 * 1024;
const HOST = "127.0.0.1";

export interface TryPage {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves the page on loopback. The place behind it is opened at the first visit: whoever never looks pays nothing.
 * Rejects when the port cannot be had.
 */
export async function serveTryPage(port: number, open: () => Promise<Place>): Promise<TryPage> {
  const events = new Events(open);
  const server = createServer((request, response) => {
    answer(server, events, request, response).catch((error: unknown) => {
      if (response.headersSent) return response.destroy();
      json(response, 500, { problem: error instanceof Error ? error.message : String(error) });
    });
  });
  server.headersTimeout = 10_000;
  server.requestTimeout = 20_000;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, HOST, resolve);
  });
  return {
    address: `http://${HOST}:${portOf(server)}/`,
    close: async () => {
      server.close();
      server.closeAllConnections();
      await events.close();
    },
  };
}

const portOf = (server: Server): number => (server.address() as AddressInfo).port;

async function answer(
  server: Server,
  events: Events,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  for (const [name, value] of safeHeaders) response.setHeader(name, value);
  if (!isMeantForUs(request, portOf(server)))
    return json(response, 403, { problem: "This page answers to its own address only." });
  const path = request.url?.split("?")[0] ?? "/";
  if (path === "/acts") return act(events, request, response);
  if (request.method !== "GET") return json(response, 405, { problem: "Only GET here." }, { allow: "GET" });
  if (path === "/events") return events.listen(response);
  const [, picture] = /^\/pictures\/([\w-]{1,64})$/.exec(path) ?? [];
  if (picture !== undefined) {
    const bytes = await (await events.place()).picture(picture);
    if (bytes === undefined) return json(response, 404, { problem: "There is no such picture." });
    return send(response, 200, "image/png", bytes);
  }
  const file = pageFile(path);
  if (file === undefined) return json(response, 404, { problem: "There is nothing here." });
  send(response, 200, file.type, file.bytes);
}

async function act(events: Events, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== "POST")
    return json(response, 405, { problem: "Only POST here." }, { allow: "POST" });
  // A form of another page cannot send this type without asking first.
  if (request.headers["content-type"]?.split(";")[0]?.trim() !== "application/json")
    return json(response, 415, { problem: "Acts come as application/json." });
  const body = await bodyOf(request, BODY_BYTES);
  if (body === undefined)
    return json(response, 413, { problem: "That is too long." }, { connection: "close" });
  const checked = actSchema.safeParse(parsed(body));
  if (!checked.success) {
    const [issue] = checked.error.issues;
    return json(response, 400, { problem: `${issue?.path.join(".") || "act"}: ${issue?.message}` });
  }
  const outcome: Outcome =
    checked.data.do === "afresh" ? await events.afresh() : await (await events.place()).act(checked.data);
  if (outcome.kind === "refused") return json(response, 409, { problem: outcome.problem });
  // Not every act is seen by itself, as when the clock is moved.
  events.tell();
  const { said = "", person } = outcome;
  json(response, 200, { said, person });
}

/**
 * Another site's page can make a browser call this address, under a name of that site's own: the host's name and the
 * origin tell.
 */
function isMeantForUs({ headers }: IncomingMessage, port: number): boolean {
  const ours = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (!ours.includes(headers.host ?? "")) return false;
  return headers.origin === undefined || ours.some((host) => headers.origin === `http://${host}`);
}

const safeHeaders: readonly (readonly [string, string])[] = [
  [
    "content-security-policy",
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  ],
  ["x-content-type-options", "nosniff"],
  ["referrer-policy", "no-referrer"],
  ["cross-origin-opener-policy", "same-origin"],
  ["cross-origin-resource-policy", "same-origin"],
  ["cache-control", "no-store"],
];

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return undefined;
  }
}

function json(response: ServerResponse, status: number, value: object, headers = {}): void {
  send(response, status, "application/json; charset=utf-8", JSON.stringify(value), headers);
}

function send(
  response: ServerResponse,
  status: number,
  type: string,
  bytes: Uint8Array | string,
  headers = {},
): void {
  response.writeHead(status, { "content-type": type, ...headers }).end(bytes);
}
