import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";
import type { Random } from "./random.ts";

/**
 * Labels that are true: a motor is drawn first (power, efficiency, power factor, winding), and its label is
 * printed from it the way labels are. Nothing here is taken from the audit under test.
 */
export interface TrueLabel {
  readonly nameplate: Nameplate;
  /** Efficiency times power factor at full service-factor load. */
  readonly product: number;
}

/**
 * Least full-load efficiency of 2-pole capacitor-start motors made since 2015, percent: 10 CFR 431.446(a).
 * Pool motors are not bound by it, and older ones lie up to 20 points below.
 */
const federalMinimum: readonly (readonly [hp: number, efficiencyPct: number])[] = [
  [0.5, 72.4],
  [0.75, 76.2],
  [1, 80.4],
  [1.5, 81.5],
  [2, 82.9],
  [3, 84.1],
];

function federalMinimumAt(hp: number): number {
  const above = federalMinimum.findIndex(([rowHp]) => rowHp >= hp);
  if (above === 0) return federalMinimum[0]![1];
  if (above < 0) return federalMinimum.at(-1)![1];
  const [lowHp, low] = federalMinimum[above - 1]!;
  const [highHp, high] = federalMinimum[above]!;
  return low + ((high - low) * (hp - lowHp)) / (highHp - lowHp);
}

/** Service factors by horsepower as pool labels carry them (common practice; 1.04, 1.32, 1.67: EPA list). */
const serviceFactors: Readonly<Record<number, readonly number[]>> = {
  0.5: [1.25, 1.3, 1.6, 1.9],
  0.75: [1.25, 1.27, 1.5, 1.67],
  1: [1.1, 1.25, 1.4, 1.65],
  1.5: [1.1, 1.15, 1.47, 1.5, 1.6],
  2: [1.1, 1.2, 1.3, 1.35],
  2.5: [1.04, 1.1, 1.27],
  3: [1, 1.15, 1.32],
};

/** The highest odd one drawn at each horsepower (common practice: big motors have little to spare). */
const oddestServiceFactor: Readonly<Record<number, number>> = {
  0.5: 1.95,
  0.75: 1.75,
  1: 1.7,
  1.5: 1.65,
  2: 1.45,
  2.5: 1.35,
  3: 1.35,
};

/** Power factor of 0.62 (split-phase, capacitor start) to 0.98 (permanent capacitor, drives with correction). */
function drawProduct(random: Random, totalHp: number, threePhase: boolean): number {
  for (;;) {
    const efficiency = (federalMinimumAt(totalHp) + random.between(-22, 4)) / 100;
    const powerFactor = threePhase ? random.between(0.65, 0.87) : random.between(0.62, 0.98);
    const product = efficiency * powerFactor;
    if (product >= 0.45 && product <= 0.85) return product;
  }
}

type Winding = "115" | "230" | "115/230" | "208-230" | "115/208-230" | "3ph" | "50Hz";

/** Above 2.7 total hp nobody winds for 115 V: no household circuit feeds it. */
function drawWinding(random: Random, totalHp: number): Winding {
  return random.weighted<Winding>(
    totalHp <= 1.9
      ? [
          ["115/230", 60],
          ["115", 6],
          ["230", 14],
          ["208-230", 8],
          ["115/208-230", 8],
          ["3ph", 2],
          ["50Hz", 2],
        ]
      : [
          ["230", 45],
          ["208-230", 30],
          ["115/230", totalHp < 2.7 ? 14 : 0],
          ["115/208-230", totalHp < 2.7 ? 5 : 0],
          ["3ph", 4],
          ["50Hz", 2],
        ],
  );
}

/** Printed voltages, and for each printed current the voltage it holds at and how far a winding strays. */
const windings: Readonly<Record<Winding, { volts: number[]; at: number[] }>> = {
  "115": { volts: [115], at: [115] },
  "230": { volts: [230], at: [230] },
  "115/230": { volts: [115, 230], at: [115, 230] },
  "208-230": { volts: [208, 230], at: [230] },
  "115/208-230": { volts: [115, 208, 230], at: [115, 230] },
  "3ph": { volts: [230, 460], at: [230, 460] },
  "50Hz": { volts: [220, 240], at: [230] },
};

const round = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(2));

