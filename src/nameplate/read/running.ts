import type { RatingName } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { one } from "./one.ts";
import { PhraseBook } from "./phrases.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";
import { hoursWords } from "./words/site.ts";

const keys = new PhraseBook<RatingName>()
  .addAll(["breaker poles", "poles", "number of poles"], "breakerPoles")
  .addAll(hoursWords, "hoursPerDay");

/** "poles: 2", "hours_per_day = 8": a form filled in. */
export function keyed(tokens: readonly Token[], at: number): Candidate[] {
  const key = keys.longestAt(tokens, at);
  const rating = key?.found[0];
  if (!key || !rating || !isMark(tokens[key.end], ":", "=")) return [];
  const number = tokens[key.end + 1];
  if (number?.kind !== "number") return [];
  const fits =
    rating === "breakerPoles" ? [1, 2, 3].includes(number.value) : suits(rating, number.value) >= 2;
  return fits ? [one(rating, number.value, at, key.end + 2, key.end + 1, key.end + 2, 6)] : [];
}

const kwh = list(`
  kwh, kw, kilowatt, kilovatio, kwhr, kws
`);

/** "31 cents", "$0.31/kWh", "0.31 a kilowatt hour". */
export function price(tokens: readonly Token[], at: number): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number") return [];
  const dollars = isMark(tokens[at - 1], "$");
  const start = dollars ? at - 1 : at;
  let end = isMark(tokens[at + 1], "$", "€") ? at + 2 : at + 1;
  const cents =
    isWord(tokens[end], "cents", "cent", "centavos", "ctvs", "cts", "centimos") || isMark(tokens[end], "¢");
  // "29c per kWh": the letter alone only with the unit after it.
  const letter =
    !cents &&
    isWord(tokens[end], "c") &&
    (isMark(tokens[end + 1], "/") || isWord(tokens[end + 1], "a", "per")) &&
    isWord(tokens[end + 2], ...kwh);
  if (cents || letter) end += 1;
  let next = end;
  while (
    isMark(tokens[next], "/", "-") ||
    (tokens[next]?.kind === "number" && tokens[next]?.norm === "1" && isWord(tokens[next + 1], ...kwh)) ||
    isWord(
      tokens[next],
      "dollar",
      "euro",
      "euros",
      "one",
      "a",
      "per",
      "por",
      "el",
      "each",
      "dollars",
      "dolares",
      "dolar",
      "the",
      "cada",
      "for",
      "usd",
      "an",
    )
  )
    next += 1;
  const perKwh = next > end - (cents ? 1 : 0) && isWord(tokens[next], ...kwh) ? next + 1 : undefined;
  if (perKwh) {
    end = perKwh;
    if (isMark(tokens[end], "-")) end += 1;
    if (isWord(tokens[end], "hour", "hours", "hora", "hr", "h")) end += 1;
  }
  if (!cents && !perKwh) return priceAfterName(tokens, at, dollars);
  if (!cents && !dollars && number.value >= 2 && !perKwh) return [];
  const value = Number(
    (cents || letter || (!dollars && number.value > 2) ? number.value / 100 : number.value).toFixed(5),
  );
  if (value <= 0 || value > 3) return [];
  return [one("pricePerKwh", value, start, end, at, at + 1, perKwh ? 8 : 6.5)];
}

function priceAfterName(tokens: readonly Token[], at: number, dollars: boolean): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number") return [];
  let back = at - (dollars ? 2 : 1);
  for (let seen = 0; seen < 4; seen++, back--) {
    const token = tokens[back];
    if (isWord(token, "kwh")) {
      return number.value < 2 ? [one("pricePerKwh", number.value, back, at + 1, at, at + 1, 7)] : [];
    }
    if (
      !isWord(
        token,
        "is",
        "at",
        "costs",
        "price",
        "cost",
        "es",
        "a",
        "cuesta",
        "runs",
        "me",
        "us",
        "about",
        "rate",
        "de",
        "about",
      ) &&
      !isMark(token, ":", "=")
    )
      break;
  }
  return [];
}

/** "8 hours a day", "12 hrs/day", "runs 10 hours daily", "8 horas al dia". */
export function hours(tokens: readonly Token[], at: number, priced: boolean): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number" || suits("hoursPerDay", number.value) < 2) return [];
  let end = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
  // "hours: we run it 8 a day"
  const byTheDay =
    isWord(tokens[end], "a", "per", "al") &&
    isWord(tokens[end + 1], "day", "dia") &&
    tokens.slice(Math.max(0, at - 6), at).some((token) => isWord(token, "hours", "hrs", "horas"));
  if (byTheDay) return [one("hoursPerDay", number.value, at, end + 2, at, at + 1, 7)];
  if (!isWord(tokens[end], "hours", "hour", "hrs", "hr", "h", "horas", "hora")) return [];
  end += 1;
  const spoken = end;
  while (
    isMark(tokens[end], "/", "-") ||
    isWord(tokens[end], "a", "per", "al", "por", "each", "every", "the", "of", "cada", "in")
  )
    end += 1;
  if (isWord(tokens[end], "day", "daily", "dia", "dias", "diarias", "d", "diario", "everyday", "night"))
    return [one("hoursPerDay", number.value, at, end + 1, at, at + 1, 7)];
  // Where the price of electricity is spoken of, "it runs 10 hours" is said of a day.
  const runs = tokens
    .slice(Math.max(0, at - 5), at)
    .some((token) =>
      isWord(token, "run", "runs", "running", "on", "for", "corre", "prendida", "trabaja", "funciona"),
    );
  if (priced && runs) return [one("hoursPerDay", number.value, at, spoken, at, at + 1, 6)];
  return [{ start: at, end: spoken, score: 1, claims: [] }];
}
