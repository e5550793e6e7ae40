import { describe, expect, it } from "vitest";
import { matchStock } from "../../../src/matching/match.ts";
import { planQuestions } from "../../../src/matching/plan.ts";
import type { Question, StockMotor } from "../../../src/matching/types.ts";
import { auditNameplate } from "../../../src/nameplate/audit.ts";
import { isNameplateRating, type RatingName } from "../../../src/nameplate/vocabulary.ts";
import { makeStock, partOf, pick, randomFrom, truth, withGaps } from "./stock-maker.ts";

const none: ReadonlySet<RatingName> = new Set();
const on = "2026-11-25";

const motor = (sku: string, label: StockMotor["label"]): StockMotor => ({
  sku,
  maker: "Made up",
  description: "",
  label: { hz: [60], phase: 1, rpm: [3450], speedKind: "single", duty: "continuous", ...label },
  madeOn: "2024-05-01",
  inStock: 1,
  replaces: [],
});
const square = motor("SQUARE", { hp: 1, serviceFactor: 1.65, volts: [115, 230], frame: "56Y" });
const round = motor("ROUND", { hp: 1, serviceFactor: 1.65, volts: [115, 230], frame: "56J" });
const strong = motor("STRONG", { hp: 2, serviceFactor: 1.3, volts: [230], frame: "56Y" });

describe("what is asked", () => {
  const known = { hp: 1, serviceFactor: 1.65, volts: [115, 230], rpm: [3450] };
  const at240 = { supplyVolts: 240 };

  it("asks the frame when square and round motors both carry the load", () => {
    const ask = planQuestions({ nameplate: known, site: at240, on }, [square, round, strong], {
      unaskable: none,
    });
    expect(ask).toEqual(["frame"]);
  });

  it("asks nothing once a drop-in is there", () => {
    const nameplate = { ...known, frame: "56Y" };
    expect(planQuestions({ nameplate, site: at240, on }, [square, round], { unaskable: none })).toEqual([]);
  });

  it("asks nothing more when no stocked motor can fit, however little is known", () => {
    const nameplate = { frame: "56C" };
    expect(planQuestions({ nameplate, site: {}, on }, [square, round], { unaskable: none })).toEqual([]);
  });

  it("does not ask the phase of a label that shows 115 V", () => {
    const ask = planQuestions(
      { nameplate: { volts: [115, 230], frame: "56Y" }, site: {}, on },
      [square, round, strong],
      { unaskable: none },
    );
    expect(ask).not.toContain("phase");
    expect(ask).toContain("serviceFactor");
  });

  it("never asks what is known or cannot be read", () => {
    const random = randomFrom(20);
    const stock = makeStock(60, 21);
    for (let round = 0; round < 150; round++) {
      const question = partOf(random, truth(random, stock), 0.5);
      const unaskable = new Set(
        (["frame", "hp", "rpm", "supplyVolts", "serviceFactor", "volts"] as const).filter(
          () => random() < 0.2,
        ),
      );
      const facts: Record<string, unknown> = { ...question.nameplate, ...question.site };
      for (const rating of planQuestions(question, stock, { unaskable })) {
        expect(facts[rating]).toBeUndefined();
        expect(unaskable.has(rating as "hp")).toBe(false);
      }
    }
  });

  it("stays sensible on labels that contradict themselves", () => {
    const random = randomFrom(24);
    const stock = withGaps(makeStock(30, 25), 26, 0.3);
    const strange: Record<string, readonly unknown[]> = {
      volts: [[115], [460], [12], [230, 115, 208]],
      phase: [1, 3],
      frame: ["56", "48Z", "213", "56Y"],
      flange: ["round", "through-bolt"],
      shaft: ["keyed"],
      hp: [0.01, 1.5, 400],
      serviceFactor: [0.5, 1.65, 9],
      kw: [1.1],
      rpm: [[3450], [17], [3450, 2850, 1725], [9000]],
      speedKind: ["two", "variable"],
      amps: [[0.1], [30, 3]],
      hz: [[50], [50, 60], [400]],
      supplyVolts: [12, 208, 277],
      breakerPoles: [1, 2, 3],
    };
    let undecided = 0;
    for (let round = 0; round < 400; round++) {
      const told = Object.entries(strange).filter(() => random() < 0.35);
      const values = Object.fromEntries(told.map(([rating, of]) => [rating, pick(random, of)]));
      const question = tell({ nameplate: {}, site: {}, on }, values);
      const ask = planQuestions(question, stock, { unaskable: none });
      expect(new Set(ask).size).toBe(ask.length);
      expect(ask.filter((rating) => rating in values)).toEqual([]);
      if (matchStock(question, stock).verdict === "undecided") undecided += 1;
      else expect(ask).toEqual([]);
    }
    expect(undecided).toBeGreaterThan(50);
  });

  it("gives the same questions whatever the order of the stock", () => {
    const random = randomFrom(22);
    const stock = makeStock(80, 23);
    const turned = stock.toReversed();
    for (let round = 0; round < 60; round++) {
      const question = partOf(random, truth(random, stock), 0.6);
      const ask = planQuestions(question, stock, { unaskable: none });
      expect([...planQuestions(question, turned, { unaskable: none })].sort()).toEqual([...ask].sort());
    }
  });
});

