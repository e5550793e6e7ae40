import type { RatingName } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { one } from "./one.ts";
import { PhraseBook } from "./phrases.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";
import { breakerWords, circuitWords, poleWords, siteFillers, supplyWords } from "./words/site.ts";
import { valuePhrases } from "./words/values.ts";

type SiteFact = "breakerAmps" | "supplyVolts" | "circuit";

const facts = new PhraseBook<SiteFact>()
  .addAll(breakerWords, "breakerAmps")
  .addAll(circuitWords, "circuit")
  .addAll(supplyWords, "supplyVolts");
const poles = new PhraseBook<1 | 2 | 3>()
  .addAll(poleWords[1], 1)
  .addAll(poleWords[2], 2)
  .addAll(poleWords[3], 3);
const ampWords = list(`
  a, amp, amps, ampere, amperes, amperios, amperio, amper
`);
const voltWords = list(`
  v, volt, volts, vac, voltios, voltage
`);
const breakerKinds = ["gfci", "gfi", "afci", "breaker", "dedicated", "circuit", "outdoor", "regular"];
const fillers = new Set(siteFillers);

/** The breaker and the wired supply that are spoken of at this token. */
export function circuit(tokens: readonly Token[], at: number): Candidate[] {
  const candidates: Candidate[] = [];
  const factor = isWord(tokens[at], "service") && isWord(tokens[at + 1], "factor", "fact");
  const fact = factor ? undefined : facts.longestAt(tokens, at);
  if (fact) for (const kind of fact.found) candidates.push(...around(tokens, fact.start, fact.end, kind));
  const pole = poles.longestAt(tokens, at);
  if (pole && !isWord(tokens[pole.end], "motor", "motors", "rpm"))
    candidates.push(...poleCandidates(tokens, pole.start, pole.end, pole.found[0] ?? 1));
  return [...candidates, ...amperesOf(tokens, at)];
}

/** Poles alone, or with a breaker size beside them: "double pole 30", "20A 2-pole". */
function poleCandidates(tokens: readonly Token[], start: number, end: number, value: 1 | 2 | 3): Candidate[] {
  const alone = one("breakerPoles", value, start, end, start, end, 2.2);
  let back = start - 1;
  // "20A GFCI double-pole"
  while (isWord(tokens[back], ...breakerKinds)) back -= 1;
  if (isWord(tokens[back], ...ampWords)) back -= 1;
  const [after, before] = [tokens[end], tokens[back]];
  const size = after?.kind === "number" ? end : before?.kind === "number" ? back : undefined;
  const number = size === undefined ? undefined : tokens[size];
  if (size === undefined || number?.kind !== "number" || suits("breakerAmps", number.value) < 2)
    return [alone];
  if (isWord(tokens[size + 1], "v", "volt", "volts", "hp")) return [alone];
  const last = isWord(tokens[size + 1], ...ampWords) ? size + 2 : size + 1;
  const amps: Claim = { rating: "breakerAmps", value: number.value, start: size, end: size + 1, score: 4 };
  const claims = [...alone.claims, amps];
  return [alone, { start: Math.min(start, size), end: Math.max(end, last), score: 6.6, claims }];
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

const phases = new PhraseBook<true>().addAll(
  valuePhrases.filter(([rating]) => rating === "phase").flatMap(([, , phrases]) => phrases),
  true,
);
const house = ["supply", "service", "house", "power", "incoming", "mains", "line", "alimentacion", "panel"];

/** "The supply is 208 three phase": the phases of the building, not the motor's. */
function withPhases(tokens: readonly Token[], start: number, end: number): number {
  return isWord(tokens[start], ...house) ? (phases.longestAt(tokens, end)?.end ?? end) : end;
}

/** A figure before or after the word for it, with a few small words between. */
function around(tokens: readonly Token[], start: number, end: number, kind: SiteFact): Candidate[] {
  const candidates: Candidate[] = [];
  const rating: RatingName = kind === "supplyVolts" ? "supplyVolts" : "breakerAmps";
  const units = rating === "supplyVolts" ? voltWords : ampWords;
  const base = rating === "breakerAmps" ? 5.5 : 4.2;
  const offer = (at: number, low: number, high: number, cost: number, kindUnit: boolean) => {
    const token = tokens[at];
    if (token?.kind !== "number") return;
    if (isMark(tokens[at + 1], "°") || isWord(tokens[at + 1], "degrees", "deg", "grados", "feet", "ft"))
      return;
    if (kind === "circuit" && !kindUnit) return;
    const both =
      rating === "supplyVolts" &&
      (isMark(tokens[at + 1], "/") ||
        isMark(tokens[at - 1], "/") ||
        (isWord(tokens[at + 1], "or", "o") && tokens[at + 2]?.kind === "number"));
    if (both || (isWord(tokens[at + 1], "or", "o") && tokens[at + 2]?.kind === "number")) return;
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
      // "llegan 220 a la bomba"
      const preposition = isWord(tokens[last], "a") && isWord(tokens[last + 1], "la", "el", "mi");
      const otherUnit =
        (!preposition &&
          isWord(tokens[last], ...(units === voltWords ? ampWords : voltWords), "hp", "rpm", "hz")) ||
        isWord(tokens[last], "pole", "polo", "polos");
      if (!otherUnit) {
        const stop = unit ? last + 1 : at + 1;
        offer(at, start, kind === "supplyVolts" ? withPhases(tokens, start, stop) : stop, cost, unit);
        break;
      }
      // "outlet's a 20A 115V": the amps are explained with it.
      cost += rating === "supplyVolts" && isWord(tokens[last], ...ampWords) ? -3.8 : 0.5;
      continue;
    }
    if (isMark(token, ",")) cost += 0.8;
    else if (
      isWord(token, "motor", "label", "plate", "tag", "nameplate", "placa", "etiqueta", "but", "pero", "not")
    )
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
        // "20A 240V breaker": the voltage is explained with it.
        cost += isWord(tokens[at + 1], ...voltWords) ? -4.2 : 0.4;
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
