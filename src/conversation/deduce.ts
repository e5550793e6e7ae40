import type { Pump } from "../catalogue/types.ts";
import { impliedMount } from "../engineering/frames.ts";
import { labelTotalHp } from "../engineering/power.ts";
import type { RatingName, RatingValue } from "../nameplate/vocabulary.ts";
import { plainValues } from "./facts.ts";
import type { Fact, Facts } from "./thread.ts";

export type PumpLookup = (model: string) => Pump | undefined;

/** The motor's label and the pump's need disagree: somebody may have changed the motor before. */
export interface Contradiction {
  readonly rating: RatingName;
  readonly label: RatingValue<RatingName>;
  readonly pump: RatingValue<RatingName>;
}

/** Label and pump agree while the motor would pass the total-horsepower rule on this pump. */
const SAME_TOTAL = { min: 0.98, max: 1.1 };

/**
 * Adds what a known pump says about the motor it needs, marked `inferred`, where the label says nothing;
 * reports where the label says otherwise. The label's own words are never replaced.
 */
export function deduce(
  facts: Facts,
  pumpByModel: PumpLookup,
): { readonly facts: Facts; readonly contradictions: readonly Contradiction[] } {
  const { nameplate, site } = plainValues(facts);
  const pump = site.pumpModel === undefined ? undefined : pumpByModel(site.pumpModel);
  if (!pump) return { facts, contradictions: [] };

  const implied = nameplate.frame === undefined ? {} : impliedMount(nameplate.frame);
  const label = {
    flange: nameplate.flange ?? implied.face,
    shaft: nameplate.shaft ?? implied.shaft,
    totalHp: labelTotalHp(nameplate),
  };
  const contradictions: Contradiction[] = [];
  const added: Record<string, Fact> = {};
  const infer = (rating: RatingName, value: RatingValue<RatingName>) => {
    const words = facts.pumpModel?.words ?? "";
    added[rating] = { value, words, certainty: "inferred", because: pump.model };
  };
  for (const rating of ["flange", "shaft", "totalHp"] as const) {
    const stated = label[rating];
    if (stated === undefined) infer(rating, pump[rating]);
    else if (!agrees(stated, pump[rating]))
      contradictions.push({ rating, label: stated, pump: pump[rating] });
  }
  if (nameplate.frame === undefined && pump.frameBody !== undefined && contradictions.length === 0) {
    infer("frame", `${pump.frameBody}${frameLetter(pump)}`);
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
