/**
 * Label and stock pairs for comparing the engine with the oracle: the stock row is a copy of the old label with
 * some entries drawn again and some left out, so that all verdicts occur and limits are met exactly.
 */
import type { Question, StockMotor } from "../../src/matching/types.ts";
import type { Nameplate, Site } from "../../src/nameplate/vocabulary.ts";

/** Numbers in [0, 1) from a seed, the same on every machine (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const frames = ["48Y", "56Y", "56J", "56C", "48C", "48J", "56", "48", "56YZ", "56CZ", "143T", "145TC", "42Y"];
const usualFrames = ["48Y", "56Y", "56J", "56C"];
const voltLists = [
  [115],
  [230],
  [115, 230],
  [208, 230],
  [230, 208],
  [115, 208, 230],
  [120, 240],
  [127, 220],
  [128],
  [200],
  [220],
  [240],
  [277],
  [460],
  [230, 460],
  [208, 230, 460],
  [190, 380],
  [100, 200],
];
const usualVoltLists = [[230], [115, 230], [208, 230], [115, 208, 230]];
const supplies = [
  110, 115, 120, 126.5, 126.6, 132, 180, 197.9, 198, 206.9, 207, 208, 219, 219.9, 220, 230, 240, 253, 253.1,
  264, 480, 506,
];
const speedLists = [
  [3450],
  [3440],
  [3500],
  [3600],
  [1725],
  [1750],
  [3450, 1725],
  [1725, 3450],
  [3450, 1150],
  [3450, 600],
  [2850],
  [2900],
  [3000],
  [1425],
  [2850, 1425],
  [2850, 3450],
  [1425, 1725],
  [3240],
  [3239],
  [3200],
  [1850],
  [900],
  [4000],
  [3450, 2850, 1725],
];
const usualSpeedLists = [[3450], [3450], [3450], [3450, 1725], [3450, 600], [1725]];
const hzLists = [[60], [60], [60], [50], [50, 60], [60, 50]];
const powers: readonly Pick<Nameplate, "hp" | "serviceFactor" | "totalHp" | "kw">[] = [
  { hp: 1, serviceFactor: 1.65 },
  { hp: 1.5, serviceFactor: 1.1 },
  { hp: 0.75, serviceFactor: 1.67 },
  { hp: 1, serviceFactor: 1.25 },
  { hp: 1.5, serviceFactor: 1.65 },
  { hp: 2, serviceFactor: 1.3 },
  { hp: 3, serviceFactor: 1.32 },
  { hp: 1, serviceFactor: 1.15 },
  { hp: 0.33, serviceFactor: 1.04 },
  { hp: 1.5, serviceFactor: 1.65, totalHp: 2.6 },
  { totalHp: 1.65 },
  { totalHp: 0.92 },
  { totalHp: 0.67 },
  { totalHp: 0.49 },
  { totalHp: 0.5 },
  { totalHp: 1.149 },
  { totalHp: 1.15 },
  { totalHp: 5 },
  { totalHp: 5.01 },
  { kw: 1.1, serviceFactor: 1.15 },
  { kw: 0.75 },
  { hp: 1.5 },
  { serviceFactor: 1.1 },
  {},
];
/** Around both limits, on them, and where binary fractions miss them by a hair. */
const ratios = [0.9, 0.97, 0.979999, 0.98, 0.980001, 1, 1, 1.05, 1.099999, 1.1, 1.100001, 1.3];
const currentRatios = [0.8, 1, 1, 1.019999, 1.02, 1.020001, 1.1];
const madeOn = [
  "2024-03-01",
  "2025-09-28",
  "2025-09-29",
  "2025-09-30",
  "2027-09-27",
  "2027-09-28",
  "2028-01-15",
];
const days = [
  "2025-09-28",
  "2025-09-29",
  "2025-09-30",
  "2026-06-01",
  "2026-11-25",
  "2027-09-28",
  "2027-09-29",
];

export interface Case {
  readonly question: Question;
  readonly stock: readonly StockMotor[];
}

/** One question with a small stock. */
export function drawCase(random: () => number, motors: number): Case {
  const { question } = drawQuestion(random);
  const stock = Array.from({ length: motors }, (_, index) =>
    drawMotor(random, question.nameplate, `S${index}`),
  );
  return { question, stock };
}

