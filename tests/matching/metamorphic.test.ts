import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judgeMotor, matchStock } from "../../src/matching/match.ts";
import type { JudgedMotor, MotorVerdict, Question, StockMotor } from "../../src/matching/types.ts";
import type { Nameplate, Site } from "../../src/nameplate/vocabulary.ts";
import { type Case, drawCase, seeded } from "./generate.ts";
import { goodMotor } from "./judging.ts";

const runs = { numRuns: 1500, seed: 4242 };

/** Any question with a small stock, awkward values included. */
const anyCase = fc
  .tuple(fc.integer({ min: 0, max: 2 ** 31 }), fc.integer({ min: 1, max: 8 }))
  .map(([seed, motors]): Case => drawCase(seeded(seed), motors));

/** The same with motors that differ in few entries, so that ties occur. */
const alikeCase = anyCase.map(({ question, stock }): Case => {
  const [first] = stock;
  return {
    question,
    stock: stock.map((motor) => ({ ...motor, label: first!.label, powerFactor: undefined })),
  };
});

const skus = (motors: readonly { motor: StockMotor }[]) => motors.map(({ motor }) => motor.sku);

describe("the stock around a motor", () => {
  test("permuting the stock changes nothing", () => {
    fc.assert(
      fc.property(anyCase, fc.integer(), ({ question, stock }, seed) => {
        const random = seeded(seed);
        const shuffled = stock
          .map((motor) => ({ motor, at: random() }))
          .sort((a, b) => a.at - b.at)
          .map(({ motor }) => motor);
        expect(matchStock(question, shuffled, { all: true })).toEqual(
          matchStock(question, stock, { all: true }),
        );
      }),
      runs,
    );
  });

  test("a motor that cannot fit changes no other motor's verdict, place or findings", () => {
    fc.assert(
      fc.property(anyCase, anyCase, ({ question, stock }, other) => {
        const unfit = other.stock
          .map((motor) => ({ ...motor, sku: `other-${motor.sku}` }))
          .filter((motor) => judgeMotor(question, motor).verdict === "no-fit");
        expect(matchStock(question, [...unfit, ...stock])).toEqual(matchStock(question, stock));
      }),
      runs,
    );
  });

  test("one factor on all prices changes nothing", () => {
    fc.assert(
      fc.property(anyCase, fc.constantFrom(0.5, 2, 10), ({ question, stock }, factor) => {
        const scaled = stock.map((motor) => ({
          ...motor,
          priceUsd: motor.priceUsd === undefined ? undefined : motor.priceUsd * factor,
        }));
        expect(skus(matchStock(question, scaled).motors)).toEqual(skus(matchStock(question, stock).motors));
      }),
      runs,
    );
  });

  test("other prices change the order only among motors that are equal before the price", () => {
    let swaps = 0;
    fc.assert(
      fc.property(alikeCase, fc.integer(), ({ question, stock }, seed) => {
        const random = seeded(seed);
        const before = matchStock(question, stock).motors;
        const repriced = stock.map((motor) => ({ ...motor, priceUsd: Math.round(random() * 900) + 1 }));
        const after = skus(matchStock(question, repriced).motors);
        for (const [index, first] of before.entries()) {
          for (const second of before.slice(index + 1)) {
            if (after.indexOf(first.motor.sku) < after.indexOf(second.motor.sku)) continue;
            swaps += 1;
            expect(beforePrice(second)).toEqual(beforePrice(first));
          }
        }
      }),
      runs,
    );
    expect(swaps).toBeGreaterThan(100);
  });
});

/** What may decide the order before the price does. */
function beforePrice({ verdict, motor, findings }: JudgedMotor): unknown {
  const { totalHp, hp, serviceFactor } = motor.label;
  return {
    verdict,
    total: (totalHp ?? (hp ?? Number.NaN) * (serviceFactor ?? Number.NaN)).toFixed(4),
    efficiencyPct: motor.efficiencyPct,
    powerFactor: motor.efficiencyPct === undefined ? motor.powerFactor : undefined,
    inStock: motor.inStock > 0,
    record: findings.at(-1)?.outcome === "holds",
  };
}

