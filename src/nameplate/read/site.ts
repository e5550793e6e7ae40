import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { PhraseBook } from "./phrases.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";

type SiteFact = "breakerAmps" | "supplyVolts" | "circuit";

const facts = new PhraseBook<SiteFact>()
  .addAll(
    list(`
  breaker, breakers, brekaer, braker, breker, fuse, fuses, disyuntor, pastilla, interruptor, circuit
  breaker, brkr, cb, breaker box, termica, termomagnetico
`),
    "breakerAmps",
  )
  .addAll(["circuit", "circuito", "service", "own circuit"], "circuit")
  .addAll(
    list(`
  outlet, outlets, wall outlet, supply, power supply, wired, wired for, wired at, wired up for,
  wired to, wired up, hooked up for, hooked up to, hooked to, hardwired, hard wired, running on,
  runs on, run on, plugged into, plugs into, plugged in to, line voltage, supply voltage, house
  voltage, incoming, coming in, coming from the panel, feed, fed with, fed by, at the panel, from
  the panel, panel is, panel, lugs, disconnect, terminals, equipment room, at the pad, pad, at the box, at the pump, at the disconnect, to the pump, to the pad, house
  is, house has, receptacle, connected to, strapped for, set for, set to, set up for, setup for,
  switched to, jumpered for, voltage at the house, my power is, power is, house power, my house,
  wiring is, electrician says its, toma, tomacorriente, conectado a, conectada a,
  alimentacion, enchufe, cableado, cableado a, cableado para, la casa, corriente de la casa, linea
  de, la linea, llega, llegan, le llega, le llegan, here at the house, power coming in, voltage
  here, mains, line is
`),
    "supplyVolts",
  );
const poles = new PhraseBook<1 | 2 | 3>()
  .addAll(
    list(`
  single pole, 1 pole, one pole, un polo, 1 polo, un solo polo, 1p, unipolar, 1 p, monopolar
`),
    1,
  )
  .addAll(
    list(`
  double pole, 2 pole, dual pole, dbl pole, doble polo, dos polos, 2 polos, dos polo, 2p, bipolar, 2
  p, de 2 polos, double pol
`),
    2,
  )
  .addAll(
    list(`
  3 pole, three pole, triple pole, tres polos, 3 polos, tripolar
`),
    3,
  );

/** Facts of the place: breaker, supply, price of electricity, hours a day, the pump's own name. */
export function site(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const fact = facts.longestAt(tokens, at);
    if (fact) for (const kind of fact.found) candidates.push(...around(tokens, fact.start, fact.end, kind));
    const pole = poles.longestAt(tokens, at);
    if (pole && !isWord(tokens[pole.end], "motor", "motors", "rpm"))
      candidates.push(...poleCandidates(tokens, pole.start, pole.end, pole.found[0] ?? 1));
    candidates.push(
      ...keyed(tokens, at),
      ...price(tokens, at),
      ...hours(tokens, at),
      ...pump(tokens, at),
      ...amperesOf(tokens, at),
    );
  }
  return candidates;
}

/** Poles alone, or with a breaker size beside them: "double pole 30", "20A 2-pole". */
function poleCandidates(tokens: readonly Token[], start: number, end: number, value: 1 | 2 | 3): Candidate[] {
  const alone = one("breakerPoles", value, start, end, start, end, 2.2);
  const unit = isWord(tokens[start - 1], ...ampWords) ? 1 : 0;
  const [after, before] = [tokens[end], tokens[start - 1 - unit]];
  const size = after?.kind === "number" ? end : before?.kind === "number" ? start - 1 - unit : undefined;
  const number = size === undefined ? undefined : tokens[size];
  if (size === undefined || number?.kind !== "number" || suits("breakerAmps", number.value) < 2)
    return [alone];
  if (isWord(tokens[size + 1], "v", "volt", "volts", "hp")) return [alone];
  const last = isWord(tokens[size + 1], ...ampWords) ? size + 2 : size + 1;
  const amps: Claim = { rating: "breakerAmps", value: number.value, start: size, end: size + 1, score: 4 };
  const claims = [...alone.claims, amps];
  return [alone, { start: Math.min(start, size), end: Math.max(end, last), score: 6.6, claims }];
}

function one(
  rating: RatingName,
  value: RatingValue<RatingName>,
  start: number,
  end: number,
  from: number,
  to: number,
  score: number,
): Candidate {
  const claim: Claim = { rating, value, start: from, end: to, score };
  return { start, end, score, claims: [claim] };
}