const pick = <T>(random: () => number, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
const maybe = <T>(random: () => number, chance: number, value: () => T): T | undefined =>
  random() < chance ? value() : undefined;
/** Mostly the usual values, so that one odd entry decides a case rather than ten at once. */
const mostly = <T>(random: () => number, usual: readonly T[], all: readonly T[]): T =>
  pick(random, random() < 0.75 ? usual : all);

function drawAmps(random: () => number, volts: readonly number[] | undefined): number[] {
  const watts = pick(random, [1100, 1840, 2300]);
  const amps = (volts ?? [115, 230]).map((rated) => Math.round((watts / rated) * 10) / 10);
  if (random() < 0.15) amps.pop();
  else if (random() < 0.1) amps.push(3.2);
  return amps.length > 0 ? amps : [9.6];
}

function drawLabel(random: () => number): Nameplate {
  const volts = maybe(random, 0.9, () => mostly(random, usualVoltLists, voltLists));
  return {
    ...mostly(random, powers.slice(0, 8), powers),
    volts,
    amps: maybe(random, 0.5, () => drawAmps(random, volts)),
    serviceFactorAmps: maybe(random, 0.5, () => drawAmps(random, volts)),
    rpm: maybe(random, 0.95, () => mostly(random, usualSpeedLists, speedLists)),
    hz: maybe(random, 0.6, () => pick(random, hzLists)),
    phase: maybe(random, 0.6, () => (random() < 0.85 ? 1 : 3)),
    frame: maybe(random, 0.95, () => mostly(random, usualFrames, frames)),
    flange: maybe(random, 0.15, () => pick(random, ["square", "round", "through-bolt"] as const)),
    shaft: maybe(random, 0.1, () => pick(random, ["threaded", "keyed"] as const)),
    speedKind: maybe(random, 0.2, () => pick(random, ["single", "two", "variable"] as const)),
    ambientC: maybe(random, 0.5, () => pick(random, [40, 49.9, 50, 50, 50])),
    duty: maybe(random, 0.8, () => (random() < 0.93 ? ("continuous" as const) : pick(random, [30, 60]))),
    modelNumbers: maybe(random, 0.3, () =>
      pick(random, [["QX-12"], ["qx 12"], ["ZZ9", "QX12"], ["- "], ["R7"]]),
    ),
  };
}

function drawQuestion(random: () => number): { readonly question: Question } {
  const site: Site = {
    supplyVolts: maybe(random, 0.5, () => mostly(random, [120, 208, 240, 230], supplies)),
    breakerPoles: maybe(random, 0.3, () => pick(random, [1, 2, 2, 3] as const)),
  };
  return {
    question: {
      nameplate: withoutUndefined(drawLabel(random)),
      site: withoutUndefined(site),
      on: pick(random, days),
    },
  };
}

function drawMotor(random: () => number, old: Nameplate, sku: string): StockMotor {
  const other = drawLabel(random);
  const label: Record<string, unknown> = { ...old };
  const changes = random() < 0.5 ? 0.08 : 0.3;
  for (const key of Object.keys(other) as (keyof Nameplate)[]) {
    if (label[key] === undefined || random() < changes) label[key] = other[key];
    if (random() < 0.04) delete label[key];
  }
  if (random() < 0.35) scaleTotal(random, label, old);
  for (const key of ["amps", "serviceFactorAmps"] as const) {
    const ratio = pick(random, currentRatios);
    if (old[key] && label[key] === old[key]) label[key] = old[key].map((amps) => asPrinted(amps * ratio));
  }
  delete label["modelNumbers"];
  return {
    sku,
    maker: "Invented",
    description: "generated",
    label: withoutUndefined(label as Nameplate),
    ...withoutUndefined({
      efficiencyPct: maybe(random, 0.3, () => pick(random, [68.9, 69, 76])),
      powerFactor: maybe(random, 0.2, () => 0.8),
      madeOn: maybe(random, 0.6, () => pick(random, madeOn)),
      priceUsd: maybe(random, 0.9, () => pick(random, [199, 249, 249, 389])),
    }),
    inStock: pick(random, [0, 1, 4]),
    replaces: pick(random, [[], [], ["QX12"], ["qx-1 2", "R7"], ["-"]]),
  };
}

/** Prints a total horsepower that stands to the old one in a ratio at or around a limit. */
function scaleTotal(random: () => number, label: Record<string, unknown>, old: Nameplate): void {
  const total = old.totalHp ?? (old.hp ?? 1) * (old.serviceFactor ?? 1);
  label["totalHp"] = asPrinted((Math.round(total * 1e4) / 1e4) * pick(random, ratios));
}

/** The decimal number a label would print, so that quotients miss the limits by a binary hair. */
function asPrinted(value: number): number {
  return Number(value.toFixed(8));
}

export function withoutUndefined<T extends object>(values: T): T {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as T;
}
