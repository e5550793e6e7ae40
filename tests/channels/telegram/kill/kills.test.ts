import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { usualPace } from "../../../../src/channels/telegram/pace.ts";
import { differences } from "./compare.ts";
import { type Played, playEvening } from "./play.ts";

/** `.ci/run` asks for more, the bench for as many as one likes: `npx tsx tests/bench/kills.ts`. */
const KILLS = Number(process.env["KILLS"] ?? 6);
const KILLS_AN_EVENING = 50;
/** What may be under way when the desk dies: a lane of each customer and case being delivered, an alert, a digest. */
const UNDER_WAY = usualPace.lanesAtOnce + usualPace.casesAtOnce + 2;

const evenings = Array.from({ length: Math.ceil(KILLS / KILLS_AN_EVENING) }, (_, n) => ({
  killSeed: n + 1,
  kills: Math.min(KILLS_AN_EVENING, KILLS - n * KILLS_AN_EVENING),
}));

const folder = mkdtempSync(join(tmpdir(), "kills-"));
const plan = { folder, customers: 14, seed: 7 };
let calm: Played;
beforeAll(async () => {
  calm = await playEvening({ ...plan, kills: 0, killSeed: 0 });
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("the evening is a busy one", () => {
  expect(calm.deeds).toBeGreaterThan(100);
  expect(Object.keys(calm.everything)).toHaveLength(plan.customers);
});

test.each(evenings)(
  "a desk killed $kills times during evening $killSeed answers everybody, once, and keeps the same books",
  async ({ kills, killSeed }) => {
    const rough = await playEvening({ ...plan, kills, killSeed });
    expect(rough.kills).toBe(kills);
    const { missing, repeats } = differences(calm, rough);
    expect(missing).toEqual([]);
    expect(repeats).toBeLessThanOrEqual(kills * UNDER_WAY);
    expect(rough.everything).toEqual(calm.everything);
    expect([rough.parked, rough.integrity]).toEqual([0, "ok"]);
  },
  300_000,
);
