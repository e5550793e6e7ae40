import { describe, expect, test } from "vitest";
import { judgeMotor, matchStock, verdictOf } from "../../src/matching/match.ts";
import { rules } from "../../src/matching/rules/index.ts";
import {
  type Finding,
  type Outcome,
  type RuleName,
  ruleNames,
  type StockMotor,
} from "../../src/matching/types.ts";
import type { Nameplate } from "../../src/nameplate/vocabulary.ts";
import { goodMotor, oldLabel, someDay } from "./judging.ts";

const question = { nameplate: oldLabel, site: { supplyVolts: 240 }, on: someDay };
const motor = (sku: string, label: Nameplate = {}, facts: Partial<StockMotor> = {}): StockMotor => ({
  ...goodMotor,
  ...facts,
  sku,
  label: { ...goodMotor.label, ...label },
});
const order = (...stock: StockMotor[]) =>
  matchStock(question, stock).motors.map((judged) => judged.motor.sku);

describe("one motor's verdict", () => {
  const findings = (changed: Partial<Record<RuleName, Outcome>>): Finding[] =>
    ruleNames.map((rule) => ({
      rule,
      outcome: changed[rule] ?? "holds",
      reason: "",
      values: {},
      needs: [],
      work: [],
    }));

  test.each([
    [{}, "drop-in"],
    [{ ambient: "needs-work" }, "fits-with-work"],
    [{ mount: "needs-work" }, "fits-with-work"],
    [{ shaft: "not-known", mount: "needs-work" }, "undecided"],
    [{ shaft: "rules-out", mount: "not-known" }, "no-fit"],
    [{ duty: "rules-out" }, "no-fit"],
    [{ frequency: "not-known", current: "not-known", duty: "not-known" }, "drop-in"],
    [{ ambient: "not-known", sale: "not-known", record: "not-known" }, "drop-in"],
    [{ current: "not-known", speed: "needs-work" }, "fits-with-work"],
    [{ record: "rules-out" }, "no-fit"],
  ] as const)("%j is %s", (changed, verdict) => {
    expect(verdictOf(findings(changed))).toBe(verdict);
  });

  test.each(["mount", "shaft", "total-horsepower", "supply", "phase", "speed"] as const)(
    "%s not known holds the verdict up",
    (rule) => {
      expect(verdictOf(findings({ [rule]: "not-known" }))).toBe("undecided");
    },
  );

  test("every rule speaks once, in the order of the list, and names its source", () => {
    expect(rules.map(({ name }) => name)).toEqual([...ruleNames]);
    expect(rules.filter(({ source }) => source.length < 10)).toEqual([]);
    expect(judgeMotor(question, goodMotor).findings.map(({ rule }) => rule)).toEqual([...ruleNames]);
  });
});

describe("the stock's verdict", () => {
  const dropIn = motor("drop-in");
  const work = motor("work", { frame: "48Y" });
  const open = motor("open", { rpm: undefined });
  const out = motor("out", { frame: "56J" });

  test.each([
    [[], "none-fits"],
    [[out], "none-fits"],
    [[out, work], "fits-with-work"],
    [[out, work, open], "undecided"],
    [[out, work, open, dropIn], "drop-in"],
  ])("is the best there is", (stock, verdict) => {
    expect(matchStock(question, stock).verdict).toBe(verdict);
  });

  test("motors ruled out are listed only when asked for", () => {
    expect(matchStock(question, [out, dropIn]).motors.map((judged) => judged.motor.sku)).toEqual(["drop-in"]);
    expect(matchStock(question, [out, dropIn]).ruledOut).toEqual([]);
    expect(matchStock(question, [out, dropIn], { all: true }).ruledOut[0]?.motor.sku).toBe("out");
  });

  test("a stock of none ranks lower and decides nothing", () => {
    expect(matchStock(question, [motor("gone", {}, { inStock: 0 })]).verdict).toBe("drop-in");
  });
});

describe("the order of motors, one criterion after the other", () => {
  test("drop-in, then undecided, then work", () => {
    expect(order(motor("a", { frame: "48Y" }), motor("b", { rpm: undefined }), motor("c"))).toEqual([
      "c",
      "b",
      "a",
    ]);
  });

  test("a number on record before a nearer total horsepower, never before a better verdict", () => {
    const asked = { ...question, nameplate: { ...oldLabel, modelNumbers: ["R7"] } };
    const stock = [
      motor("near"),
      motor("recorded", { totalHp: 1.75 }, { replaces: ["R7"] }),
      motor("recorded-48", { frame: "48Y" }, { replaces: ["R7"] }),
    ];
    expect(matchStock(asked, stock).motors.map((judged) => judged.motor.sku)).toEqual([
      "recorded",
      "near",
      "recorded-48",
    ]);
  });

  test("nearest total horsepower from above: equal, a little more, much more, then less", () => {
    expect(
      order(
        motor("less", { totalHp: 1.64 }),
        motor("more", { totalHp: 1.7 }),
        motor("equal", { totalHp: 1.65 }),
        motor("most", { totalHp: 1.8 }),
      ),
    ).toEqual(["equal", "more", "most", "less"]);
  });

  test("cheaper to run, by efficiency, before cheaper to buy", () => {
    expect(
      order(
        motor("unknown", {}, { priceUsd: 100 }),
        motor("plain", {}, { efficiencyPct: 68, priceUsd: 199 }),
        motor("saving", {}, { efficiencyPct: 78, priceUsd: 299 }),
      ),
    ).toEqual(["saving", "plain", "unknown"]);
  });

  test("in stock before price, price before stock number", () => {
    expect(
      order(
        motor("d", {}, { inStock: 0, priceUsd: 100 }),
        motor("c", {}, { priceUsd: undefined }),
        motor("b", {}, { priceUsd: 249 }),
        motor("a", {}, { priceUsd: 249 }),
        motor("e", {}, { priceUsd: 199 }),
      ),
    ).toEqual(["e", "a", "b", "c", "d"]);
  });
});

test("the nearest miss breaks the fewest rules", () => {
  const stock = [
    motor("three", { frame: "56C", phase: 3 }), // face, shaft, phase
    motor("one", { totalHp: 1.5 }),
    motor("two", { frame: "56C" }),
    motor("far", { totalHp: 1 }),
  ];
  const { ruledOut } = matchStock(question, stock, { all: true });
  expect(ruledOut.map((judged) => judged.motor.sku)).toEqual(["one", "far", "two", "three"]);
});
