import type { RatingName, RatingValue } from "../vocabulary.ts";
import { goTogether, suits } from "./plausible.ts";
import { isMark, isWord, type NumberToken, type Token } from "./token.ts";

/** One way to read a value at a place, for a given rating. */
export interface Parsed {
  readonly end: number;
  readonly value: RatingValue<RatingName> | undefined;
  /** How well it suits the rating; see `suits`. */
  readonly fit: number;
  /** Only half of the value could be read, or two were offered: there is something, but no value. */
  readonly half?: boolean;
  /** The unit stands between the values ("9.5 amps high and 3.1 low"). */
  readonly united?: boolean;
}

export const listRatings: ReadonlySet<RatingName> = new Set([
  "volts",
  "amps",
  "serviceFactorAmps",
  "rpm",
  "hz",
]);
const scalarRatings: ReadonlySet<RatingName> = new Set([
  "hp",
  "serviceFactor",
  "totalHp",
  "kw",
  "phase",
  "ambientC",
  "capacitorUf",
  "breakerAmps",
  "supplyVolts",
  "hoursPerDay",
]);
const unitWords: Partial<Record<RatingName, readonly string[]>> = {
  volts: ["v", "volt", "volts", "vac", "voltios"],
  amps: ["a", "amp", "amps", "amperios"],
  serviceFactorAmps: ["a", "amp", "amps", "amperios"],
  rpm: ["rpm", "rpms"],
  hz: ["hz", "hertz", "cycles"],
  hp: ["hp", "horse", "horsepower"],
  ambientC: ["deg", "degrees", "degree", "grados"],
  breakerAmps: ["a", "amp", "amps", "amperios"],
  supplyVolts: ["v", "volt", "volts", "vac", "voltios"],
  capacitorUf: ["mfd", "uf", "µf", "μf"],
};
const round = (value: number, places: number) => Number(value.toFixed(places));

/** Every way to read a value of this rating that starts at this token; most explains most last. */
export function parseValue(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  if (listRatings.has(rating)) return parseList(rating, tokens, at);
  if (scalarRatings.has(rating)) return parseScalar(rating, tokens, at);
  if (rating === "frame") return parseFrame(tokens, at);
  return [];
}

/** The value of a written number under one rating: where it can mean two, the one that suits. */
export function numberAs(rating: RatingName, token: NumberToken): number {
  const { value, thousands } = token;
  return thousands !== undefined && suits(rating, thousands) > suits(rating, value) ? thousands : value;
}

interface Scalar {
  readonly end: number;
  readonly value: number;
}

/** A plain number, a fraction or a mixed number: 1.5, 3/4, 1-1/2, 1 1/2, 1½, 1 and 1/2. */
function scalarsAt(rating: RatingName, tokens: readonly Token[], at: number): Scalar[] {
  const token = tokens[at];
  if (token?.kind !== "number") return [];
  const found: Scalar[] = [{ end: at + 1, value: numberAs(rating, token) }];
  const proper = properFraction(tokens, at);
  if (proper) found.push(proper);
  if (token.form !== "fraction" && Number.isInteger(token.value) && token.value < 10) {
    let next = at + 1;
    const between = tokens[next];
    if (isMark(between, "-", "&", "+", "_", "'") || isWord(between, "and", "y", "n")) next += 1;
    const fraction = properFraction(tokens, next) ?? vulgarAt(tokens, next);
    if (fraction) found.push({ end: fraction.end, value: token.value + fraction.value });
  }
  return found;
}

function vulgarAt(tokens: readonly Token[], at: number): Scalar | undefined {
  const token = tokens[at];
  return token?.kind === "number" && token.form === "fraction" && token.value < 1
    ? { end: at + 1, value: token.value }
    : undefined;
}

const denominators = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 20]);

function properFraction(tokens: readonly Token[], at: number): Scalar | undefined {
  const wrapped = tokens[at + 2]?.kind === "break" ? 1 : 0;
  const [over, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2 + wrapped]];
  if (over?.kind !== "number" || under?.kind !== "number") return undefined;
  if (!isMark(slash, "/", "\\") && !isWord(slash, "over", "slash")) return undefined;
  if (
    over.form === "fraction" ||
    !Number.isInteger(over.value) ||
    !denominators.has(under.value) ||
    over.value >= under.value
  )
    return undefined;
  if (over.value === 0) return undefined;
  return { end: at + 3 + wrapped, value: over.value / under.value };
}

