import { matchStock } from "../../../src/matching/match.ts";
import type { Question, StockMotor } from "../../../src/matching/types.ts";
import { isNameplateRating, type RatingName } from "../../../src/nameplate/vocabulary.ts";

/** Total horsepower is left out: it would spare a reading, but few labels print it, so nobody can count on it. */
const label: readonly RatingName[] = ["frame", "hp", "serviceFactor", "volts", "phase", "rpm"];
const elsewhere: readonly RatingName[] = ["supplyVolts", "breakerPoles"];

/** The messages that can be sent: each set of up to three label ratings, or one rating from elsewhere. */
function messagesOver(open: readonly RatingName[]): readonly (readonly RatingName[])[] {
  const onLabel = open.filter((rating) => label.includes(rating));
  const sets: RatingName[][] = open.filter((rating) => elsewhere.includes(rating)).map((rating) => [rating]);
  for (const [a, first] of onLabel.entries()) {
    sets.push([first]);
    for (const [b, second] of onLabel.entries()) {
      if (b <= a) continue;
      sets.push([first, second]);
      for (const third of onLabel.slice(b + 1)) sets.push([first, second, third]);
    }
  }
  return sets;
}

/**
 * The least messages to be expected until the verdict, over customers who are all alike at first and equally
 * likely, found by trying every message at every turn. Slow and plain; for small stocks only.
 */
export function leastMessages(
  opening: Question,
  customers: readonly Question[],
  stock: readonly StockMotor[],
): number {
  const known = { ...opening.nameplate, ...opening.site } as Record<string, unknown>;
  const open = [...label, ...elsewhere].filter((rating) => known[rating] === undefined);
  const messages = messagesOver(open);
  const valueIn = (customer: Question, rating: RatingName) =>
    ({ ...customer.nameplate, ...customer.site })[rating as "hp"] as unknown;

  const decided = new Map<string, boolean>();
  const isDecided = (told: readonly RatingName[], customer: Question) => {
    const nameplate: Record<string, unknown> = { ...opening.nameplate };
    const site: Record<string, unknown> = { ...opening.site };
    for (const rating of told) {
      (isNameplateRating(rating) ? nameplate : site)[rating] = valueIn(customer, rating);
    }
    const key = JSON.stringify([nameplate, site]);
    const found =
      decided.get(key) ?? matchStock({ nameplate, site, on: opening.on }, stock).verdict !== "undecided";
    decided.set(key, found);
    return found;
  };

  const least = new Map<string, number>();
  /** Sum over the customers of the messages still needed, when they have told the same ratings alike. */
  const still = (told: readonly RatingName[], alike: readonly number[]): number => {
    const someone = customers[alike[0]!]!;
    if (isDecided(told, someone)) return 0;
    const key = `${[...told].sort()}:${alike}`;
    const known = least.get(key);
    if (known !== undefined) return known;
    let best = Number.POSITIVE_INFINITY;
    for (const message of messages) {
      if (message.some((rating) => told.includes(rating))) continue;
      const then = [...told, ...message];
      const byAnswer = new Map<string, number[]>();
      for (const at of alike) {
        const answer = JSON.stringify(message.map((rating) => valueIn(customers[at]!, rating)));
        byAnswer.set(answer, [...(byAnswer.get(answer) ?? []), at]);
      }
      let sum = alike.length;
      for (const group of byAnswer.values()) {
        if (sum >= best) break;
        sum += still(then, group);
      }
      if (sum < best) best = sum;
    }
    // Nothing left to ask and still no verdict.
    if (best === Number.POSITIVE_INFINITY) best = 0;
    least.set(key, best);
    return best;
  };
  return (
    still(
      [],
      customers.map((_, at) => at),
    ) / customers.length
  );
}
