import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";
import { urgencies } from "../conversation/thread.ts";
import type { Store } from "../store/store.ts";
import type { Watch } from "./observed.ts";

export interface Metrics {
  readonly watch: Watch;
  /** The platform was asked for messages and has answered. */
  readonly polled: () => void;
  /** Texts or data were read again, or could not be used. */
  readonly reloaded: (well: boolean) => void;
  /** Milliseconds since the last poll; null before the first. */
  readonly sincePollMs: () => number | null;
  /** Prometheus text exposition format, and its media type. */
  readonly text: () => Promise<string>;
  readonly mediaType: string;
}

/** The desk's figures. Labels are few and fixed: nothing that a customer chooses becomes one. */
export function createMetrics(store: Store, nowMs: () => number = Date.now): Metrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry, prefix: "nameplate_" });
  const messages = new Counter({
    name: "nameplate_messages_total",
    help: "Messages taken in, by what became of them.",
    labelNames: ["outcome"],
    registers,
  });
  for (const outcome of ["answered", "silent", "failed"]) messages.inc({ outcome }, 0);
  const acts = new Counter({
    name: "nameplate_staff_acts_total",
    help: "Acts of staff, done or refused.",
    labelNames: ["outcome"],
    registers,
  });
  const handling = new Histogram({
    name: "nameplate_handling_seconds",
    help: "From taking a message in to its committed answer.",
    buckets: [0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10],
    registers,
  });
  const reloads = new Counter({
    name: "nameplate_reloads_total",
    help: "Texts and data read again while running, and refused ones.",
    labelNames: ["outcome"],
    registers,
  });
  const gauge = (name: string, help: string, labelNames: readonly string[] = []) =>
    new Gauge({ name: `nameplate_${name}`, help, labelNames: [...labelNames], registers });
  const depth = gauge("outbox_waiting", "Messages that wait to be delivered.");
  const oldest = gauge("outbox_oldest_seconds", "Age of the oldest message that waits to be delivered.");
  const parked = gauge("parked", "What can never be delivered or handled, and waits for a person.", ["kind"]);
  const unhandled = gauge("inbox_unhandled", "Messages received but not handled yet.");
  const cases = gauge("cases_waiting", "Cases that wait for a person, by urgency.", ["urgency"]);
  const lastPoll = gauge(
    "last_poll_timestamp_seconds",
    "When the platform last answered a request for messages.",
  );

  let polledMs: number | null = null;
  const collect = async () => {
    const counts = await store.upkeep.counts();
    depth.set(counts.outboxWaiting);
    oldest.set(
      counts.oldestWaiting === null ? 0 : Math.max(0, (nowMs() - Date.parse(counts.oldestWaiting)) / 1000),
    );
    parked.set({ kind: "message" }, counts.outboxParked);
    parked.set({ kind: "update" }, counts.updatesParked);
    unhandled.set(counts.unhandled + counts.updatesWaiting);
    for (const urgency of urgencies) cases.set({ urgency }, counts.casesWaiting[urgency] ?? 0);
    lastPoll.set(polledMs === null ? 0 : polledMs / 1000);
  };
  return {
    watch: {
      handled: (_, ms, { replies }) => {
        messages.inc({ outcome: replies.length > 0 ? "answered" : "silent" });
        handling.observe(ms / 1000);
      },
      acted: (_, __, { done }) => acts.inc({ outcome: done ? "done" : "refused" }),
      failed: () => messages.inc({ outcome: "failed" }),
    },
    polled: () => {
      polledMs = nowMs();
    },
    reloaded: (well) => reloads.inc({ outcome: well ? "taken" : "refused" }),
    sincePollMs: () => (polledMs === null ? null : nowMs() - polledMs),
    text: async () => {
      await collect();
      return registry.metrics();
    },
    mediaType: registry.contentType,
  };
}
