import type { RatingName, RatingValue } from "../vocabulary.ts";
import { suits } from "./plausible.ts";
import { isWord, type NumberToken, type Token } from "./token.ts";

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

export const unitWords: Partial<Record<RatingName, readonly string[]>> = {
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

/** The value of a written number under one rating: where it can mean two, the one that suits. */
export function numberAs(rating: RatingName, token: NumberToken): number {
  const { value, thousands } = token;
  // A service factor is said without its point: "one sixty-five", "one four oh".
  if (rating === "serviceFactor" && token.form === "words" && Number.isInteger(value)) {
    if (value >= 100 && value < 200) return value / 100;
    if (value > 10 && value < 20) return value / 10;
  }
  return thousands !== undefined && suits(rating, thousands) > suits(rating, value) ? thousands : value;
}

/** The token after the rating's own unit, if it stands here. */
export function unitAt(rating: RatingName, tokens: readonly Token[], at: number): number {
  // Spanish "9.2 a 8.8 amperios": a lone "a" between two figures is no unit.
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  const joint =
    isWord(tokens[at], "a") &&
    !tokens[at]?.glued &&
    before?.kind === "number" &&
    after?.kind === "number" &&
    Math.max(before.value, after.value) / Math.min(before.value, after.value) < 1.4;
  return !joint && isWord(tokens[at], ...(unitWords[rating] ?? [])) ? at + 1 : at;
}

/** "12½": a whole figure with the sign of a fraction set close to it. */
export function closeFraction(tokens: readonly Token[], at: number): number | undefined {
  const [whole, part] = [tokens[at], tokens[at + 1]];
  if (whole?.kind !== "number" || part?.kind !== "number" || !part.glued) return undefined;
  const mixed = whole.form === "digits" && part.form === "fraction" && part.value < 1;
  return mixed && Number.isInteger(whole.value) && whole.value < 100 ? whole.value + part.value : undefined;
}
