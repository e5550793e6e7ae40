import { join } from "node:path";
import type { Desk } from "../compose.ts";
import type { Config } from "../config.ts";
import type { Engine } from "../engine/types.ts";
import type { Store } from "../store/store.ts";
import { serveOps } from "./http.ts";
import type { Log } from "./log.ts";
import { observed } from "./observed.ts";
import { watchFiles } from "./reload.ts";

/** The desk as the channel gets it: watched, and reloaded when its files change. */
export interface Ops {
  readonly engine: Engine;
  readonly store: Store;
  readonly stop: () => Promise<void>;
}

const LOOK_EVERY_MS = 5000;
/** A long poll is answered within 30 s, a failed one tried again within a minute. */
const POLL_WITHIN_MS = 150_000;

/** Starts what stands beside the channel. Throws `ConfigError` when the port for health and metrics cannot be had. */
export async function startOps(
  config: Pick<Config, "intentsFolder" | "dataFolder" | "http">,
  desk: Pick<Desk, "engine" | "store" | "content" | "reload">,
  log: Log,
  polls: boolean,
  lookEveryMs = LOOK_EVERY_MS,
): Promise<Ops> {
  let trouble: string | null = null;
  let noteReload = (_well: boolean) => {};
  const reload = () => {
    const outcome = desk.reload();
    const before = trouble;
    trouble = outcome.kind === "refused" ? outcome.problem : null;
    noteReload(trouble === null);
    if (trouble === null) return log.info({}, "texts and data were read again");
    log.error({ problem: trouble }, "changed texts or data cannot be used; the earlier ones stay in use");
    if (trouble !== before) tellDesk(desk, trouble, log);
  };
  const folders = [
    join(config.intentsFolder, "answers"),
    join(config.intentsFolder, "said"),
    config.dataFolder,
  ];
  const unwatch = watchFiles({ folders, everyMs: lookEveryMs, onChange: reload });
  process.on("SIGHUP", reload);
  const stopReloading = () => {
    unwatch();
    process.off("SIGHUP", reload);
  };
  if (config.http === null) return { ...desk, stop: async () => stopReloading() };

  try {
    const { createMetrics } = await import("./metrics.ts");
    const metrics = createMetrics(desk.store);
    noteReload = metrics.reloaded;
    const server = await serveOps(
      config.http,
      {
        store: desk.store,
        metrics,
        pollWithinMs: polls ? POLL_WITHIN_MS : null,
        reloadTrouble: () => trouble,
      },
      metrics,
    );
    log.info({ ...config.http }, "health and metrics are shown");
    return {
      engine: observed(desk.engine, [metrics.watch]),
      store: notingPolls(desk.store, metrics.polled),
      stop: async () => {
        stopReloading();
        server.close();
        server.closeAllConnections();
      },
    };
  } catch (error) {
    stopReloading();
    throw error;
  }
}

/** Whoever edits the texts is at the desk: they learn of a mistake there. */
function tellDesk({ store, content }: Pick<Desk, "store" | "content">, problem: string, log: Log): void {
  const text = content.wording.say("desk", "reload.refused", { problem });
  store
    .commit({ at: new Date().toISOString(), outgoing: [{ lane: { kind: "desk" }, content: { text } }] })
    .catch(() => log.warn({}, "the desk could not be told of it"));
}

/** The channel stores each batch it fetched, also an empty one: that is a poll that was answered. */
function notingPolls(store: Store, polled: () => void): Store {
  return {
    ...store,
    telegram: {
      ...store.telegram,
      keepUpdates: async (updates, at) => {
        const kept = await store.telegram.keepUpdates(updates, at);
        polled();
        return kept;
      },
    },
  };
}
