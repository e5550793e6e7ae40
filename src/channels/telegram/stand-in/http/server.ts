import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { setTimeout as pause } from "node:timers/promises";
import type { Calls, Outcome } from "../calls.ts";
import type { Fault, Faults } from "../faults.ts";
import type { FileStore } from "../files.ts";
import { type MethodName, type Methods, methodNamed, type Request } from "../protocol.ts";
import { notFound, Refusal, tooManyRequests, unauthorized } from "../refusal.ts";
import {
  answerBadGateway,
  answerFile,
  answerMalformed,
  answerRefusal,
  answerResult,
  breakOff,
} from "./answer.ts";
import { type Body, readBody } from "./body.ts";

export interface Served {
  readonly token: string;
  readonly methods: Methods;
  readonly faults: Faults;
  readonly calls: Calls;
  readonly files: FileStore;
  readonly now: () => string;
}

/** Listens on loopback. Port 0 takes a free one. */
export async function listen(served: Served, port: number): Promise<{ server: Server; port: number }> {
  const server = createServer((request, response) => {
    handle(served, request, response).catch((error: unknown) => {
      // A fault of the stand-in itself must show, and must not look like a fault a test planned.
      if (!response.headersSent)
        answerRefusal(response, new Refusal(500, `Internal Server Error: ${String(error)}`));
    });
  });
  server.keepAliveTimeout = 60_000;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", resolve);
  });
  return { server, port: (server.address() as AddressInfo).port };
}

async function handle(served: Served, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const url = new URL(request.url ?? "/", "http://127.0.0.1");
  const [, files, token, rest] = /^(\/file)?\/bot([^/]+)\/(.+)$/.exec(url.pathname) ?? [];
  if (token === undefined || rest === undefined) return answerRefusal(response, notFound());
  if (token !== served.token) return answerRefusal(response, unauthorized());
  if (files !== undefined) return download(served, rest, response);
  const method = methodNamed(rest);
  if (method === undefined) return answerRefusal(response, notFound("method not found"));
  try {
    const body = await readBody(request, url.searchParams);
    await answerCall(served, method, body, response);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    answerRefusal(response, error);
  }
}

function download({ files }: Served, path: string, response: ServerResponse): void {
  const kept = files.atPath(path);
  if (kept === undefined) answerRefusal(response, notFound());
  else answerFile(response, kept.bytes);
}

/** Records the call, lets a planned fault strike, and otherwise does what was asked. */
async function answerCall(
  served: Served,
  method: MethodName,
  { params, uploads }: Body,
  response: ServerResponse,
): Promise<void> {
  const gone = new AbortController();
  const end = served.calls.begin({
    method,
    params,
    at: served.now(),
    uploads: [...uploads.values()].map(({ fileName }) => fileName),
  });
  response.once("close", () => {
    gone.abort();
    end({ kind: "client hung up" });
  });
  const request: Request = { uploads, gone: gone.signal };
  const fault = served.faults.strike(method, params);
  if (fault !== undefined && !actsFirst(fault)) {
    if (fault.kind !== "silence") end({ kind: "fault", fault: fault.kind });
    return strikeDown(fault, response);
  }
  // The parameters are what the client sent; every method checks those it needs (`Params` has them all optional).
  const act = served.methods[method] as (params: object, request: Request) => unknown;
  const result = await outcomeOf(() => act(params, request));
  if (fault?.kind === "slow") await pause(fault.ms);
  if (fault?.kind === "held") await fault.until;
  if (fault?.kind === "answer lost") {
    end({ kind: "fault", fault: fault.kind });
    return breakOff(response);
  }
  end(result instanceof Refusal ? refused(result) : { kind: "done" });
  if (result instanceof Refusal) answerRefusal(response, result);
  else answerResult(response, result);
}

/** Faults under which the call is carried out all the same. */
const actsFirst = ({ kind }: Fault): boolean => kind === "answer lost" || kind === "held" || kind === "slow";

function strikeDown(fault: Fault, response: ServerResponse): void {
  if (fault.kind === "too many requests") answerRefusal(response, tooManyRequests(fault.retryAfterSeconds));
  if (fault.kind === "bad gateway") answerBadGateway(response);
  if (fault.kind === "unauthorized") answerRefusal(response, unauthorized());
  if (fault.kind === "refused") answerRefusal(response, fault.refusal);
  if (fault.kind === "malformed") answerMalformed(response);
  if (fault.kind === "reset") breakOff(response);
}

async function outcomeOf(act: () => unknown): Promise<unknown> {
  try {
    return await act();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
}

const refused = ({ code, description }: Refusal): Outcome => ({ kind: "refused", code, description });
