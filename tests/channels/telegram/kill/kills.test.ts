import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { usualPace } from "../../../../src/channels/telegram/pace.ts";
import { differences } from "./compare.ts";
import { playEvening } from "./play.ts";

/** `.ci/run` asks for more, the bench for as many as one likes: `npx tsx tests/bench/kills.ts`. */
const KILLS = Number(process.env["KILLS"] ?? 10);

test(`a desk killed ${KILLS} times during an evening answers everybody, once, and keeps the same books`, async () => {
  const folder = mkdtempSync(join(tmpdir(), "kills-"));
  try {
    const plan = { folder, customers: 14, seed: 7 };
    const calm = await playEvening({ ...plan, kills: 0, killSeed: 0 });
    const rough = await playEvening({ ...plan, kills: KILLS, killSeed: 1 });
    expect(calm.deeds).toBeGreaterThan(100);
    expect(Object.keys(calm.everything)).toHaveLength(plan.customers);
    expect(rough.kills).toBe(KILLS);
    const { missing, repeats } = differences(calm, rough);
    expect(missing).toEqual([]);
    // Each lane that is being delivered when the desk dies may repeat its last message.
    expect(repeats).toBeLessThanOrEqual(KILLS * usualPace.lanesAtOnce);
    expect(rough.everything).toEqual(calm.everything);
    expect([rough.parked, rough.integrity]).toEqual([0, "ok"]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}, 300_000);