function parseScalar(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  const token = tokens[at];
  if (token?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  const parsed: Parsed[] = [];
  for (const scalar of scalarsAt(rating, tokens, at)) {
    const temperature = rating === "ambientC" ? celsius(tokens, scalar) : undefined;
    const { end, value } = temperature ?? scalar;
    if (rating === "phase" && value !== 1 && value !== 3) continue;
    const places = rating === "ambientC" ? 1 : 4;
    // 370 in "30 mfd 370 vac" is the capacitor's voltage.
    const ofVolts = rating === "capacitorUf" && isWord(tokens[end], ...(unitWords.volts ?? [])) ? 2 : 0;
    const fit = suits(rating, value) - ofVolts - spellingCost(rating, scalar, tokens, at);
    parsed.push({ end, value: round(value, places) as RatingValue<RatingName>, fit });
    const second = secondValue(rating, tokens, end, value);
    if (second)
      parsed.push({
        end: second.end,
        value: second.half ? undefined : round(value, places),
        fit: fit - 0.1,
        half: second.half,
      });
  }
  return parsed;
}

/** A fraction is horsepower's way of writing; anywhere else two figures with a slash are two figures. */
function spellingCost(rating: RatingName, scalar: Scalar, tokens: readonly Token[], at: number): number {
  const token = tokens[at];
  const fraction = scalar.end > at + 1 || (token?.kind === "number" && token.form === "fraction");
  if (fraction) return rating === "hp" || rating === "totalHp" ? -0.6 : 1.5;
  return token?.kind === "number" && token.lookalikes > 0 ? 0.3 : 0;
}

/** Of a dual horsepower (1.5/0.25) the first counts; "1.5 or 1.6" is no reading. */
function secondValue(
  rating: RatingName,
  tokens: readonly Token[],
  at: number,
  first: number,
): { end: number; half: boolean } | undefined {
  const unit = unitAt(rating, tokens, at);
  const joint = tokens[unit];
  const slash = isMark(joint, "/", "\\") || isWord(joint, "over", "slash");
  const apart = isMark(joint, "/") && !joint?.glued && !tokens[unit + 1]?.glued;
  const hesitation = isWord(joint, "or", "o", "u", "maybe", "to") || isMark(joint, "-", "?");
  if (!slash && !hesitation) return undefined;
  let next = unit + 1;
  while (
    isMark(tokens[next], "?") ||
    isWord(tokens[next], "or", "maybe", "a", "is", "it", "possibly", "quizas")
  )
    next += 1;
  const second = scalarsAt(rating, tokens, next).at(-1);
  if (!second || second.value === first || suits(rating, second.value) < 0.8) return undefined;
  // Two speeds: the horsepower at low speed is a small part of that at high speed.
  const low = (rating === "hp" || rating === "totalHp") && isMark(joint, "-") && second.value <= first / 2.5;
  if (apart && second.value > first / 2) return undefined;
  if (low) return { end: second.end, half: false };
  if (slash)
    return rating === "hp" || rating === "totalHp" || rating === "serviceFactor" || rating === "kw"
      ? { end: second.end, half: false }
      : undefined;
  if (rating === "capacitorUf" && isMark(joint, "-")) return { end: second.end, half: false };
  return { end: second.end, half: true };
}

function unitAt(rating: RatingName, tokens: readonly Token[], at: number): number {
  return isWord(tokens[at], ...(unitWords[rating] ?? [])) ? at + 1 : at;
}

/** A temperature with its scale; Fahrenheit becomes Celsius. */
function celsius(tokens: readonly Token[], scalar: Scalar): Scalar {
  let at = scalar.end;
  while (isMark(tokens[at], "°", "º", "*") || isWord(tokens[at], "deg", "degrees", "degree", "grados", "º"))
    at += 1;
  const scale = tokens[at];
  if (isWord(scale, "c", "celsius", "centigrade", "centigrados", "cent"))
    return { end: at + 1, value: scalar.value };
  const fahrenheit = ((scalar.value - 32) * 5) / 9;
  if (isWord(scale, "f", "fahrenheit", "farenheit", "fahr")) return { end: at + 1, value: fahrenheit };
  return { end: at, value: scalar.value };
}

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
  "dash",
  "over",
  "por",
  "then",
  "low",
  "high",
  "hi",
  "lo",
];

