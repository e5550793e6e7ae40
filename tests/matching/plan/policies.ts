import { matchStock } from "../../../src/matching/match.ts";
import { chanceOfReading } from "../../../src/matching/plan/assumptions.ts";
import { planQuestions } from "../../../src/matching/plan.ts";
import { indexStock } from "../../../src/matching/stock-index.ts";
import type { OverallVerdict, Question, StockMotor } from "../../../src/matching/types.ts";
import { isNameplateRating, type RatingName } from "../../../src/nameplate/vocabulary.ts";

/** Somebody with a dead motor: what the label and the place say, and what of it can be read. */
export interface Customer {
  readonly whole: Question;
  readonly opening: Question;
  readonly canRead: (rating: RatingName) => boolean;
}

/** Says what to ask in one message; nothing ends the thread. */
export type Policy = (
  question: Question,
  stock: readonly StockMotor[],
  unaskable: ReadonlySet<RatingName>,
) => readonly RatingName[];

const away: ReadonlySet<RatingName> = new Set(["supplyVolts", "breakerPoles", "pumpModel"]);

/** One message: up to three ratings of the label, or one from elsewhere. */
export function oneMessage(ask: readonly RatingName[]): readonly RatingName[] {
  const [first] = ask;
  if (first === undefined) return [];
  return away.has(first) ? [first] : ask.filter((rating) => !away.has(rating)).slice(0, 3);
}

export const planned: Policy = (question, stock, unaskable) =>
  oneMessage(planQuestions(question, stock, { unaskable }));

const notKnown = ({ nameplate, site }: Question, unaskable: ReadonlySet<RatingName>) => {
  const known: Record<string, unknown> = { ...nameplate, ...site };
  return (rating: RatingName) => known[rating] === undefined && !unaskable.has(rating);
};

/** Goes through `order` until the verdict; what stands in for a rating comes when that one cannot be read. */
const inOrder =
  (order: readonly RatingName[]): Policy =>
  (question, stock, unaskable) => {
    if (indexStock(stock).match(question, { limit: 1 }).verdict !== "undecided") return [];
    const open = notKnown(question, unaskable);
    const noPower = unaskable.has("hp") || unaskable.has("serviceFactor");
    const ladder: readonly RatingName[] = [
      ...(noPower ? (["totalHp"] as const) : []),
      ...(unaskable.has("frame") ? (["flange", "shaft"] as const) : []),
      ...(unaskable.has("supplyVolts") ? (["breakerPoles"] as const) : []),
    ];
    const hasTotal = question.nameplate.totalHp !== undefined;
    const needless = (rating: RatingName) => hasTotal && (rating === "hp" || rating === "serviceFactor");
    return oneMessage(
      [...order, ...ladder, "pumpModel" as const].filter((rating) => open(rating) && !needless(rating)),
    );
  };

/** Down the label, as a form would have it: every rating that any rule looks at. */
export const labelOrder = inOrder([
  "hp",
  "serviceFactor",
  "volts",
  "amps",
  "rpm",
  "hz",
  "phase",
  "frame",
  "ambientC",
  "duty",
  "supplyVolts",
]);

/** The careful clerk: only the ratings that hold a verdict up, each once. */
export const decidingOrder = inOrder([
  "hp",
  "serviceFactor",
  "volts",
  "phase",
  "rpm",
  "frame",
  "supplyVolts",
]);

/** Everything a rule may look at, whatever the answers. */
export const everything: Policy = (question, _, unaskable) => {
  const order: readonly RatingName[] = [
    "hp",
    "serviceFactor",
    "totalHp",
    "volts",
    "amps",
    "serviceFactorAmps",
    "rpm",
    "hz",
    "phase",
    "frame",
    "ambientC",
    "duty",
    "supplyVolts",
    "pumpModel",
  ];
  return oneMessage(order.filter(notKnown(question, unaskable)));
};

export interface Thread {
  readonly messages: number;
  readonly readings: number;
  readonly verdict: OverallVerdict;
  readonly asked: readonly (readonly RatingName[])[];
}

/** Plays a thread to its end; a rating that cannot be read is not asked for again. */
export function converse(policy: Policy, customer: Customer, stock: readonly StockMotor[]): Thread {
  const nameplate: Record<string, unknown> = { ...customer.opening.nameplate };
  const site: Record<string, unknown> = { ...customer.opening.site };
  const whole: Record<string, unknown> = { ...customer.whole.nameplate, ...customer.whole.site };
  const unaskable = new Set<RatingName>();
  const asked: (readonly RatingName[])[] = [];
  for (;;) {
    const question: Question = { nameplate, site, on: customer.whole.on };
    const message = policy(question, stock, unaskable);
    if (message.length === 0 || asked.length > 20) {
      const { verdict } = matchStock(question, stock);
      return { messages: asked.length, readings: asked.flat().length, verdict, asked };
    }
    asked.push(message);
    for (const rating of message) {
      if (whole[rating] === undefined || !customer.canRead(rating)) unaskable.add(rating);
      else (isNameplateRating(rating) ? nameplate : site)[rating] = whole[rating];
    }
  }
}

/** Who can read what, drawn with the chances that the planner assumes. */
export function readerFrom(random: () => number): (rating: RatingName) => boolean {
  const drawn = new Map<RatingName, boolean>();
  return (rating) => {
    const known = drawn.get(rating) ?? random() < chanceOfReading(rating);
    drawn.set(rating, known);
    return known;
  };
}
