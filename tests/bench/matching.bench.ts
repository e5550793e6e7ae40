/**
 * Matching and planning over growing stocks, the index beside the full scan in the same run:
 * `npx vitest bench --run tests/bench/matching.bench.ts`. Memory and worst cases: `planner-report.ts`.
 */
import { bench, describe } from "vitest";
import { matchStock } from "../../src/matching/match.ts";
import { planQuestions } from "../../src/matching/plan.ts";
import { indexStock } from "../../src/matching/stock-index.ts";
import type { Question } from "../../src/matching/types.ts";
import { makeStock } from "../matching/plan/stock-maker.ts";

const on = "2026-11-25";
/** What a thread knows at its end: all that decides. */
const complete: Question = {
  nameplate: { hp: 1.5, serviceFactor: 1.1, volts: [115, 230], amps: [19.2, 9.6], frame: "56Y", rpm: [3450] },
  site: { supplyVolts: 240 },
  on,
};
/** What a first message says: tens of thousands of motors are still in the running at 100,000. */
const partial: Question = { nameplate: { hp: 1.5, volts: [115, 230], amps: [19.2, 9.6] }, site: {}, on };
const nothingBarred = { unaskable: new Set<never>() };
const best = { limit: 10 };

for (const count of [1_000, 10_000, 100_000]) {
  describe(`${count} motors`, () => {
    const stock = makeStock(count);
    const index = indexStock(stock);
    const scans = { iterations: 3, warmupIterations: 1, time: 0, warmupTime: 0 };

    bench("complete label, ten best, index", () => void index.match(complete, best));
    bench("complete label, all, full scan", () => void matchStock(complete, stock), scans);
    bench("partial label, ten best, index", () => void index.match(partial, best));
    bench("partial label, all, full scan", () => void matchStock(partial, stock), scans);
    bench("partial label, next questions", () => void planQuestions(partial, stock, nothingBarred));
  });
}
