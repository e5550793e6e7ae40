import { describe, expect, it } from "vitest";
import { matchStock } from "../../src/matching/match.ts";
import { rules } from "../../src/matching/rules/index.ts";
import { ruleInputs } from "../../src/matching/stock-index/rule-inputs.ts";
import { indexStock } from "../../src/matching/stock-index.ts";
import type { Question, StockMotor } from "../../src/matching/types.ts";
import { makeStock, partOf, pick, randomFrom, truth, withGaps } from "./plan/stock-maker.ts";

/** Questions of every completeness, some with a number that the stock has on record. */
function* questions(stock: readonly StockMotor[], count: number, seed: number): Generator<Question> {
  const random = randomFrom(seed);
  for (let made = 0; made < count; made++) {
    const whole = truth(random, stock, pick(random, ["2024-01-01", "2026-11-25", "2028-06-30"]));
    const question = partOf(random, whole, pick(random, [0, 0.3, 0.6, 0.8, 0.95, 1]));
    if (random() < 0.2) question.nameplate.modelNumbers = [`old-${Math.floor(stock.length * random())}`];
    if (random() < 0.1) question.nameplate.totalHp = pick(random, [0.4, 0.98, 1.1, 1.62, 2.25, 4.9, 6]);
    if (random() < 0.05) question.nameplate.hz = [50, 60];
    yield question;
  }
}

describe("the stock index against a full scan", () => {
  const stocks = [makeStock(0), makeStock(12, 2), withGaps(makeStock(90, 3), 4, 0.3), makeStock(300, 5)];

  it.each(stocks.map((stock) => [stock.length, stock] as const))(
    "gives the same motors, findings, order and verdict on %i motors",
    (_, stock) => {
      const index = indexStock(stock);
      let compared = 0;
      for (const question of questions(stock.length > 0 ? stock : makeStock(20, 6), 250, 7)) {
        const scanned = matchStock(question, stock);
        expect(index.match(question)).toEqual(scanned);
        compared += scanned.motors.length;
      }
      if (stock.length > 0) expect(compared).toBeGreaterThan(250);
    },
  );

  it("gives the head of the same list when only the best are wanted", () => {
    const stock = withGaps(makeStock(400, 8), 9);
    const index = indexStock(stock);
    const seen = new Set<string>();
    for (const question of questions(stock, 300, 10)) {
      const scanned = matchStock(question, stock);
      for (const limit of [1, 3, 20]) {
        const best = index.match(question, { limit });
        expect(best.verdict).toBe(scanned.verdict);
        expect(best.motors).toEqual(scanned.motors.slice(0, limit));
      }
      seen.add(scanned.verdict);
    }
    expect([...seen].sort()).toEqual(["drop-in", "fits-with-work", "none-fits", "undecided"]);
  });

  it("gives the same nearest miss", () => {
    let missed = 0;
    for (const stock of stocks) {
      const index = indexStock(stock);
      for (const question of questions(stock.length > 0 ? stock : makeStock(20, 6), 120, 11)) {
        const [nearest] = matchStock(question, stock, { all: true }).ruledOut;
        expect(index.nearestMiss(question)?.judged).toEqual(nearest);
        missed += Number(nearest !== undefined);
      }
    }
    expect(missed).toBeGreaterThan(200);
  });

  it("prepares the same stock only once", () => {
    const stock = makeStock(5);
    expect(indexStock(stock)).toBe(indexStock(stock));
    expect(indexStock(stock)).not.toBe(indexStock([...stock]));
  });
});

describe("what a rule reads of a motor", () => {
  /** Writes down which properties of an object are looked at. */
  const spy = <T extends object>(target: T, seen: Set<string>): T =>
    new Proxy(target, {
      get: (from, key) => {
        seen.add(String(key));
        return Reflect.get(from, key);
      },
      ownKeys: (from) => {
        seen.add("(all)");
        return Reflect.ownKeys(from);
      },
    });
  const looksAt = (look: (motor: StockMotor) => unknown, motor: StockMotor): Set<string> => {
    const seen = new Set<string>();
    look(spy({ ...motor, label: spy(motor.label, seen) }, seen));
    return seen;
  };

  it.each(Object.keys(ruleInputs) as (keyof typeof ruleInputs)[])("is declared for %s", (name) => {
    const rule = rules.find((candidate) => candidate.name === name)!;
    const stock = withGaps(makeStock(40, 11), 12, 0.5);
    for (const question of questions(stock, 30, 13)) {
      for (const motor of stock) {
        const declared = looksAt(ruleInputs[name], motor);
        const used = looksAt((spied) => rule.judge(question, spied), motor);
        // A spread of the label touches every field of it; what comes out of it is compared above.
        for (const key of used) if (key !== "(all)" && !used.has("(all)")) expect(declared).toContain(key);
      }
    }
  });
});
