import type { RatingName } from "../vocabulary.ts";
import {
  isArticle,
  isByTheDay,
  isJoint,
  joinsCurrents,
  looksLikeCurrent,
  maybeArticle,
  oneOfMany,
} from "./article.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { afterLeaders, linkBack, linksAfter, unitFollows } from "./connect.ts";
import type { Name } from "./naming.ts";
import type { Parsed } from "./parsed.ts";
import { parseSpecial } from "./special.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** A value that may follow this name at this token, whatever kind of rating it is. */
export function valuesOf(
  rating: RatingName,
  tokens: readonly Token[],
  at: number,
  name: Name | undefined,
  cost: number,
): Parsed[] {
  const parsed = parseValue(rating, tokens, at);
  return parsed.length > 0 ? parsed : parseSpecial(rating, tokens, at, name, cost);
}

const floor = 0.2;

/** The name that may follow a value as its unit, after its own name came before. */
const units: Partial<Record<RatingName, RatingName>> = {
  ...{ totalHp: "hp", serviceFactorAmps: "amps" },
  ...{ hp: "hp", kw: "kw", volts: "volts", amps: "amps", rpm: "rpm", hz: "hz", capacitorUf: "capacitorUf" },
};

/** "HP 1.5", "frame: 56Y", "the service factor looks like 1.65". */
export function namedBefore(tokens: readonly Token[], names: readonly (readonly Name[])[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (const starting of names)
    for (const name of starting)
      for (const link of isArticle(tokens, name) || joinsCurrents(tokens, name)
        ? []
        : linksAfter(tokens, names, name))
        for (const parsed of valuesOf(name.rating, tokens, link.at, name, link.cost)) {
          const direct = link.at === name.end;
          // "1.5 HP, motor label says 3/4": the name is the unit of the figure before it.
          const isUnit =
            unitFollows.has(name.rating) &&
            tokens[name.start - 1]?.kind === "number" &&
            !tokens[name.start]?.wide &&
            tokens.slice(name.end, link.at).some((token) => isMark(token, ",", ".", ";"));
          const lower = name.weak && !name.upper && link.cost > -0.1 ? 0.8 : 0;
          const score =
            2 +
            parsed.fit -
            link.cost -
            lower -
            (isUnit ? 1.5 : 0) +
            (unitFollows.has(name.rating) ? 0 : 0.3) +
            0.1 * (name.end - name.start) +
            (direct ? 0.1 : 0);
          if (
            score < floor ||
            (maybeArticle(tokens, name) &&
              (!looksLikeCurrent(parsed, tokens[link.at]) || oneOfMany(tokens, name)))
          )
            continue;
          candidates.push(candidate(name.rating, name.start, parsed, link.at, score));
          // "volts: 115/230 V": named and followed by its unit.
          const unit =
            units[name.rating] && names[parsed.end]?.find(({ rating }) => rating === units[name.rating]);
          if (unit)
            candidates.push({
              ...candidate(name.rating, name.start, parsed, link.at, score + 0.6),
              end: unit.end,
            });
        }
  return candidates;
}

const spelledBefore: readonly RatingName[] = [
  "hp",
  "serviceFactor",
  "totalHp",
  "kw",
  "volts",
  "amps",
  "serviceFactorAmps",
  "rpm",
  "hz",
  "phase",
  "frame",
  "ambientC",
  "capacitorUf",
];

/** A figure of several values and the way to its name are at most this many tokens. */
const longestFigure = 18;

/** "1.5 HP", "115/230V", "9.6 for the max amps". */
export function namedAfter(tokens: readonly Token[], names: readonly (readonly Name[])[]): Candidate[] {
  const candidates: Candidate[] = [];
  const ahead = new Map<RatingName, number>();
  for (let at = tokens.length - 1; at >= 0; at--) {
    for (const name of names[at] ?? []) ahead.set(name.rating, at);
    const kind = tokens[at]?.kind;
    const letter = letterOfClass(tokens, at);
    if (letter) candidates.push(letter);
    if (kind !== "number" && kind !== "partial" && kind !== "code") continue;
    const near = (rating: RatingName) => (ahead.get(rating) ?? Number.POSITIVE_INFINITY) - at < longestFigure;
    for (const rating of (kind === "code" ? codes : spelledBefore).filter(near))
      for (const parsed of valuesOf(rating, tokens, at, undefined, 0)) {
        if (parsed.united) candidates.push(candidate(rating, at, parsed, at, 2.6 + parsed.fit));
        const led = afterLeaders(tokens, parsed.end);
        for (let next = led; next <= Math.min(led + 6, tokens.length - 1); next++)
          for (const name of names[next] ?? []) {
            if (name.rating !== rating || isJoint(tokens, name) || isByTheDay(tokens, name)) continue;
            const way = linkBack(tokens, led, name);
            if (way === undefined) continue;
            const cost = led > parsed.end ? way + 0.3 : way;
            const glued = tokens[name.start]?.glued && next === parsed.end ? 0.5 : 0;
            const score =
              2 +
              parsed.fit -
              cost +
              glued +
              (unitFollows.has(rating) ? 0.3 : 0) +
              0.1 * (name.end - name.start);
            if (score < floor) continue;
            candidates.push({ start: at, end: name.end, score, claims: [claim(rating, parsed, at, score)] });
          }
      }
  }
  return candidates;
}

/** "K is the code letter": the letter, a verb and the name. */
function letterOfCode(tokens: readonly Token[], at: number): Candidate | undefined {
  const letter = tokens[at];
  if (letter?.kind !== "word" || !letter.upper || !/^[a-hj-np-v]$/.test(letter.norm)) return undefined;
  // "K CODE" at the end of a label
  const behind = tokens[at + 2];
  if (isWord(tokens[at + 1], "code") && !tokens[at + 1]?.glued && !isMark(tokens[at - 1], ":", "=")) {
    const alone = behind === undefined || behind.kind === "break" || isMark(behind, ",", ".", ";", "/");
    const named = isWord(tokens[at - 1], "code", "kva", "class", "ins", "cl", "frame");
    const claims = [claim("kvaCode", { end: at + 1, value: letter.norm.toUpperCase(), fit: 1 }, at, 3)];
    if (alone && !named) return { start: at, end: at + 2, score: 3, claims };
  }
  let next = at + 1;
  if (!isWord(tokens[next], "is", "es", "was", "for", "as")) return undefined;
  while (next < at + 4 && isWord(tokens[next], "is", "es", "was", "for", "as", "the", "its", "la", "el"))
    next += 1;
  const isCode =
    isWord(tokens[next], "code", "kva") ||
    (isWord(tokens[next], "letra") && isWord(tokens[next + 2], "codigo"));
  if (!isCode) return undefined;
  const claims = [claim("kvaCode", { end: at + 1, value: letter.norm.toUpperCase(), fit: 1 }, at, 3)];
  let end = next + 1;
  while (isWord(tokens[end], "code", "kva", "letter", "de", "codigo")) end += 1;
  return { start: at, end, score: 3, claims };
}

/** "'F' class insulation", "B is the insulation": the letter before its name. */
function letterOfClass(tokens: readonly Token[], at: number): Candidate | undefined {
  const code = letterOfCode(tokens, at);
  if (code) return code;
  const letter = tokens[at];
  if (letter?.kind !== "word" || !letter.upper || !/^[abfh]$/.test(letter.norm)) return undefined;
  const next = isMark(tokens[at + 1], "'", '"', "”", "-") ? at + 2 : at + 1;
  const classed = isWord(tokens[next], "class", "clase", "insulation", "insul") && !tokens[next]?.wide;
  // "INS F CLASS H" and "CODE B CLASS F" name the letter before.
  const named = isWord(
    tokens[at - 1],
    "class",
    "cl",
    "ins",
    "code",
    "insul",
    "insulation",
    "kva",
    "letter",
    "clase",
  );
  if (!classed || named || isMark(tokens[at - 1], ":", "=", ".", "-")) return undefined;
  const claims = [claim("insulationClass", { end: at + 1, value: letter.norm.toUpperCase(), fit: 1 }, at, 3)];
  return { start: at, end: next + 1, score: 3, claims };
}

const codes: readonly RatingName[] = ["modelNumbers", "serialNumber", "frame"];

/** What a parsed value says of its rating. */
export function claim(rating: RatingName, parsed: Parsed, start: number, score: number): Claim {
  return { rating, value: parsed.half ? undefined : parsed.value, start, end: parsed.end, score };
}

function candidate(rating: RatingName, start: number, parsed: Parsed, at: number, score: number): Candidate {
  return { start: Math.min(start, at), end: parsed.end, score, claims: [claim(rating, parsed, at, score)] };
}

/** "draws 9.6 amps at service factor": gives the token after it. */
function atServiceFactor(tokens: readonly Token[], from: number): number | undefined {
  if (!isWord(tokens[from], "at", "a")) return undefined;
  let end = isWord(tokens[from + 1], "the", "full", "max") ? from + 2 : from + 1;
  if (isWord(tokens[end], "sf") && tokens[end + 1]?.kind !== "number") return end + 1;
  if (!isWord(tokens[end], "service") || !isWord(tokens[end + 1], "factor")) return undefined;
  end += isWord(tokens[end + 2], "load", "horsepower") ? 3 : 2;
  const after = tokens[end];
  return after?.kind === "number" || isWord(after, "of", "is", "1") ? undefined : end;
}

/** "max 9.6 amps", "9.6 amps max" is the current at service-factor load; "total 1.65 hp" is total horsepower. */
export function atMost(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  candidates: readonly Candidate[],
): Candidate[] {
  const greatest = (at: number) => isWord(tokens[at], "max", "maximum", "maximo", "maximos");
  return candidates.flatMap((one): Candidate[] => {
    // "total 1.65 hp"
    if (
      one.claims.length === 1 &&
      one.claims[0]?.rating === "hp" &&
      isWord(tokens[one.start - 1], "total") &&
      !names[one.start - 1]?.some(({ rating }) => rating === "totalHp")
    ) {
      const claims = one.claims.map((hp) => ({ ...hp, rating: "totalHp" as const }));
      return [{ ...one, start: one.start - 1, score: one.score + 0.4, claims }];
    }
    if (one.claims.length !== 1 || one.claims[0]?.rating !== "amps") return [];
    const load = atServiceFactor(tokens, one.end);
    if (load !== undefined) {
      const claims = one.claims.map((amps) => ({ ...amps, rating: "serviceFactorAmps" as const }));
      return [{ ...one, end: load, score: one.score + 1.2, claims }];
    }
    const before = greatest(one.start - 1);
    const after =
      greatest(one.end) && (names[one.end]?.length ?? 0) === 0 && (names[one.end + 1]?.length ?? 0) === 0;
    if (!before && !after) return [];
    const claims = one.claims.map((amps) => ({ ...amps, rating: "serviceFactorAmps" as const }));
    return [
      {
        start: before ? one.start - 1 : one.start,
        end: before ? one.end : one.end + 1,
        score: one.score + 0.4,
        claims,
      },
    ];
  });
}
