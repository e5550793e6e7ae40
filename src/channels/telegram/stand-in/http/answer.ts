import type { ServerResponse } from "node:http";
import type { ApiResponse } from "grammy/types";
import type { Refusal } from "../refusal.ts";

/** Answers with what a method gave. */
export function answerResult(response: ServerResponse, result: unknown): void {
  send(response, 200, { ok: true, result });
}

/** Answers with a refusal; the status is its code, as Telegram does. */
export function answerRefusal(response: ServerResponse, { code, description, parameters }: Refusal): void {
  send(response, code, {
    ok: false,
    error_code: code,
    description,
    ...(parameters === undefined ? {} : { parameters }),
  });
}

/** A web page where JSON was due. */
export function answerBadGateway(response: ServerResponse): void {
  response.writeHead(502, { "content-type": "text/html" });
  response.end(
    "<html><head><title>502 Bad Gateway</title></head><body><h1>502 Bad Gateway</h1></body></html>",
  );
}

/** The beginning of an answer and nothing more. */
export function answerMalformed(response: ServerResponse): void {
  response.writeHead(200, { "content-type": "application/json" });
  response.end('{"ok":true,"result":{"message_id":');
}

export function answerFile(response: ServerResponse, bytes: Uint8Array): void {
  response.writeHead(200, { "content-type": "application/octet-stream", "content-length": bytes.length });
  response.end(bytes);
}

/** Breaks the connection off with a reset, as a failing network does. */
export function breakOff(response: ServerResponse): void {
  response.socket?.resetAndDestroy();
}

function send(response: ServerResponse, status: number, body: ApiResponse<unknown>): void {
  if (response.destroyed) return;
  response.writeHead(status, { "content-type": "application/json" });
  response.end(JSON.stringify(body));
}
