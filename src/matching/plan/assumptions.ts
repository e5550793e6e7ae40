import { type RatingName, ratings } from "../../nameplate/vocabulary.ts";

/**
 * Chance that a homeowner finds a rating and can read it: printed on most pool motor labels or not, worn off
 * or not, reachable or not. Common practice, no source; only their order matters much.
 */
const chances: Readonly<Partial<Record<RatingName, number>>> = {
  hp: 0.97,
  volts: 0.97,
  rpm: 0.92,
  frame: 0.88,
  serviceFactor: 0.85,
  phase: 0.8,
  totalHp: 0.35,
  kw: 0.1,
  flange: 0.9,
  shaft: 0.6,
  speedKind: 0.9,
  supplyVolts: 0.75,
  breakerPoles: 0.85,
  pumpModel: 0.6,
};

export function chanceOfReading(rating: RatingName): number {
  return chances[rating] ?? 0.5;
}

/** What one more reading in a message weighs against one more message; times effort, over chance. */
const messagesPerEffort = 0.02;

/** Cost of asking for a rating besides the message it goes in, in messages. */
export function readingCost(rating: RatingName): number {
  return (messagesPerEffort * ratings[rating].effort) / chanceOfReading(rating);
}

/** A thread that ends without a verdict costs the desk as much as this many messages. */
export const undecidedCost = 20;

/** How often a pool pump is wired to each supply (common practice, no source). */
const supplyShares: Readonly<Record<number, number>> = { 120: 0.3, 208: 0.05, 240: 0.65, 480: 0.1 };

export function supplyShare(supplyVolts: number): number {
  return supplyShares[supplyVolts] ?? 0.01;
}

/** How often a motor whose volts do not tell has three phases (common practice, no source). */
export const threePhaseShare = 0.05;

/** Part of the belief that is spread over all possible values alike, the rest follows the stock. */
export const openMind = 0.2;

/** Values the trade knows whether or not the shop stocks them (NEMA MG 1 frames; the rest common practice, no source). */
export const usualFrames = ["48Y", "56Y", "48J", "56J", "48C", "56C"] as const;
export const usualMounts = [
  { flange: "square", shaft: "threaded" },
  { flange: "round", shaft: "threaded" },
  { flange: "round", shaft: "keyed" },
  { flange: "through-bolt", shaft: "threaded" },
] as const;
export const usualVolts = [[115], [230], [115, 230], [208, 230], [208, 230, 460]] as const;
export const usualRpm = [[3450], [1725], [3450, 1725], [2850], [1425], [2850, 1425]] as const;
export const usualHp = [0.5, 0.75, 1, 1.5, 2, 2.5, 3] as const;
/** NEMA MG 1 12.51 (1.0 to 1.4) and the higher ones of full-rated pool motors (common practice, no source). */
export const usualServiceFactors = [1, 1.1, 1.15, 1.25, 1.3, 1.4, 1.5, 1.65, 1.9] as const;
