import type { RatingName, RatingValue } from "../vocabulary.ts";
import { closeFraction, numberAs, type Parsed, unitAt } from "./parsed.ts";
import { goTogether, suits } from "./plausible.ts";
import { isMark, isWord, type NumberToken, type Token } from "./token.ts";

const listWords = [
  "to",
  "thru",
  "through",
  "or",
  "and",
  "o",
  "u",
  "y",
  "a",
  "hasta",
  "slash",
  "diagonal",
  "dash",
  "over",
  "por",
  "then",
  "low",
  "high",
  "hi",
  "lo",
];

const lines = ["one", "the", "first", "top", "line", "row", "side", "left", "right", "other", "upper"];

/** Every way to read one or several values of a rating here: 115/208-230, 19.2 or 9.6. */
export function parseList(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  const first = tokens[at];
  if (first?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  if (first?.kind !== "number") return [];
  const mixed = closeFraction(tokens, at);
  if (mixed !== undefined) return [{ end: at + 2, value: [mixed], fit: suits(rating, mixed) }];
  const values: number[] = [];
  const parsed: Parsed[] = [];
  let cost = first.lookalikes > 0 ? 0.3 : 0;
  let here = at;
  let united = false;
  let loosely = false;
  while (values.length < 5) {
    const token = tokens[here];
    if (token?.kind !== "number") break;
    const taken = takeFrom(rating, token, values, loosely, first, isRange(tokens, here));
    if (!taken) break;
    values.push(...taken);
    here += 1;
    const worst = Math.min(...values.map((value) => suits(rating, value)));
    const odd = token.form === "fraction" && token.value < 1 ? 1 : 0;
    parsed.push({
      end: here,
      value: [...values] as RatingValue<RatingName>,
      fit: worst - cost - odd + 0.3 * (values.length - 1),
      united,
    });
    const joint = jointAfter(rating, tokens, here);
    if (!joint) break;
    united ||= joint.united;
    loosely = joint.loose;
    cost += joint.cost;
    here = joint.next;
    const following = tokens[here];
    if (following?.kind === "partial") {
      parsed.push({ end: here + 1, value: undefined, fit: 1, half: true });
      break;
    }
  }
  return parsed;
}

/** The second of two voltages under or beside the first, at the end of its line; a figure near the first corrects it. */
function endsAsHalf(tokens: readonly Token[], above: number, at: number): boolean {
  const [first, second, after] = [tokens[above], tokens[at], tokens[at + 1]];
  if (first?.kind !== "number" || second?.kind !== "number") return false;
  const ratio = first.value / second.value;
  return (ratio > 1.5 || ratio < 1 / 1.5) && (after === undefined || after.kind === "break");
}

/** "208 to two thirty", "115/two thirty": what stands before this figure makes it the end of a range. */
function isRange(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1]?.kind === "break" ? at - 2 : at - 1;
  return isWord(tokens[before], "to", "a", "thru", "through", "slash") || isMark(tokens[before], "/", "-");
}

function takeFrom(
  rating: RatingName,
  token: NumberToken,
  before: readonly number[],
  loosely: boolean,
  first: NumberToken,
  ranged: boolean,
): readonly number[] | undefined {
  if (token.pair && before.length === 0 && goTogether(rating, ...token.pair)) return token.pair;
  const value = numberAs(rating, token);
  if (before.length === 0) return [value];
  // "amps 15.2/7.6 and two for volts": figures and number words do not mix in one list.
  if (token.form === "words" && first.form === "digits" && !ranged) return undefined;
  const last = before.at(-1) ?? 0;
  return before.some((earlier) => goTogether(rating, earlier, value, loosely)) && last !== value
    ? [value]
    : undefined;
}

/** What may stand between two values of one list, units included: `115 V / 230 V`, `208 to 230`. */
function jointAfter(
  rating: RatingName,
  tokens: readonly Token[],
  at: number,
): { next: number; cost: number; united: boolean; loose: boolean } | undefined {
  let here = unitAt(rating, tokens, at);
  const united = here > at;
  let cost = 0;
  let joined = false;
  let firm = false;
  for (let seen = 0; seen < 6; seen++) {
    const token = tokens[here];
    if (!token) return undefined;
    if (token.kind === "number" || token.kind === "partial") {
      if (joined) return { next: here, cost, united, loose: !firm };
      // Two figures side by side with nothing between them: a column that lost its slash.
      if (token.wide && endsAsHalf(tokens, at - 1, here))
        return { next: here, cost: 0.2, united, loose: true };
      return united || token.wide ? undefined : { next: here, cost: 0.9 + cost, united, loose: true };
    }
    if (isMark(token, "/", "\\", "-", "&", "~", "+")) {
      joined = true;
      firm = true;
    } else if (isMark(token, ",")) {
      joined = true;
      cost += 0.5;
    } else if (isWord(token, "on") && isWord(tokens[here + 1], "low", "high", "lo", "hi")) {
      cost += 0.1;
    } else if (isWord(token, "on") && isWord(tokens[here + 1], ...lines)) {
      // "14.4 on one line and 7.2 on the next"
      while (isWord(tokens[here + 1], ...lines)) here += 1;
      cost += 0.2;
    } else if (
      isWord(token, "voltage", "volts", "volt", "speed", "side", "line") &&
      isWord(tokens[here - 1], "low", "high", "lo", "hi")
    ) {
      cost += 0.1;
    } else if (isWord(token, ...listWords)) {
      joined = true;
      firm = true;
      cost += isWord(token, "a", "y", "and", "then") ? 0.4 : 0.1;
    } else if (token.kind === "break" && !token.blank)
      cost += joined || isMark(tokens[here + 1], "/") ? 0.2 : endsAsHalf(tokens, at - 1, here + 1) ? 0.2 : 2;
    else if (isMark(token, "(", ")", "|")) cost += 0.4;
    else return undefined;
    here += 1;
  }
  return undefined;
}