/** Draws a motor and prints its label; `complete` keeps every rating, else people leave some out. */
export function drawTrueLabel(random: Random, complete = false): TrueLabel {
  const hp = random.weighted([
    [0.5, 6],
    [0.75, 16],
    [1, 25],
    [1.5, 22],
    [2, 15],
    [2.5, 5],
    [3, 11],
  ] as const);
  const odd = random.chance(0.05);
  const serviceFactor = odd
    ? round(random.between(1, oddestServiceFactor[hp]!), 0.01)
    : random.pick(serviceFactors[hp]!);
  const totalHp = hp * serviceFactor;
  const winding = drawWinding(random, totalHp);
  const phase = winding === "3ph" ? 3 : 1;
  const hz = winding === "50Hz" ? 50 : 60;
  const product = drawProduct(random, totalHp, phase === 3);

  const single = winding === "230" || winding === "208-230";
  const speedKind = random.weighted([
    ["single", 80],
    ["two", single ? 12 : 0],
    ["variable", single ? 12 : 0],
  ] as const);
  const top =
    hz === 50
      ? 2850
      : random.weighted([
          [3450, 88],
          [round(random.between(3400, 3525), 5), 8],
          [1725, 4],
        ] as const);
  const rpm =
    speedKind === "two"
      ? [top, round(top / 2, 5)]
      : speedKind === "variable" && random.chance(0.5)
        ? [top, 600]
        : [top];

  // The current splits into an active part, which follows the load, and a magnetizing part, which does not.
  const watts = (load: number) => (load * 745.7) / product;
  const powerFactor = Math.min(0.98, Math.max(0.6, product / 0.78));
  const share = Math.sqrt(1 - powerFactor ** 2 + (powerFactor / serviceFactor) ** 2);
  const step = random.weighted([
    [0.1, 80],
    [0.01, 15],
    [0.5, 5],
  ] as const);
  // The halves of a winding are not quite alike; many labels simply print the double of the 230 V figure.
  const strays = windings[winding].at.map(() => (random.chance(0.5) ? 1 : random.between(0.985, 1.015)));
  const currents = (load: "full" | "service-factor") =>
    windings[winding].at.map((volts, index) => {
      const apparent = watts(totalHp) / (phase === 3 ? Math.sqrt(3) : 1);
      const amps = (apparent / volts) * strays[index]! * (load === "full" ? share : 1);
      return round(amps, amps < 8 ? Math.min(step, 0.1) : step);
    });
  const listed = (amps: number[]): number[] => {
    if (speedKind === "two") return [amps[0]!, round(amps[0]! * random.between(0.22, 0.4), 0.1)];
    if (winding === "208-230" && random.chance(0.4))
      return [round(amps[0]! * random.between(1, 1.1), 0.1), amps[0]!];
    return amps;
  };
  const printed = random.weighted([
    ["amps", 50],
    ["sfa", 25],
    ["both", 20],
    ["full", 5],
  ] as const);

  const say = (share: number) => complete || random.chance(share);
  const truncate = random.chance(0.3);
  const nameplate: Nameplate = {
    ...(say(0.97) ? { hp } : {}),
    ...(say(0.9) ? { serviceFactor } : {}),
    ...(random.chance(0.25)
      ? { totalHp: truncate ? Math.floor(totalHp * 100) / 100 : round(totalHp, 0.01) }
      : {}),
    ...(say(0.95) ? { volts: windings[winding].volts } : {}),
    ...(say(0.9) ? ampsOf(printed, listed, currents) : {}),
    ...(say(0.85) ? { rpm } : {}),
    ...(say(0.6) || hz === 50 ? { hz: [hz] } : {}),
    ...(say(0.6) || phase === 3 ? { phase } : {}),
    ...(say(0.92)
      ? {
          frame: random.weighted([
            ["48Y", 22],
            ["56Y", 40],
            ["56J", 20],
            ["56C", 12],
            ["48", 2],
            ["56", 2],
            ["56CZ", 1],
            ["48YZ", 1],
          ] as const),
        }
      : {}),
    ...(speedKind === "single" ? {} : { speedKind }),
    ...(say(0.4)
      ? {
          ambientC: random.weighted([
            [50, 85],
            [40, 12],
            [45, 1.5],
            [60, 1.5],
          ] as const),
        }
      : {}),
    ...(say(0.3)
      ? {
          insulationClass: random.weighted([
            ["B", 60],
            ["F", 35],
            ["A", 3],
            ["H", 2],
          ] as const),
        }
      : {}),
    ...(say(0.3) ? { kvaCode: random.pick([..."EFGHJKLMN"]) } : {}),
    ...(say(0.4) ? { duty: "continuous" as const } : {}),
  };
  return { nameplate, product };
}

function ampsOf(
  printed: "amps" | "sfa" | "both" | "full",
  listed: (amps: number[]) => number[],
  currents: (load: "full" | "service-factor") => number[],
): Pick<Nameplate, "amps" | "serviceFactorAmps"> {
  const serviceFactorAmps = currents("service-factor");
  if (printed === "amps") return { amps: listed(serviceFactorAmps) };
  if (printed === "sfa") return { serviceFactorAmps: listed(serviceFactorAmps) };
  const full = currents("full");
  return printed === "full" ? { amps: listed(full) } : { amps: full, serviceFactorAmps };
}
