import type { RatingName } from "../nameplate/vocabulary.ts";
import { cheapestPlan } from "./plan/cheapest.ts";
import {
  type Askable,
  askableIn,
  askedTogether,
  awayFromLabel,
  parts,
  standIns,
  stepsOf,
} from "./plan/ladder.ts";
import { materialIn } from "./plan/material.ts";
import { outlookOf } from "./plan/outlook.ts";
import { possibilitiesOf } from "./plan/possibilities.ts";
import { type Survivors, survivorsOf } from "./plan/survivors.ts";
import { worldsOf } from "./plan/worlds.ts";
import { indexStock } from "./stock-index.ts";
import type { Question, StockMotor } from "./types.ts";

/**
 * Ratings worth asking, most useful first; empty as soon as no answer could change the outcome (the verdict
 * and the motors offered), and when nothing is left that could be asked. The next message takes up to three
 * label ratings from the front, or one rating from elsewhere; what follows is likely to be asked later.
 * `unaskable` holds what the customer cannot read or was asked often enough.
 *
 * The stock is indexed once: give the same array each time.
 */
export function planQuestions(
  question: Question,
  motors: readonly StockMotor[],
  { unaskable }: { readonly unaskable: ReadonlySet<RatingName> },
): readonly RatingName[] {
  const index = indexStock(motors);
  const survivors = survivorsOf(index, question, index.findings(question));
  const askable = askableIn(question, unaskable);
  const open = parts.flatMap((part) => {
    const ratings = stepsOf(part, survivors.needs[part], question, askable);
    if (ratings.length === 0) return [];
    return [{ part, ratings, possibilities: possibilitiesOf(part, ratings, question, index, survivors.all) }];
  });
  const closed = parts.filter((part) => open.every((asked) => asked.part !== part));
  const outlook = outlookOf(index, question, survivors.all, open, closed);
  if (outlook.isDecided(outlook.parts.map(({ states }) => states[0]?.[0] ?? 0))) return [];

  const worlds = worldsOf(outlook.parts);
  const plan = cheapestPlan(outlook, worlds);
  const material = materialIn(outlook, worlds, plan.next);
  const next = plan.next.filter(material);
  if (next.length > 0) return [...next, ...laterThan(next, plan.order).filter(material)];

  const rest = plan.order.filter(material);
  // Whatever the answer, the same motors come out; but a verdict rests on what was read, not on our guess.
  if (rest.length === 0 && plan.next.length > 0) return plan.next;

  // No answer is likely to bring a verdict. What stands in for a missing rating comes first, then the pump,
  // which may tell what the label does not; at last what at least narrows the choice for the desk.
  const ladder = rest.filter((rating) => standIns.has(rating));
  if (ladder.length > 0) return ladder;
  return pumpWouldTell(survivors, askable) ? ["pumpModel"] : rest;
}

/** Nothing may slip into a message of label ratings that is better off without it. */
function laterThan(next: readonly RatingName[], order: readonly RatingName[]): readonly RatingName[] {
  const later = order.filter((rating) => !next.includes(rating));
  const [first] = next;
  const isFull = next.length === askedTogether || (first !== undefined && awayFromLabel.has(first));
  return isFull ? later : later.filter((rating) => awayFromLabel.has(rating));
}

/** The pump's model tells mount and total horsepower, so it is asked when these cannot be read. */
function pumpWouldTell({ needs }: Survivors, askable: Askable): boolean {
  const noMount = needs.mount.size > 0 && !askable("frame");
  const noPower = needs.power.size > 0 && !askable("totalHp");
  return askable("pumpModel") && (noMount || noPower);
}
