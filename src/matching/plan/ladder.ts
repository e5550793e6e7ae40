import type { RatingName } from "../../nameplate/vocabulary.ts";
import { ratedHpOf } from "../deduced.ts";
import type { Question } from "../types.ts";

/** What is open about the old motor, in four parts that are asked about independently of each other. */
export const parts = ["mount", "power", "electrics", "speed"] as const;
export type Part = (typeof parts)[number];

/** Ratings somebody can still be asked for. */
export type Askable = (rating: RatingName) => boolean;

/** A rating can be asked when it is not known and the customer can be bothered with it. */
export function askableIn(question: Question, unaskable: ReadonlySet<RatingName>): Askable {
  const known: Readonly<Record<string, unknown>> = { ...question.nameplate, ...question.site };
  return (rating) => known[rating] === undefined && !unaskable.has(rating);
}

/**
 * The ratings to ask for one part, given those any of which its rules wait for. A later step of a ladder is
 * taken only when an earlier one cannot be had: it is printed more seldom or harder to see.
 */
export function stepsOf(
  part: Part,
  needs: ReadonlySet<RatingName>,
  question: Question,
  askable: Askable,
): readonly RatingName[] {
  const open = (...names: readonly RatingName[]) => names.filter((name) => needs.has(name) && askable(name));
  switch (part) {
    case "mount":
      return firstStep([open("frame"), open("flange", "shaft")]);
    case "power":
      return powerSteps(needs, question, askable);
    case "electrics": {
      const place = firstStep([open("supplyVolts"), open("breakerPoles")]);
      return [...open("volts", "phase"), ...place];
    }
    case "speed":
      return firstStep([open("rpm"), open("speedKind")]);
  }
}

function firstStep(steps: readonly (readonly RatingName[])[]): readonly RatingName[] {
  return steps.find((step) => step.length > 0) ?? [];
}

/** Horsepower and service factor; else the total, which few labels print; else kilowatts for the horsepower. */
function powerSteps(
  needs: ReadonlySet<RatingName>,
  { nameplate }: Question,
  askable: Askable,
): readonly RatingName[] {
  if (needs.size === 0) return [];
  const factor: readonly RatingName[] = nameplate.serviceFactor === undefined ? ["serviceFactor"] : [];
  const rated: readonly RatingName[] = ratedHpOf(nameplate) === undefined ? ["hp"] : [];
  const ways: readonly (readonly RatingName[])[] = [
    [...rated, ...factor],
    ["totalHp"],
    ...(rated.length > 0 ? [["kw" as const, ...factor]] : []),
  ];
  return ways.find((way) => way.length > 0 && way.every(askable)) ?? [];
}

/** Ratings that stand in for another one that could not be had. */
export const standIns: ReadonlySet<RatingName> = new Set([
  "flange",
  "shaft",
  "totalHp",
  "kw",
  "breakerPoles",
  "speedKind",
]);

/** Asked in a message of its own: it is not on the label, and nobody should run about for two answers. */
export const awayFromLabel: ReadonlySet<RatingName> = new Set(["supplyVolts", "breakerPoles", "pumpModel"]);

/** Label ratings that go into one message. */
export const askedTogether = 3;
