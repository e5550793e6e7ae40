import { isLabelWord } from "./naming.ts";
import { halves, horses, hundreds, joiners, parts, points, shy, tens, units, zeros } from "./numberWords.ts";
import type { Token } from "./token.ts";

export interface Said {
  readonly value: number;
  readonly end: number;
  readonly fraction?: boolean;
}

/** The words from `at` on, hyphens between them passed over. */
export class Words {
  readonly tokens: readonly Token[];
  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
  }
  word(at: number): string {
    const token = this.tokens[at];
    // "constructor" and the like are no keys of the tables.
    return token?.kind === "word" && !(token.norm in Object.prototype) ? token.norm : "";
  }
  /** Index of the next word: a hyphen glued on both sides does not part number words. */
  after(at: number): number {
    const mark = this.tokens[at];
    return mark?.kind === "mark" && mark.norm === "-" && mark.glued && this.tokens[at + 1]?.glued
      ? at + 1
      : at;
  }
}

function small(words: Words, at: number): Said | undefined {
  const word = words.word(at);
  const ten = tens[word];
  if (ten !== undefined) {
    let next = words.after(at + 1);
    const spanish = word.endsWith("a") || word === "veinte";
    if (spanish && words.word(next) !== "y") return { value: ten, end: at + 1 };
    if (spanish) next += 1;
    const unit = units[words.word(next)];
    if (unit !== undefined && unit > 0 && unit < 10) return { value: ten + unit, end: next + 1 };
    return { value: ten, end: at + 1 };
  }
  const unit = units[word];
  return unit === undefined ? undefined : { value: unit, end: at + 1 };
}

/** Digits said one by one: "one one five", "one five point eight". */
function spelled(words: Words, at: number): Said | undefined {
  let digits = "";
  let end = at;
  for (let next = at; digits.length < 4; next = words.after(end)) {
    const word = words.word(next);
    const digit =
      zeros.has(word) && digits
        ? 0
        : shy.has(word) && word !== "one" && word !== "uno"
          ? undefined
          : units[word];
    if (digit === undefined || digit > 9) break;
    digits += String(digit);
    end = next + 1;
  }
  const follows = words.word(words.after(end));
  // "one two thirty" is no run of digits, nor is the number before "and a half".
  if (tens[follows] !== undefined || (units[follows] ?? 0) > 9 || parts[follows] !== undefined)
    return undefined;
  const before = words.word(at - 1);
  const named = digits.length === 2 && (before === "z" || (isLabelWord(before) && before.length <= 5));
  const lettered = digits === "48" || digits === "56";
  const enough =
    digits.length >= 3 ||
    named ||
    (lettered && /^[yjc]$/.test(follows)) ||
    (digits.length === 2 && points.has(follows));
  return enough && !digits.startsWith("0") ? { value: Number(digits), end } : undefined;
}

/** English and Spanish cardinals, and the trade's pairs: one-fifteen, two oh eight, thirty-four fifty. */
function cardinal(words: Words, at: number): Said | undefined {
  const digits = spelled(words, at);
  if (digits) return digits;
  let total = 0;
  let said: Said | undefined;
  const hundred = words.word(at) === "hundred" ? 100 : hundreds[words.word(at)];
  if (words.word(at) === "mil") said = { value: 1, end: at };
  else if (hundred !== undefined) {
    const rest = small(words, at + 1);
    said =
      rest && rest.value < 100
        ? { value: hundred + rest.value, end: rest.end }
        : { value: hundred, end: at + 1 };
  } else said = small(words, at);
  if (!said) return undefined;

  const tail = (from: number): Said | undefined => {
    const next = words.word(from) === "and" ? from + 1 : from;
    return small(words, next);
  };
  let next = words.after(said.end);
  if (words.word(next) === "hundred" && said.value < 100) {
    const rest = tail(next + 1);
    said =
      rest && rest.value < 100
        ? { value: said.value * 100 + rest.value, end: rest.end }
        : { value: said.value * 100, end: next + 1 };
    next = words.after(said.end);
  }
  if ((words.word(next) === "thousand" || words.word(next) === "mil") && said.value < 1000) {
    total = said.value * 1000;
    const rest = cardinalBelowThousand(words, next + 1);
    return rest ? { value: total + rest.value, end: rest.end } : { value: total, end: next + 1 };
  }
  if (hundred === undefined && said.value > 0 && said.value < 100) {
    const pair = second(words, words.after(said.end));
    if (pair) return { value: said.value * 100 + pair.value, end: pair.end };
  }
  return said;
}