describe("the ladder", () => {
  const stock = [square, round, strong, motor("KEYED", { ...round.label, frame: "56C" })];
  const askedWithout = (
    nameplate: Question["nameplate"],
    unaskable: readonly RatingName[],
    site: Question["site"] = {},
  ) => planQuestions({ nameplate, site, on }, stock, { unaskable: new Set(unaskable) });

  it("asks face and shaft when the frame cannot be read, then the pump", () => {
    const known = { hp: 1, serviceFactor: 1.65, volts: [115, 230], rpm: [3450] };
    const site = { supplyVolts: 240 };
    expect([...askedWithout(known, ["frame"], site)].sort()).toEqual(["flange", "shaft"]);
    expect(askedWithout({ ...known, flange: "square", shaft: "threaded" }, ["frame"], site)).toEqual([
      "pumpModel",
    ]);
    expect(askedWithout(known, ["frame", "flange", "shaft"], site)).toEqual(["pumpModel"]);
    expect(askedWithout(known, ["frame", "flange", "shaft", "pumpModel"], site)).toEqual([]);
  });

  it("asks face and shaft when the frame has no letter", () => {
    const known = { hp: 1, serviceFactor: 1.65, volts: [115, 230], rpm: [3450], frame: "56" };
    expect([...askedWithout(known, [], { supplyVolts: 240 })].sort()).toEqual(["flange", "shaft"]);
  });

  it("asks the total when horsepower or service factor cannot be read", () => {
    const known = { volts: [115, 230], rpm: [3450], frame: "56Y" };
    const site = { supplyVolts: 240 };
    expect(askedWithout({ ...known, hp: 1 }, ["serviceFactor"], site)).toEqual(["totalHp"]);
    expect(askedWithout({ ...known, serviceFactor: 1.1 }, ["hp"], site)).toEqual(["totalHp"]);
    expect(askedWithout({ ...known, hp: 1 }, ["serviceFactor", "totalHp"], site)).toEqual(["pumpModel"]);
  });

  it("asks for the breaker when nobody knows the supply", () => {
    const known = { hp: 2, serviceFactor: 1.3, rpm: [3450], frame: "56Y", phase: 1 as const };
    expect(askedWithout(known, ["volts", "supplyVolts"])).toEqual(["breakerPoles"]);
  });

  it("does not send somebody to the pump for what a pump does not tell", () => {
    const known = { hp: 1, serviceFactor: 1.65, volts: [115, 230], frame: "56Y" };
    expect(askedWithout(known, ["rpm"], { supplyVolts: 240 })).not.toContain("pumpModel");
  });
});

/** Values a rating may have, in this stock and in the trade, listed apart from the planner. */
function valuesOf(rating: RatingName, stock: readonly StockMotor[]): readonly unknown[] {
  const trade: Partial<Record<RatingName, readonly unknown[]>> = {
    frame: ["48Y", "56Y", "48J", "56J", "48C", "56C"],
    flange: ["square", "round", "through-bolt"],
    shaft: ["threaded", "keyed"],
    hp: [0.5, 0.75, 1, 1.5, 2, 2.5, 3],
    serviceFactor: [1, 1.1, 1.25, 1.4, 1.65, 1.9],
    totalHp: [0.5, 0.8, 1.1, 1.65, 2.2, 2.6, 3.45],
    kw: [0.37, 0.75, 1.1, 1.5, 2.2],
    volts: [[115], [230], [115, 230], [208, 230], [208, 230, 460]],
    phase: [1, 3],
    rpm: [[3450], [1725], [3450, 1725], [2850], [1425]],
    speedKind: ["single", "two", "variable"],
    supplyVolts: [120, 208, 240, 480],
    breakerPoles: [1, 2, 3],
  };
  const stocked = stock.map(({ label }) => (label as Record<string, unknown>)[rating]);
  const all = [...stocked, ...(trade[rating] ?? [])].filter((value) => value !== undefined);
  return [...new Map(all.map((value) => [JSON.stringify(value), value])).values()];
}