/** "double pole", "a double 15 amp breaker", "20 amp double": the poles said along with the amps. */
function withPoles(tokens: readonly Token[], breaker: Candidate): Candidate {
  for (let at = Math.max(0, breaker.start - 3); at <= breaker.end && at < tokens.length; at++) {
    const phrase = poles.longestAt(tokens, at);
    const token = tokens[at];
    const word = isWord(token, "double", "doble", "dbl", "dual")
      ? 2
      : isWord(token, "single", "sencillo", "simple")
        ? 1
        : undefined;
    const value = phrase?.found[0] ?? word;
    if (value === undefined) continue;
    if (
      at < breaker.start &&
      !tokens.slice(at, breaker.start).every((between) => between.kind === "word" || isMark(between, "-"))
    )
      continue;
    const end = phrase?.end ?? at + 1;
    const claim: Claim = { rating: "breakerPoles", value, start: at, end, score: breaker.score };
    return {
      ...breaker,
      start: Math.min(at, breaker.start),
      end: Math.max(end, breaker.end),
      score: breaker.score + 1,
      claims: [...breaker.claims, claim],
    };
  }
  return breaker;
}

const ampWords = list(`
  a, amp, amps, ampere, amperes, amperios, amperio, amper
`);
const voltWords = list(`
  v, volt, volts, vac, voltios, voltage
`);
const fillers = new Set(
  list(`
  phase, three, that, those, my, our, out, coming, comes, pad,
  double, dual, single, 2, pole, polo, polos, de, dos, doble, gfci, gfi, two, the, a, an, is, are,
  its, on, for, says, it, at, to, own, dedicated, of, es, un, una, el, la, rated, reads, and, i,
  have, with, has, volt, volts, v, 230, 240, 120, 115, 220, in, panel, box, main, there, here, now,
  up, as, only, just, about, que, hay, tiene, con, here, was, that, size, marked, labeled, electric,
  outdoor, regular, plain, straight, measured, house, coming, from, supply, pump, circuit, been,
  getting, get, current, currently, power, running, still, outlet, bomba, pool
`),
);

/** A figure before or after the word for it, with a few small words between. */
function around(tokens: readonly Token[], start: number, end: number, kind: SiteFact): Candidate[] {
  const candidates: Candidate[] = [];
  const rating: RatingName = kind === "supplyVolts" ? "supplyVolts" : "breakerAmps";
  const units = rating === "supplyVolts" ? voltWords : ampWords;
  const base = rating === "breakerAmps" ? 5.5 : 4.2;
  const offer = (at: number, low: number, high: number, cost: number, kindUnit: boolean) => {
    const token = tokens[at];
    if (token?.kind !== "number") return;
    if (kind === "circuit" && !kindUnit) return;
    const both = rating === "supplyVolts" && (isMark(tokens[at + 1], "/") || isMark(tokens[at - 1], "/"));
    if (both) return;
    const fit = suits(rating, token.value);
    if (fit < 0 || (fit < (cost <= 0.3 ? 0.8 : 1) && !kindUnit)) return;
    const whole = one(rating, token.value, low, high, at, at + 1, base + fit - cost + (kindUnit ? 0.4 : 0));
    candidates.push(rating === "breakerAmps" ? withPoles(tokens, whole) : whole);
  };
  let cost = 0;
  for (let at = end; at < Math.min(tokens.length, end + 9); at++) {
    const token = tokens[at];
    if (!token || token.kind === "break" || isMark(token, ".", ";", "?", "!")) break;
    if (token.kind === "number") {
      let last = at + 1;
      if (isMark(tokens[last], "-")) last += 1;
      const unit = isWord(tokens[last], ...units);
      const otherUnit =
        isWord(tokens[last], ...(units === voltWords ? ampWords : voltWords), "hp", "rpm", "hz") ||
        isWord(tokens[last], "pole", "polo", "polos");
      if (!otherUnit) {
        offer(at, start, unit ? last + 1 : at + 1, cost, unit);
        break;
      }
      cost += 0.5;
      continue;
    }
    if (isMark(token, ",")) cost += 0.8;
    else if (isWord(token, "motor", "label", "plate", "tag", "nameplate", "placa", "etiqueta", "but", "pero"))
      break;
    else if (token.kind === "word")
      cost += fillers.has(token.norm) ? 0.15 : isWord(token, ...units) ? 0 : 0.5;
    else cost += 0.1;
    if (cost > 2.2) break;
  }
  cost = 0;
  let unit = false;
  for (let at = start - 1; at >= Math.max(0, start - 6); at--) {
    const token = tokens[at];
    if (!token || token.kind === "break" || isMark(token, ".", ";", ",", "?", "!", ":")) break;
    if (isWord(token, "and", "but", "y", "pero", "so")) break;
    if (token.kind === "number") {
      const own =
        isWord(tokens[at + 1], ...units) || (isMark(tokens[at + 1], "-") && isWord(tokens[at + 2], ...units));
      const other = isWord(
        tokens[at + 1],
        "phase",
        "ph",
        "fases",
        "pole",
        "polo",
        "polos",
        ...(units === voltWords ? ampWords : voltWords),
      );
      if (other) {
        cost += 0.4;
        continue;
      }
      offer(at, at, end, cost, unit || own);
      break;
    }
    if (token.kind === "word") {
      if (isWord(token, ...units)) unit = true;
      else cost += fillers.has(token.norm) ? 0.2 : 1.2;
    }
    if (cost > 1.6) break;
  }
  return candidates;
}

