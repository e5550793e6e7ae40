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

/** The form a careful clerk would go through: every rating that the rules decide by, in label order, until decided. */
export const fixedOrder: Policy = (question, stock, unaskable) => {
  if (indexStock(stock).match(question, { limit: 1 }).verdict !== "undecided") return [];
  const open = notKnown(question, unaskable);
  const { nameplate } = question;
  const noPower = unaskable.has("hp") || unaskable.has("serviceFactor");
  const order: readonly RatingName[] = [
    "hp",
    "serviceFactor",
    ...(noPower ? (["totalHp"] as const) : []),
    "volts",
    "phase",
    "rpm",
    "frame",
    ...(unaskable.has("frame") ? (["flange", "shaft"] as const) : []),
    "supplyVolts",
    ...(unaskable.has("supplyVolts") ? (["breakerPoles"] as const) : []),
    "pumpModel",
  ];
  return oneMessage(
    order.filter(
      (rating) => open(rating) && !(nameplate.totalHp !== undefined && /^(hp|serviceFactor)$/.test(rating)),
    ),
  );
};

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
