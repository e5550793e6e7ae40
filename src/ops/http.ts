import { createServer, type Server } from "node:http";
import { ConfigError } from "../config.ts";
import type { Store } from "../store/store.ts";
import type { Metrics } from "./metrics.ts";

export interface HealthParts {
  readonly store: Store;
  readonly metrics: Pick<Metrics, "sincePollMs">;
  /** A poll is answered at least this often when all is well; null where nothing polls. */
  readonly pollWithinMs: number | null;
  /** What is wrong with texts or data that were to be reloaded; null when nothing is. */
  readonly reloadTrouble: () => string | null;
}

export interface Health {
  readonly status: "ok" | "failing";
  readonly store: "ok" | "failing";
  readonly lastPollSecondsAgo: number | null;
  readonly waiting: { readonly toHandle: number; readonly toDeliver: number; readonly parked: number } | null;
  readonly reload: "ok" | "refused";
}

/** Whether the desk can work now: the store answers, and the platform does. */
export async function healthOf({
  store,
  metrics,
  pollWithinMs,
  reloadTrouble,
}: HealthParts): Promise<Health> {
  const counts = await store.upkeep.counts().catch(() => null);
  const since = metrics.sincePollMs();
  const late = pollWithinMs !== null && (since === null || since > pollWithinMs);
  return {
    status: counts === null || late ? "failing" : "ok",
    store: counts === null ? "failing" : "ok",
    lastPollSecondsAgo: since === null ? null : Math.round(since / 1000),
    waiting:
      counts === null
        ? null
        : {
            toHandle: counts.unhandled + counts.updatesWaiting,
            toDeliver: counts.outboxWaiting,
            parked: counts.outboxParked + counts.updatesParked,
          },
    reload: reloadTrouble() === null ? "ok" : "refused",
  };
}

/**
 * Shows `/health` (200, or 503 when failing) and `/metrics`. No customer's word or id is in either. Throws
 * {@link ConfigError} when the port cannot be had.
 */
export function serveOps(
  { host, port }: { readonly host: string; readonly port: number },
  health: HealthParts,
  metrics: Pick<Metrics, "text" | "mediaType">,
): Promise<Server> {
  const page = async (
    path: string | undefined,
  ): Promise<readonly [status: number, type: string, body: string]> => {
    switch (path?.split("?")[0]) {
      case "/health": {
        const found = await healthOf(health);
        return [found.status === "ok" ? 200 : 503, "application/json", `${JSON.stringify(found)}\n`];
      }
      case "/metrics":
        return [200, metrics.mediaType, await metrics.text()];
      default:
        return [404, "text/plain", "/health or /metrics\n"];
    }
  };
  const server = createServer((request, response) => {
    request.resume();
    const plain = { "cache-control": "no-store", "x-content-type-options": "nosniff" };
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.writeHead(405, { ...plain, allow: "GET, HEAD" }).end();
      return;
    }
    page(request.url)
      .catch(() => [503, "text/plain", "the store cannot be read\n"] as const)
      .then(([status, type, body]) =>
        response
          .writeHead(status, { ...plain, "content-type": type })
          .end(request.method === "HEAD" ? "" : body),
      );
  });
  server.requestTimeout = 10_000;
  server.headersTimeout = 5000;
  return new Promise((resolve, reject) => {
    server.once("error", (cause: NodeJS.ErrnoException) =>
      reject(
        new ConfigError(
          `Setting NAMEPLATE_HTTP_PORT: cannot listen on ${host}:${port} (${cause.code ?? "unknown"}). Choose another port or end what uses it.`,
        ),
      ),
    );
    server.listen(port, host, () => resolve(server));
  });
}
