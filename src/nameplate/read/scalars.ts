import type { RatingName, RatingValue } from "../vocabulary.ts";
import { closeFraction, numberAs, type Parsed, unitAt, unitWords } from "./parsed.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** A temperature to a tenth of a degree; anything else stays exact, so that 1/3 is one third. */
const settled = (rating: RatingName, value: number) =>
  rating === "ambientC" ? Number(value.toFixed(1)) : value;

interface Scalar {
  readonly end: number;
  readonly value: number;
}

/** A plain number, a fraction or a mixed number: 1.5, 3/4, 1-1/2, 1 1/2, 1½, 1 and 1/2. */
function scalarsAt(rating: RatingName, tokens: readonly Token[], at: number): Scalar[] {
  const token = tokens[at];
  if (token?.kind !== "number") return [];
  const found: Scalar[] = [{ end: at + 1, value: numberAs(rating, token) }];
  const dotted = dottedFraction(tokens, at);
  if (dotted) found.push(dotted);
  const proper = properFraction(tokens, at);
  if (proper) found.push(proper);
  // "12½": the sign set close to a figure goes with it, however large.
  const close = closeFraction(tokens, at);
  if (close !== undefined) found.push({ end: at + 2, value: close });
  else if (token.form !== "fraction" && Number.isInteger(token.value) && token.value < 10) {
    let next = at + 1;
    const between = tokens[next];
    // "1-" at the end of a line, "1/2" on the next.
    const wrapped = isMark(between, "-") && between?.glued && tokens[next + 1]?.kind === "break";
    if (wrapped) next += 1;
    if (isMark(between, "-", "&", "+", "_", "'") || isWord(between, "and", "y", "n")) next += 1;
    const below = fractionBelow(tokens, at);
    const fraction = below ?? properFraction(tokens, next) ?? vulgarAt(tokens, next);
    if (fraction) found.push({ end: fraction.end, value: token.value + fraction.value });
  }
  return found;
}

/** "HP 1" at the end of a line, "1/2" alone on the next. */
function fractionBelow(tokens: readonly Token[], at: number): Scalar | undefined {
  const [before, broken] = [tokens[at - 1], tokens[at + 1]];
  if (broken?.kind !== "break" || broken.blank || before === undefined || before.kind === "break")
    return undefined;
  const fraction = properFraction(tokens, at + 2) ?? vulgarAt(tokens, at + 2);
  const after = fraction && tokens[fraction.end];
  return after === undefined || after.kind === "break" ? fraction : undefined;
}

function vulgarAt(tokens: readonly Token[], at: number): Scalar | undefined {
  const token = tokens[at];
  return token?.kind === "number" && token.form === "fraction" && token.value < 1
    ? { end: at + 1, value: token.value }
    : undefined;
}

/** "1.1/2" for 1 1/2: no dual rating rises from its first figure to its second. */
function dottedFraction(tokens: readonly Token[], at: number): Scalar | undefined {
  const [mixed, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (mixed?.kind !== "number" || under?.kind !== "number" || !isMark(slash, "/")) return undefined;
  const [whole, over] = /^([1-5])[.,]([135])$/.exec(mixed.norm)?.slice(1).map(Number) ?? [];
  const fits = (under.value === 2 || under.value === 4 || under.value === 8) && under.glued;
  if (whole === undefined || over === undefined || !fits || over >= under.value) return undefined;
  return under.value > whole ? { end: at + 3, value: whole + over / under.value } : undefined;
}

const denominators = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 20]);

function properFraction(tokens: readonly Token[], at: number): Scalar | undefined {
  const wrapped = tokens[at + 2]?.kind === "break" ? 1 : 0;
  const [over, slash, under] = [tokens[at], tokens[at + 1], tokens[at + 2 + wrapped]];
  if (over?.kind !== "number" || under?.kind !== "number") return undefined;
  if (!isMark(slash, "/", "\\") && !isWord(slash, "over", "slash")) return undefined;
  // "11/2" lost the space of "1 1/2".
  const [whole, part] = [Math.floor(over.value / 10), over.value % 10];
  const lost =
    /^[1-3][13]$/.test(over.norm) && (under.value === 2 || under.value === 4) && part < under.value;
  if (lost && over.form === "digits") return { end: at + 3 + wrapped, value: whole + part / under.value };
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

/** Every way to read one number with its unit here. */
export function parseScalar(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  const token = tokens[at];
  if (token?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  const parsed: Parsed[] = [];
  for (const scalar of scalarsAt(rating, tokens, at)) {
    const temperature = rating === "ambientC" ? celsius(tokens, scalar) : undefined;
    const { end, value } = temperature ?? scalar;
    if (rating === "phase" && value !== 1 && value !== 3) continue;
    // 370 in "30 mfd 370 vac" is the capacitor's voltage.
    const ofVolts = rating === "capacitorUf" && isWord(tokens[end], ...(unitWords.volts ?? [])) ? 2 : 0;
    const fit = suits(rating, value) - ofVolts - spellingCost(rating, scalar, tokens, at);
    parsed.push({ end, value: settled(rating, value) as RatingValue<RatingName>, fit });
    const second = secondValue(rating, tokens, end, value);
    if (second)
      parsed.push({
        end: second.end,
        value: second.half ? undefined : settled(rating, value),
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
  // "1-3/4" is one mixed number, not two.
  const mixed =
    isMark(joint, "-") &&
    joint?.glued &&
    Number.isInteger(first) &&
    second &&
    second.value < 1 &&
    second.end > next + 1;
  if (mixed) return undefined;
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