function tell(question: Question, values: Readonly<Record<string, unknown>>): Question {
  const nameplate: Record<string, unknown> = { ...question.nameplate };
  const site: Record<string, unknown> = { ...question.site };
  for (const [rating, value] of Object.entries(values)) {
    (isNameplateRating(rating) ? nameplate : site)[rating] = value;
  }
  return { nameplate, site, on: question.on };
}

const isPossible = ({ nameplate, site }: Question) =>
  auditNameplate(nameplate, site).every(({ severity }) => severity !== "impossible");

/** What the customer is told: the verdict, the motors, and the work of each that fits with work. */
function outcomeOf(question: Question, stock: readonly StockMotor[]): string {
  const { verdict, motors } = matchStock(question, stock);
  const offered = motors.filter((judged) => verdict !== "drop-in" || judged.verdict === "drop-in");
  const lines = offered.map((judged) => {
    const work = judged.findings.filter(({ outcome }) => outcome === "needs-work").map(({ rule }) => rule);
    return `${judged.motor.sku}:${judged.verdict === "fits-with-work" ? work : ""}`;
  });
  return `${verdict} ${lines.sort().join(" ")}`;
}

describe("no question is asked whose answer could not matter", () => {
  const ladderRatings = [
    "frame",
    "flange",
    "shaft",
    "hp",
    "serviceFactor",
    "totalHp",
    "kw",
    "volts",
    "phase",
    "rpm",
    "supplyVolts",
    "breakerPoles",
  ] as const;

  const donors = makeStock(60, 36);

  /** Looks for two values of a rating, all else equal, that lead to different outcomes. */
  function canMatter(
    rating: RatingName,
    question: Question,
    stock: readonly StockMotor[],
    unaskable: ReadonlySet<RatingName>,
    random: () => number,
  ): boolean {
    const facts: Record<string, unknown> = { ...question.nameplate, ...question.site };
    const others = ladderRatings.filter(
      (name) => name !== rating && facts[name] === undefined && !unaskable.has(name),
    );
    const values = valuesOf(rating, stock);
    // Beside it: nothing told, one other rating, or several as they stand on one label.
    const contexts: Record<string, unknown>[] = [
      {},
      ...others.flatMap((name) => valuesOf(name, stock).map((value) => ({ [name]: value }))),
      ...Array.from({ length: 60 }, (_, attempt) => {
        const donor = truth(random, attempt % 2 === 0 ? stock : donors);
        const whole: Record<string, unknown> = { ...donor.nameplate, ...donor.site };
        const share = pick(random, [0.3, 0.6, 1]);
        const told = others.filter((name) => whole[name] !== undefined && random() < share);
        return Object.fromEntries(told.map((name) => [name, whole[name]]));
      }),
    ];
    for (const told of contexts) {
      const outcomes = new Set<string>();
      for (const value of values) {
        const asked = tell(question, { ...told, [rating]: value });
        if (isPossible(asked)) outcomes.add(outcomeOf(asked, stock));
        if (outcomes.size > 1) return true;
      }
    }
    return false;
  }

  /** True when the rating, told with the rest, ends a thread that is undecided without it. */
  function settles(rating: RatingName, question: Question, stock: readonly StockMotor[]): boolean {
    return valuesOf(rating, stock).some((value) => {
      const told = tell(question, { [rating]: value });
      return isPossible(told) && matchStock(told, stock).verdict !== "undecided";
    });
  }

  it("holds for every question of generated threads, by brute force over values", { timeout: 60_000 }, () => {
    const random = randomFrom(31);
    let asked = 0;
    let settling = 0;
    for (const stock of [makeStock(10, 32), withGaps(makeStock(24, 33), 34), makeStock(40, 35)]) {
      for (let round = 0; round < 50; round++) {
        const question = partOf(random, truth(random, stock), pick(random, [0.2, 0.5, 0.8]));
        const unaskable = new Set<RatingName>(ladderRatings.filter(() => random() < 0.1));
        const ask = planQuestions(question, stock, { unaskable });
        const { verdict } = matchStock(question, stock);
        if (verdict !== "undecided") expect(ask).toEqual([]);
        if (!isPossible(question)) continue;
        for (const rating of ask) {
          if (rating === "pumpModel") continue;
          asked += 1;
          if (canMatter(rating, question, stock, unaskable, random)) continue;
          // The one exception: every value leads to the same motors, but only a stated one gives the verdict.
          expect(settles(rating, question, stock)).toBe(true);
          settling += 1;
        }
      }
    }
    expect(asked).toBeGreaterThan(150);
    expect(settling / asked).toBeLessThan(0.03);
  });
});
