import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { linkBack, linksAfter, unitFollows } from "./connect.ts";
import type { Name } from "./naming.ts";
import { goTogether, suits } from "./plausible.ts";
import { parseSpecial } from "./special.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { type Parsed, parseFrame, parseValue } from "./values.ts";

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
      for (const link of isArticle(tokens, name) ? [] : linksAfter(tokens, names, name))
        for (const parsed of valuesOf(name.rating, tokens, link.at, name, link.cost)) {
          const direct = link.at === name.end;
          const lower = name.weak && !name.upper && link.cost > -0.1 ? 0.8 : 0;
          const score =
            2 +
            parsed.fit -
            link.cost -
            lower +
            (unitFollows.has(name.rating) ? 0 : 0.3) +
            0.1 * (name.end - name.start) +
            (direct ? 0.1 : 0);
          if (score < floor || (maybeArticle(tokens, name) && !looksLikeCurrent(parsed))) continue;
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

/** "a" after an ordinary word is the article, not the sign for amps. */
function isArticle(tokens: readonly Token[], name: Name): boolean {
  const token = tokens[name.start];
  if (name.end > name.start + 1 || token?.norm !== "a" || isMark(tokens[name.end], ":", "=", "-"))
    return false;
  const before = tokens[name.start - 1];
  if (before?.kind === "word")
    return before.norm.length > 1 && before.norm !== "the" && !labelWords.has(before.norm);
  return before === undefined && token?.kind === "word" && !token.upper && tokens[name.end]?.kind === "word";
}
/** Spanish "208 a 230": a lone "a" between two figures joins them. */
function isJoint(tokens: readonly Token[], name: Name): boolean {
  const token = tokens[name.start];
  return (
    token?.kind === "word" &&
    token.norm === "a" &&
    !token.glued &&
    !token.upper &&
    tokens[name.end]?.kind === "number"
  );
}

/** A lower-case "a" after a comma or at the start may be either. */
function maybeArticle(tokens: readonly Token[], name: Name): boolean {
  const [before, token, after] = [tokens[name.start - 1], tokens[name.start], tokens[name.end]];
  const letter = token?.kind === "word" && token.norm === "a" && !token.upper && name.end === name.start + 1;
  return (
    letter &&
    !isMark(after, ":", "=") &&
    !after?.glued &&
    before?.kind !== "number" &&
    before?.kind !== "break"
  );
}

function looksLikeCurrent({ value }: Parsed): boolean {
  const list = Array.isArray(value) ? (value as number[]) : [];
  return list.length > 1 || list.some((amps) => !Number.isInteger(amps));
}

const labelWords = new Set([
  "hp",
  "volts",
  "cont",
  "rpm",
  "hz",
  "ph",
  "square",
  "keyed",
  "threaded",
  "max",
  "vac",
  "continuous",
  "phase",
  "speed",
  "round",
]);

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
    if (kind !== "number" && kind !== "partial" && kind !== "code") continue;
    const near = (rating: RatingName) => (ahead.get(rating) ?? Number.POSITIVE_INFINITY) - at < longestFigure;
    for (const rating of (kind === "code" ? codes : spelledBefore).filter(near))
      for (const parsed of valuesOf(rating, tokens, at, undefined, 0)) {
        if (parsed.united) candidates.push(candidate(rating, at, parsed, at, 2.6 + parsed.fit));
        for (let next = parsed.end; next <= Math.min(parsed.end + 3, tokens.length - 1); next++)
          for (const name of names[next] ?? []) {
            if (name.rating !== rating || isJoint(tokens, name)) continue;
            const cost = linkBack(tokens, parsed.end, name);
            if (cost === undefined) continue;
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

const codes: readonly RatingName[] = ["modelNumbers", "serialNumber"];

function claim(rating: RatingName, parsed: Parsed, start: number, score: number): Claim {
  return { rating, value: parsed.half ? undefined : parsed.value, start, end: parsed.end, score };
}

function candidate(rating: RatingName, start: number, parsed: Parsed, at: number, score: number): Candidate {
  return { start: Math.min(start, at), end: parsed.end, score, claims: [claim(rating, parsed, at, score)] };
}

/** Figures nobody in the trade doubts without a word: 115/230, 3450, 56Y. */
export function bare(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  const offer = (rating: RatingName, at: number, parsed: Parsed, score: number) =>
    candidates.push({
      start: at,
      end: parsed.end,
      score,
      claims: [{ ...claim(rating, parsed, at, score), bare: true }],
    });
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token?.kind === "word") {
      for (const parsed of parseFrame(tokens, at)) offer("frame", at, parsed, 1.2);
      continue;
    }
    if (token?.kind !== "number") continue;
    // "56 something", "56 and a letter I can't read": the frame, but not all of it.
    const following = tokens.slice(at + 1, at + 5);
    const unread = following.some((next) => isWord(next, "something", "letter", "letra", "algo"));
    if (unread && (token.norm === "56" || token.norm === "48"))
      offer("frame", at, { end: at + 1, value: undefined, fit: 1, half: true }, 0.6);
    for (const parsed of parseFrame(tokens, at)) {
      const value = String(parsed.value);
      if (/^(?:42|48|56|66|14[35]|18[24])[A-Z]/.test(value)) offer("frame", at, parsed, 1.4);
    }
    for (const parsed of suits("volts", token.value) === 2 || token.pair
      ? parseValue("volts", tokens, at)
      : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      if (list.length > 1 && list.every((volts) => suits("volts", volts) === 2))
        offer("volts", at, parsed, 1 + 0.2 * list.length);
    }
    const onlyBeside = isWord(tokens[at - 1], "only", "just", "straight") || isWord(tokens[at + 1], "only");
    if (onlyBeside && [115, 208, 230].includes(token.value))
      offer("volts", at, { end: at + 1, value: [token.value] as RatingValue<RatingName>, fit: 2 }, 0.8);
    const speed = bareSpeeds.has(token.value) || bareSpeeds.has(token.thousands ?? 0);
    for (const parsed of speed ? parseValue("rpm", tokens, at) : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      if (list.every((rpm) => bareSpeeds.has(rpm))) offer("rpm", at, parsed, 0.8 + 0.2 * list.length);
    }
    for (const parsed of token.value >= 3 && token.value <= 40 ? parseValue("amps", tokens, at) : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      const [first, second] = list;
      const dual =
        first !== undefined && second !== undefined && list.length === 2 && goTogether("amps", first, second);
      if (
        dual &&
        list.every((amps) => amps >= 3 && amps <= 40) &&
        list.some((amps) => !Number.isInteger(amps)) &&
        parsed.fit > 1.5
      )
        offer("amps", at, parsed, 0.7);
    }
  }
  return candidates;
}

/** Speeds of two- and four-pole motors as they are printed on pool labels (common practice, no source). */
const bareSpeeds = new Set([
  3450, 1725, 2850, 2900, 2875, 1425, 3440, 3430, 3400, 3480, 3500, 3490, 3420, 3460, 3470, 2880, 2840, 2860,
  2870, 1750, 1740, 1730, 3410,
]);

/** "max 9.6 amps", "9.6 amps max": the largest current is that at service-factor load. */
export function atMost(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  candidates: readonly Candidate[],
): Candidate[] {
  const greatest = (at: number) => isWord(tokens[at], "max", "maximum", "maximo", "maximos");
  return candidates.flatMap((one) => {
    if (one.claims.length !== 1 || one.claims[0]?.rating !== "amps") return [];
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
