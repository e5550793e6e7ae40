import type { Pump } from "../catalogue/types.ts";
import { impliedMount } from "../engineering/frames.ts";
import { labelTotalHp } from "../engineering/power.ts";
import { largestTotalHpRatio, smallestTotalHpRatio } from "../matching/rules/total-horsepower.ts";
import type { StockMotor } from "../matching/types.ts";
import type { RatingName, RatingValue } from "../nameplate/vocabulary.ts";
import { plainValues } from "./facts.ts";
import type { Fact, Facts, Ground } from "./thread.ts";

/** What the shop knows of a pump's model and of a motor's own number. */
export interface LookUps {
  readonly pumpByModel: (model: string) => Pump | undefined;
  /** The stocked motor that carries exactly this number itself. */
  readonly twinByNumber: (number: string) => StockMotor | undefined;
}

/** The motor's label and the pump's need disagree: somebody may have changed the motor before. */
export interface Contradiction {
  readonly rating: RatingName;
  readonly label: RatingValue<RatingName>;
  readonly pump: RatingValue<RatingName>;
}

/** Label and pump agree while such a motor would pass the total-horsepower rule on this pump. */
const SAME_TOTAL = { min: smallestTotalHpRatio, max: largestTotalHpRatio };

/** Nearly all pool pumps turn at 2-pole speed, two-speed ones at half of it too (common practice, no source). */
const usualRpm = { single: [3450], two: [3450, 1725], variable: [3450] } as const;

/** A twin's label stands in for what the rules ask of the old one. */
const fromTwin = [
  "hp",
  "serviceFactor",
  "totalHp",
  "volts",
  "rpm",
  "hz",
  "phase",
  "frame",
  "flange",
  "shaft",
  "speedKind",
] as const;

const groundOf = { pump: "pumpModel", number: "modelNumbers", breaker: "breakerPoles" } as const;

/**
 * Adds what follows from the breaker, a stocked twin or a known pump where the label says nothing, marked `inferred`;
 * reports where label and pump disagree. The label's own words are never replaced.
 */
export function deduce(
  facts: Facts,
  { pumpByModel, twinByNumber }: LookUps,
): { readonly facts: Facts; readonly contradictions: readonly Contradiction[] } {
  const { nameplate, site } = plainValues(facts);
  const added: Record<string, Fact> = {};
  const infer = (rating: RatingName, value: RatingValue<RatingName>, because: Ground) => {
    const words = facts[groundOf[because]]?.words ?? "";
    added[rating] = { value, words, certainty: "inferred", because };
  };
  // A three-phase motor takes three poles, so one or two of them, or 120 V, leave single-phase only.
  const singlePhase = site.supplyVolts === 120 || (site.breakerPoles !== undefined && site.breakerPoles < 3);
  if (nameplate.phase === undefined && singlePhase) infer("phase", 1, "breaker");

  const [twin] = (nameplate.modelNumbers ?? []).flatMap((number) => twinByNumber(number) ?? []);
  if (twin) {
    for (const rating of fromTwin) {
      const value = twin.label[rating];
      if (nameplate[rating] === undefined && value !== undefined) infer(rating, value, "number");
    }
    return { facts: { ...facts, ...added }, contradictions: [] };
  }

  const pump = site.pumpModel === undefined ? undefined : pumpByModel(site.pumpModel);
  if (!pump) return { facts: { ...facts, ...added }, contradictions: [] };

  const implied = nameplate.frame === undefined ? {} : impliedMount(nameplate.frame);
  const label = {
    flange: nameplate.flange ?? implied.face,
    shaft: nameplate.shaft ?? implied.shaft,
    totalHp: labelTotalHp(nameplate),
  };
  const contradictions: Contradiction[] = [];
  for (const rating of ["flange", "shaft", "totalHp"] as const) {
    const stated = label[rating];
    if (stated === undefined) infer(rating, pump[rating], "pump");
    else if (!agrees(stated, pump[rating]))
      contradictions.push({ rating, label: stated, pump: pump[rating] });
  }
  if (nameplate.frame === undefined && pump.frameBody !== undefined && contradictions.length === 0) {
    infer("frame", `${pump.frameBody}${frameLetter(pump)}`, "pump");
  }
  if (nameplate.rpm === undefined && nameplate.speedKind !== undefined) {
    infer("rpm", [...usualRpm[nameplate.speedKind]], "pump");
  }
  return { facts: { ...facts, ...added }, contradictions };
}

function agrees(label: string | number, pump: string | number): boolean {
  if (typeof label !== "number" || typeof pump !== "number") return label === pump;
  return label / pump >= SAME_TOTAL.min && label / pump <= SAME_TOTAL.max;
}

function frameLetter({ flange, shaft }: Pump): string {
  if (flange === "square") return "Y";
  if (flange === "round") return shaft === "keyed" ? "C" : "J";
  return "";
}