function cardinalBelowThousand(words: Words, at: number): Said | undefined {
  const hundred = hundreds[words.word(at)];
  if (hundred !== undefined) {
    const rest = small(words, at + 1);
    return rest ? { value: hundred + rest.value, end: rest.end } : { value: hundred, end: at + 1 };
  }
  const said = small(words, words.word(at) === "and" ? at + 1 : at);
  const next = said ? words.after(said.end) : at;
  if (said && words.word(next) === "hundred") {
    const rest = small(words, words.word(next + 1) === "and" ? next + 2 : next + 1);
    return rest
      ? { value: said.value * 100 + rest.value, end: rest.end }
      : { value: said.value * 100, end: next + 1 };
  }
  return said;
}

/** The second half of a pair: ten to ninety-nine, or oh and a digit. */
function second(words: Words, at: number): Said | undefined {
  if (zeros.has(words.word(at))) {
    const next = words.after(at + 1);
    const digit = units[words.word(next)];
    return digit !== undefined && digit < 10 ? { value: digit, end: next + 1 } : undefined;
  }
  const said = small(words, at);
  return said && said.value >= 10 ? said : undefined;
}

/** Digits after a point: "one five", "sixty-five", "oh". */
function decimals(words: Words, at: number): { digits: string; end: number } | undefined {
  let digits = "";
  let end = at;
  for (let next = at; digits.length < 3; ) {
    const token = words.tokens[next];
    const word = words.word(next);
    const said = zeros.has(word) ? { value: 0, end: next + 1 } : small(words, next);
    if (
      token?.kind === "number" &&
      token.form === "digits" &&
      /^\d{1,2}$/.test(token.norm) &&
      digits === ""
    ) {
      return { digits: token.norm, end: next + 1 };
    }
    if (!said || (said.value >= 10 && digits !== "" && digits !== "0")) break;
    // "sixteen point oh one point one": the one begins the next number.
    if (digits && points.has(words.word(words.after(said.end)))) break;
    digits += String(said.value);
    end = said.end;
    if (said.value >= 10) break;
    next = words.after(end);
  }
  return digits ? { digits, end } : undefined;
}

/** "half", "a half", "three quarters", "un cuarto". */
export function fraction(words: Words, at: number): Said | undefined {
  let start = at;
  const named = words.word(words.after(start + 1));
  if (words.word(start) === "a" && (halves[named] || parts[named])) {
    start = words.after(start + 1);
    const part = parts[words.word(start)];
    if (part) return { value: 1 / part, end: start + 1 };
  }
  if (words.word(start) === "quarter" && horses.has(words.word(words.after(start + 1))))
    return { value: 1 / 4, end: start + 1 };
  const half = halves[words.word(start)];
  if (half !== undefined) return { value: half, end: start + 1 };
  const count = units[words.word(start)];
  const next = words.after(start + 1);
  const part = parts[words.word(next)];
  if (count !== undefined && count > 0 && part && count < part) return { value: count / part, end: next + 1 };
  return undefined;
}

export function say(words: Words, at: number): Said | undefined {
  const alone = fraction(words, at);
  if (alone) {
    // "half a horse", "tres cuartos de caballo": the small word goes with the fraction.
    let end = alone.end;
    while (end < alone.end + 2 && /^(?:a|an|of|de|un)$/.test(words.word(end))) end += 1;
    return { value: alone.value, end: horses.has(words.word(end)) ? end : alone.end, fraction: true };
  }
  const token = words.tokens[at];
  if (points.has(words.word(at)) && words.word(at) !== "dot") {
    const after = decimals(words, at + 1);
    return after ? { value: Number(`0.${after.digits}`), end: after.end } : undefined;
  }
  const whole =
    token?.kind === "number" && token.form === "digits" && /^\d{1,4}$/.test(token.norm)
      ? { value: token.value, end: at + 1 }
      : cardinal(words, at);
  if (!whole) return undefined;
  const next = words.after(whole.end);
  if (joiners.has(words.tokens[next]?.norm ?? "")) {
    const extra = fraction(words, words.after(next + 1));
    if (extra) return { value: whole.value + extra.value, end: extra.end, fraction: true };
  }
  if (points.has(words.word(next))) {
    const after = decimals(words, words.after(next + 1));
    if (after) return { value: Number(`${whole.value}.${after.digits}`), end: after.end };
  }
  return whole.end === at + 1 && token?.kind === "number" ? undefined : whole;
}
