import type { AddressInfo } from "node:net";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ConfigError } from "../../src/config.ts";
import { serveOps } from "../../src/ops/http.ts";
import { createMetrics, type Metrics } from "../../src/ops/metrics.ts";
import { observed } from "../../src/ops/observed.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import type { Store } from "../../src/store/store.ts";
import { evening, kim, LABEL } from "../desk/evening.ts";

let nowMs = Date.parse("2026-11-24T16:00:00.000Z");
let store: Store;
let metrics: Metrics;
let base: string;
let close: () => void;

beforeEach(async () => {
  nowMs = Date.parse("2026-11-24T16:00:00.000Z");
  store = openSqliteStore(":memory:");
  metrics = createMetrics(store, () => nowMs);
  const server = await serveOps(
    { host: "127.0.0.1", port: 0 },
    { store, metrics, pollWithinMs: 150_000, reloadTrouble: () => null },
    metrics,
  );
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  close = () => {
    server.close();
    server.closeAllConnections();
  };
});
afterEach(() => close());

const health = async () => {
  const response = await fetch(`${base}/health`);
  return { status: response.status, body: (await response.json()) as Record<string, unknown> };
};

/** The samples of a Prometheus page: name with labels -> value. Format: Prometheus docs, "Text-based format". */
function samples(page: string): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const line of page.split("\n")) {
    if (line === "" || line.startsWith("#")) continue;
    const parts = /^([a-zA-Z_:][a-zA-Z0-9_:]*(?:\{[^}]*\})?) (\S+)$/.exec(line);
    if (!parts) throw new Error(`not a sample: ${line}`);
    found.set(parts[1] ?? "", Number(parts[2]));
  }
  return found;
}
const page = async () => samples(await (await fetch(`${base}/metrics`)).text());

describe("health", () => {
  test("fails before the first poll, is well after one, and fails when the platform has been silent too long", async () => {
    expect(await health()).toMatchObject({
      status: 503,
      body: { status: "failing", lastPollSecondsAgo: null },
    });
    metrics.polled();
    nowMs += 30_000;
    expect(await health()).toMatchObject({ status: 200, body: { status: "ok", lastPollSecondsAgo: 30 } });
    nowMs += 200_000;
    expect(await health()).toMatchObject({ status: 503 });
  });

  test("fails when the store cannot be read, and so do the metrics, in words", async () => {
    metrics.polled();
    await store.close();
    expect(await health()).toMatchObject({ status: 503, body: { store: "failing" } });
    const response = await fetch(`${base}/metrics`);
    expect([response.status, await response.text()]).toEqual([503, "the store cannot be read\n"]);
  });
});

describe("metrics", () => {
  test("count messages, time them, and tell what waits", async () => {
    const shop = evening({ store });
    const engine = observed(shop.engine, [metrics.watch]);
    const at = "2026-11-24T16:00:00.000Z";
    const says = (id: string, threadId: string, text: string) => engine.handle({ id, threadId, text, at });
    await says("u1", "ana", LABEL);
    await says("u2", "ben", "there is smoke coming out of the motor");
    await says("u2", "ben", "there is smoke coming out of the motor");
    await engine.staff({ id: "s1", caseId: 1, act: { kind: "take" }, by: kim, at });
    metrics.polled();
    nowMs += 60_000;
    const found = await page();
    expect(found.get('nameplate_messages_total{outcome="answered"}')).toBe(2);
    expect(found.get('nameplate_messages_total{outcome="silent"}')).toBe(1);
    expect(found.get("nameplate_handling_seconds_count")).toBe(3);
    expect(found.get("nameplate_handling_seconds_sum")).toBeGreaterThan(0);
    expect(found.get('nameplate_cases_waiting{urgency="danger"}')).toBe(1);
    expect(found.get('nameplate_cases_waiting{urgency="ready-to-confirm"}')).toBe(0);
    expect(found.get("nameplate_outbox_waiting")).toBe((await store.undelivered()).length);
    expect(found.get("nameplate_outbox_oldest_seconds")).toBe(60);
    expect(found.get('nameplate_staff_acts_total{outcome="done"}')).toBe(1);
    expect(found.get("nameplate_last_poll_timestamp_seconds")).toBe(Date.parse(at) / 1000);
    const [first] = await store.undelivered();
    await store.park(first!.id, "shut out");
    expect((await page()).get('nameplate_parked{kind="message"}')).toBe(1);
  });

  test("hold nothing a customer chose", async () => {
    const shop = evening({ store });
    await observed(shop.engine, [metrics.watch]).handle({
      id: "u1",
      threadId: 'Zebulon"} 1\nevil 2',
      text: "I am Quillfeather, 56Y",
      at: "2026-11-24T16:00:00.000Z",
    });
    const text = await (await fetch(`${base}/metrics`)).text();
    expect(text).not.toMatch(/Zebulon|Quillfeather|evil/);
  });
});

test("only looking is allowed, only at these two", async () => {
  expect((await fetch(`${base}/health`, { method: "POST", body: "x" })).status).toBe(405);
  expect((await fetch(`${base}/../../etc/passwd`)).status).toBe(404);
  expect((await fetch(`${base}/metrics?x=1`)).status).toBe(200);
});

test("a port that is taken is told with the setting's name", async () => {
  const port = Number(new URL(base).port);
  const again = serveOps(
    { host: "127.0.0.1", port },
    { store, metrics, pollWithinMs: null, reloadTrouble: () => null },
    metrics,
  );
  await expect(again).rejects.toThrow(ConfigError);
  await expect(again).rejects.toThrow(/NAMEPLATE_HTTP_PORT/);
});