function parseList(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  const first = tokens[at];
  if (first?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  if (first?.kind !== "number") return [];
  const values: number[] = [];
  const parsed: Parsed[] = [];
  let cost = first.lookalikes > 0 ? 0.3 : 0;
  let here = at;
  let united = false;
  let loosely = false;
  while (values.length < 5) {
    const token = tokens[here];
    if (token?.kind !== "number") break;
    const taken = takeFrom(rating, token, values, loosely);
    if (!taken) break;
    values.push(...taken);
    here += 1;
    const worst = Math.min(...values.map((value) => suits(rating, value)));
    const odd = token.form === "fraction" ? 1 : 0;
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

function takeFrom(
  rating: RatingName,
  token: NumberToken,
  before: readonly number[],
  loosely: boolean,
): readonly number[] | undefined {
  if (token.pair && before.length === 0 && goTogether(rating, ...token.pair)) return token.pair;
  const value = numberAs(rating, token);
  if (before.length === 0) return [value];
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
  for (let seen = 0; seen < 4; seen++) {
    const token = tokens[here];
    if (!token) return undefined;
    if (token.kind === "number" || token.kind === "partial") {
      if (joined) return { next: here, cost, united, loose: !firm };
      // Two figures side by side with nothing between them: a column that lost its slash.
      return united || token.wide ? undefined : { next: here, cost: 0.9, united, loose: true };
    }
    if (isMark(token, "/", "\\", "-", "&", "~", "+")) {
      joined = true;
      firm = true;
    } else if (isMark(token, ",")) {
      joined = true;
      cost += 0.5;
    } else if (isWord(token, ...listWords)) {
      joined = true;
      firm = true;
      cost += isWord(token, "a", "y", "and", "then") ? 0.4 : 0.1;
    } else if (token.kind === "break" && !token.blank) cost += joined ? 0.2 : 2;
    else if (isMark(token, "(", ")", "|")) cost += 0.4;
    else return undefined;
    here += 1;
  }
  return undefined;
}

const towardsLetter = ["frame", "with", "and", "then", "a", "the", "letter", "is", "con", "y", "la", "letra"];

/** "48 frame with a Y", "56 and the letter is J": the letter a few words after the number. */
function laterLetter(tokens: readonly Token[], at: number): Parsed | undefined {
  const number = tokens[at];
  for (let next = at + 1; number && next < at + 7; next++) {
    const token = tokens[next];
    const letter = token?.kind === "word" && token.upper && /^[yjcz]$/.test(token.norm);
    if (letter && next > at + 1 && !tokens[next + 1]?.glued)
      return { end: next + 1, value: `${number.norm}${token.norm.toUpperCase()}`, fit: 1.6, united: true };
    if (!isWord(token, ...towardsLetter) && !isMark(token, ",")) return undefined;
  }
  return undefined;
}

const frameEndings = /^(?:y|yz|yn|j|jm|jp|c|cz|z|h|hc|hz|n|r|t|tc|ty)$/;
const customaryFrames = new Set(["48", "56"]);

/** 56Y, 56-Y, 56 Y, Y56; the number alone where it is called a frame. */
export function parseFrame(tokens: readonly Token[], at: number): Parsed[] {
  const first = tokens[at];
  if (first?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  if (first?.kind === "word" && /^[yjc]$/.test(first.norm)) {
    const number = tokens[isMark(tokens[at + 1], "-") ? at + 2 : at + 1];
    if (number?.kind === "number" && number.glued && customaryFrames.has(number.norm))
      return [
        { end: tokens.indexOf(number, at) + 1, value: `${number.norm}${first.norm.toUpperCase()}`, fit: 1.5 },
      ];
    return [];
  }
  if (first?.kind !== "number" || first.form === "fraction" || !/^\d{2,3}$/.test(first.norm)) return [];
  const known = customaryFrames.has(first.norm);
  const found: Parsed[] = [
    { end: at + 1, value: first.norm, fit: known ? 1 : first.norm.length === 3 ? -1 : 0 },
  ];
  const later = known ? laterLetter(tokens, at) : undefined;
  if (later) found.push(later);
  let next = at + 1;
  if (isMark(tokens[next], "-", "/", ".", "'", '"')) next += 1;
  const letter = tokens[next];
  const follower = tokens[next + 1];
  if (letter?.kind !== "word" || !frameEndings.test(letter.norm)) return found;
  // Spanish "y" between two figures is no frame letter.
  if (letter.norm === "y" && !letter.glued && !letter.upper && follower?.kind === "number") return found;
  if (letter.norm.length > 1 && !letter.glued && !letter.upper) return found;
  const close = letter.glued && next === at + 1;
  found.push({
    end: next + 1,
    value: `${first.norm}${letter.norm.toUpperCase()}`,
    fit: (known ? 2 : 0.5) + (close ? 0.5 : 0),
  });
  return found;
}