/** "on a 30 amp": a circuit, though nobody says breaker. */
function amperesOf(tokens: readonly Token[], at: number): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number" || !isWord(tokens[at - 1], "a", "own", "dedicated", "un", "una")) return [];
  const before = isWord(tokens[at - 1], "a", "un", "una") ? tokens[at - 2] : tokens[at - 1];
  if (!isWord(before, "on", "own", "dedicated", "en")) return [];
  const next = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
  if (!isWord(tokens[next], ...ampWords) || suits("breakerAmps", number.value) < 2) return [];
  return [withPoles(tokens, one("breakerAmps", number.value, at, next + 1, at, at + 1, 5))];
}

const keys = new PhraseBook<RatingName>()
  .addAll(["breaker poles", "poles", "number of poles"], "breakerPoles")
  .addAll(
    [
      "hours per day",
      "hours a day",
      "hrs / day",
      "hours / day",
      "hours daily",
      "daily hours",
      "run time",
      "runtime",
      "horas por dia",
      "horas al dia",
    ],
    "hoursPerDay",
  );

/** "poles: 2", "hours_per_day = 8": a form filled in. */
function keyed(tokens: readonly Token[], at: number): Candidate[] {
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
function price(tokens: readonly Token[], at: number): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number") return [];
  const dollars = isMark(tokens[at - 1], "$");
  const start = dollars ? at - 1 : at;
  let end = at + 1;
  const cents =
    isWord(tokens[end], "cents", "cent", "centavos", "ctvs", "cts", "centimos") || isMark(tokens[end], "¢");
  if (cents) end += 1;
  let next = end;
  while (
    isMark(tokens[next], "/", "-") ||
    isWord(tokens[next], "a", "per", "por", "el", "each", "dollars", "the", "cada", "for", "usd", "an")
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
    (cents || (!dollars && number.value > 2) ? number.value / 100 : number.value).toFixed(5),
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
function hours(tokens: readonly Token[], at: number): Candidate[] {
  const number = tokens[at];
  if (number?.kind !== "number" || suits("hoursPerDay", number.value) < 2) return [];
  let end = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
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
  return [{ start: at, end: spoken, score: 1, claims: [] }];
}

const pumpNames = new PhraseBook<true>().addAll(
  list(`
  pump model, pump :, bomba :, pump is a, pump is an, wet end is a, wet end model, wet end is, pump model is, pump
  model number, pump model no, pump type, modelo de bomba, modelo de la bomba, la bomba es una, la
  bomba es un, bomba modelo, pump body says, pump says, pump itself is a, pump body is a, wet end
  says, pump number, model of the pump, pump is model
`),
  true,
);

/** The pump's own name: the words after "pump is a" up to the end of the clause that look like a name. */
function pump(tokens: readonly Token[], at: number): Candidate[] {
  const name = pumpNames.longestAt(tokens, at);
  if (!name) return [];
  let start = name.end;
  while (
    isMark(tokens[start], ":", "=", "#", '"', "“") ||
    isWord(tokens[start], "is", "a", "the", "no", "number", "model", "es", "un", "una", "its", "an", "old")
  )
    start += 1;
  let end = start;
  let digits = false;
  while (end < tokens.length && end - start < 9) {
    const token = tokens[end];
    if (!token || token.kind === "break" || isMark(token, ",", ".", ";", "(", ")", "!", "?", '"', "”", ":"))
      break;
    if (
      token.kind === "word" &&
      /^(?:and|but|with|from|i|the|motor|on|my|its|so|that|y|pero|con|is|has|if|it|que|pump|in|for|or|says|not|the|por|de|el|which)$/.test(
        token.norm,
      )
    )
      break;
    if (token.kind === "code" || token.kind === "number") digits = true;
    end += 1;
  }
  const [first, last] = [tokens[start], tokens[end - 1]];
  if (!first || !last || end === start) return [];
  const unitAfter = tokens[end - 1];
  const measured =
    end - start <= 2 &&
    unitAfter?.kind === "word" &&
    /^(?:hp|v|volts|volt|rpm|amps|a|horse|thp)$/.test(unitAfter.norm);
  const bareNumber = end - start === 1 && first.kind === "number";
  const named =
    first.kind === "code" || (first.kind === "word" && first.start >= 0 && isCapital(tokens, start));
  if (measured || bareNumber || first.kind === "number" || !(digits || named)) return [];
  return [
    { start: name.start, end, score: 9, claims: [{ rating: "pumpModel", value: "", start, end, score: 5 }] },
  ];
}

function isCapital(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return token?.kind === "word" && /^\p{Lu}/u.test(token.chunk.text);
}