/** Labels whose entries all agree with each other, as on a real plate; 60 Hz, as where the shop sells. */
const trueLabels: readonly Nameplate[] = [
  {
    hp: 1,
    serviceFactor: 1.65,
    totalHp: 1.65,
    volts: [115, 230],
    amps: [16, 8],
    rpm: [3450],
    hz: [60],
    phase: 1,
    frame: "56Y",
    flange: "square",
    shaft: "threaded",
    speedKind: "single",
    ambientC: 50,
    duty: "continuous",
  },
  {
    hp: 1.5,
    serviceFactor: 1.1,
    totalHp: 1.65,
    volts: [230],
    serviceFactorAmps: [9.6],
    rpm: [3450, 1725],
    hz: [60],
    phase: 1,
    frame: "48Y",
    flange: "square",
    shaft: "threaded",
    speedKind: "two",
    ambientC: 50,
    duty: "continuous",
  },
  {
    hp: 2,
    serviceFactor: 1.3,
    totalHp: 2.6,
    volts: [208, 230],
    amps: [12.4, 11.2],
    rpm: [3450],
    hz: [60],
    phase: 1,
    frame: "56J",
    flange: "round",
    shaft: "threaded",
    speedKind: "single",
    ambientC: 40,
    duty: "continuous",
  },
  {
    hp: 3,
    serviceFactor: 1.15,
    totalHp: 3.45,
    volts: [208, 230, 460],
    amps: [9.6, 9, 4.5],
    rpm: [1750],
    hz: [60],
    phase: 3,
    frame: "56C",
    flange: "round",
    shaft: "keyed",
    speedKind: "single",
    ambientC: 40,
    duty: "continuous",
  },
];

const supplyOf = (label: Nameplate) => (label.volts?.[0] === 115 ? 120 : 240);

/**
 * A true label, a supply it can have had, a stocked motor of any kind, and some readings to leave out. The
 * frequency always stays: it is the one reading that is assumed when missing (see the last test).
 */
const lessAndMore = fc
  .record({
    label: fc.constantFrom(...trueLabels),
    seed: fc.integer({ min: 0, max: 2 ** 31 }),
    kept: fc.array(fc.boolean(), { minLength: 16, maxLength: 16 }),
    supplyKept: fc.boolean(),
    polesKept: fc.boolean(),
  })
  .map(({ label, seed, kept, supplyKept, polesKept }) => {
    const keys = Object.keys(label) as (keyof Nameplate)[];
    const known = Object.fromEntries(
      keys.filter((key, index) => kept[index] || key === "hz").map((key) => [key, label[key]]),
    ) as Nameplate;
    const supplyVolts = supplyOf(label);
    const breakerPoles = supplyVolts === 120 ? 1 : 2;
    const site = { ...(supplyKept ? { supplyVolts } : {}), ...(polesKept ? { breakerPoles } : {}) } as Site;
    const full: Question = { nameplate: label, site: { supplyVolts, breakerPoles }, on: "2026-06-01" };
    const part: Question = { nameplate: known, site, on: "2026-06-01" };
    const [stocked] = drawCase(seeded(seed), 1).stock;
    const near = {
      ...stocked!,
      label: seed % 2 ? { ...label, ...pickSome(stocked!.label, seed) } : stocked!.label,
    };
    return { full, part, motor: near };
  });

function pickSome(label: Nameplate, seed: number): Nameplate {
  const random = seeded(seed);
  return Object.fromEntries(Object.entries(label).filter(() => random() < 0.2)) as Nameplate;
}

describe("knowing less or more of a true label", () => {
  test("leaving readings out never makes a drop-in of a motor that was not one, nor a fit of a ruled-out one", () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(lessAndMore, ({ full, part, motor }) => {
        const whole = judgeMotor(full, motor).verdict;
        const less = judgeMotor(part, motor).verdict;
        seen.set(`${whole} -> ${less}`, (seen.get(`${whole} -> ${less}`) ?? 0) + 1);
        const allowed: Record<MotorVerdict, readonly MotorVerdict[]> = {
          "no-fit": ["no-fit", "undecided"],
          undecided: ["undecided"],
          // Work that rests on a supporting rule (current, ambient) is not seen before its reading is there.
          "fits-with-work": ["fits-with-work", "undecided", "drop-in"],
          "drop-in": ["drop-in", "undecided"],
        };
        expect(allowed[whole]).toContain(less);
      }),
      { ...runs, numRuns: 6000 },
    );
    for (const way of ["no-fit -> no-fit", "no-fit -> undecided", "drop-in -> undecided"]) {
      expect(seen.get(way) ?? 0, way).toBeGreaterThan(20);
    }
  });

  test("stating more never makes a wrong motor right", () => {
    fc.assert(
      fc.property(lessAndMore, ({ full, part, motor }) => {
        if (judgeMotor(part, motor).verdict === "no-fit") {
          expect(judgeMotor(full, motor).verdict).toBe("no-fit");
        }
      }),
      { ...runs, numRuns: 6000 },
    );
  });

  test("the one reading that is assumed, 60 Hz, is marked where it carries a finding", () => {
    const abroad = { ...trueLabels[0], hz: [50], rpm: [2850] };
    const { hz: _, ...unsaid } = abroad;
    const judged = (nameplate: Nameplate) =>
      judgeMotor({ nameplate, site: { supplyVolts: 240 }, on: "2026-06-01" }, goodMotor);
    expect(judged(abroad).verdict).toBe("no-fit");
    expect(judged(unsaid).findings.find(({ rule }) => rule === "frequency")).toMatchObject({
      reason: "frequency.region",
      inferred: true,
    });
  });
});
