import type { Question, StockMotor } from "../../../src/matching/types.ts";
import type { Nameplate, Site } from "../../../src/nameplate/vocabulary.ts";

/** Numbers in [0, 1) that are the same on every machine for the same seed. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export function pick<T>(random: () => number, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)]!;
}

/** Powers that pool motors are sold in, with the service factors met on them (common practice, no source). */
const powers: readonly (readonly [hp: number, serviceFactors: readonly number[]])[] = [
  [0.5, [1.0, 1.25, 1.6, 1.9]],
  [0.75, [1.0, 1.25, 1.27, 1.5, 1.67]],
  [1, [1.0, 1.1, 1.25, 1.4, 1.65]],
  [1.5, [1.0, 1.1, 1.25, 1.3, 1.47]],
  [2, [1.0, 1.1, 1.2, 1.3]],
  [2.5, [1.0, 1.04, 1.15]],
  [3, [1.0, 1.15]],
];
const mounts = [
  ["48Y", "square", "threaded"],
  ["56Y", "square", "threaded"],
  ["56Y", "square", "threaded"],
  ["56J", "round", "threaded"],
  ["56J", "round", "threaded"],
  ["56C", "round", "keyed"],
  ["48C", "round", "keyed"],
  ["56Y", "through-bolt", "threaded"],
] as const;
const speeds = [
  { rpm: [3450], speedKind: "single" },
  { rpm: [3450], speedKind: "single" },
  { rpm: [3450], speedKind: "single" },
  { rpm: [3450, 1725], speedKind: "two" },
  { rpm: [3450, 600], speedKind: "variable" },
  { rpm: [1725], speedKind: "single" },
] as const;

const rounded = (value: number) => Math.round(value * 10) / 10;

/** A stock of plausible motors, the same for the same seed. */
export function makeStock(count: number, seed = 1): readonly StockMotor[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, (_, at): StockMotor => {
    const [hp, factors] = pick(random, powers);
    const serviceFactor = pick(random, factors);
    const [frame, flange, shaft] = pick(random, mounts);
    const kind = pick(random, speeds);
    const threePhase = random() < 0.08;
    const volts = threePhase
      ? pick(random, [
          [208, 230, 460],
          [230, 460],
        ])
      : hp <= 1.5
        ? pick(random, [[115], [230], [115, 230], [115, 230], [115, 208, 230], [208, 230]])
        : pick(random, [[230], [208, 230], [230], [115, 230]]);
    const watts = hp * 745.7 * (1 + 0.1 * random());
    const amps = volts.map((v) => rounded(watts / (v * 0.52 * (threePhase ? Math.sqrt(3) : 1))));
    const fiftyHertz = random() < 0.03;
    const label: Nameplate = {
      hp,
      serviceFactor,
      totalHp: Math.round(hp * serviceFactor * 100) / 100,
      volts: fiftyHertz ? [220, 240] : volts,
      rpm: fiftyHertz ? [2850] : [...kind.rpm],
      hz: [fiftyHertz ? 50 : 60],
      phase: threePhase ? 3 : 1,
      frame,
      flange,
      shaft,
      speedKind: fiftyHertz ? "single" : kind.speedKind,
      duty: random() < 0.01 ? 60 : "continuous",
      ambientC: random() < 0.1 ? 40 : 50,
    };
    if (random() < 0.7) label.amps = fiftyHertz ? amps.slice(0, 2).concat(amps[0]!).slice(0, 2) : amps;
    if (random() < 0.5 && !fiftyHertz) label.serviceFactorAmps = amps.map((a) => rounded(a * serviceFactor));
    const made =
      random() < 0.85 ? `202${Math.floor(2 + 5 * random())}-0${1 + Math.floor(9 * random())}-15` : undefined;
    return {
      sku: `T-${String(at).padStart(6, "0")}`,
      maker: "Made up",
      description: "",
      label,
      efficiencyPct: random() < 0.6 ? rounded(62 + 22 * random()) : undefined,
      powerFactor: random() < 0.6 ? Math.round(70 + 25 * random()) / 100 : undefined,
      madeOn: made,
      priceUsd: random() < 0.95 ? 150 + Math.floor(600 * random()) : undefined,
      inStock: Math.floor(5 * random()),
      replaces: random() < 0.5 ? [`OLD ${Math.floor(count * random())}`] : [],
    };
  });
}

/** What a stocked label leaves out now and then: rows that the shop keeps badly. */
export function withGaps(stock: readonly StockMotor[], seed: number, share = 0.1): readonly StockMotor[] {
  const random = randomFrom(seed);
  return stock.map((motor) => {
    if (random() > share) return motor;
    const label = { ...motor.label };
    delete label[
      pick(random, ["frame", "rpm", "volts", "hp", "totalHp", "flange", "speedKind", "hz", "duty"] as const)
    ];
    return { ...motor, label };
  });
}

/** Supplies a label can be wired to. */
export function wiredSupply(random: () => number, { volts = [], phase }: Nameplate): number {
  if (phase === 3) return volts.includes(460) && random() < 0.2 ? 480 : random() < 0.5 ? 208 : 240;
  const systems = [120, 208, 240].filter((system) =>
    volts.some((rated) => Math.abs(system - rated) * 10 <= rated),
  );
  return systems.length === 0 ? 240 : systems.includes(240) && random() < 0.7 ? 240 : pick(random, systems);
}

/** The whole truth about somebody's dead motor: like a stocked one, wired somewhere. */
export function truth(random: () => number, stock: readonly StockMotor[], on = "2026-11-25"): Question {
  const { label } = pick(random, stock);
  const supplyVolts = wiredSupply(random, label);
  const site: Site = { supplyVolts, breakerPoles: label.phase === 3 ? 3 : supplyVolts === 120 ? 1 : 2 };
  return { nameplate: { ...label }, site, on };
}

/** The same with some ratings not told. */
export function partOf(random: () => number, whole: Question, told: number): Question {
  const keep = <T extends object>(all: T): T =>
    Object.fromEntries(Object.entries(all).filter(() => random() < told)) as T;
  return { nameplate: keep(whole.nameplate), site: keep(whole.site), on: whole.on };
}
