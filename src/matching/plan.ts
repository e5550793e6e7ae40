import type { RatingName } from "../nameplate/vocabulary.ts";
import { matchStock } from "./match.ts";
import { rules } from "./rules/index.ts";
import type { Question, StockMotor } from "./types.ts";

/** Ratings that decide a verdict, easiest and most telling first; a later one stands in for an earlier one. */
const order: readonly RatingName[] = [
  "frame",
  "hp",
  "serviceFactor",
  "volts",
  "rpm",
  "phase",
  "supplyVolts",
  "totalHp",
  "flange",
  "shaft",
  "speedKind",
  "breakerPoles",
];

/** A rating that is asked only when all of the others cannot be had. */
const ladder: Readonly<Partial<Record<RatingName, readonly RatingName[]>>> = {
  flange: ["frame"],
  shaft: ["frame"],
  totalHp: ["hp", "serviceFactor"],
  breakerPoles: ["supplyVolts"],
};

const deciding = new Set(rules.filter(({ weight }) => weight === "deciding").map(({ name }) => name));

/**
 * Ratings worth asking, most useful first; empty when the verdict stands or nothing more can be asked.
 * `unaskable` holds what the customer cannot read or was asked often enough.
 */
export function planQuestions(
  question: Question,
  motors: readonly StockMotor[],
  options: { readonly unaskable: ReadonlySet<RatingName> },
): readonly RatingName[] {
  const match = matchStock(question, motors);
  if (match.verdict !== "undecided") return [];
  const known: Readonly<Record<string, unknown>> = { ...question.nameplate, ...question.site };
  const askable = (rating: RatingName) => known[rating] === undefined && !options.unaskable.has(rating);

  const needed = new Set<RatingName>();
  for (const { verdict, findings } of match.motors) {
    if (verdict !== "undecided") continue;
    for (const { rule, outcome, needs } of findings) {
      if (outcome === "not-known" && deciding.has(rule)) for (const rating of needs) needed.add(rating);
    }
  }
  if (needed.size === 0) return [];
  const ask = order.filter(
    (rating) =>
      needed.has(rating) &&
      askable(rating) &&
      (ladder[rating] === undefined || ladder[rating].some((before) => options.unaskable.has(before))),
  );
  if (ask.length > 0) return ask;
  return askable("pumpModel") ? ["pumpModel"] : [];
}
