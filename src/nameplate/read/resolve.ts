import type { MessageReading, Reading, Unreadable } from "../reading.ts";
import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { type Clause, type Cue, clausesOf, findCues } from "./clauses.ts";
import type { Name } from "./naming.ts";
import { goTogether, suits } from "./plausible.ts";
import { type Owner, ownersOf } from "./scope.ts";
import { openQuestions, selfEvident } from "./selfEvident.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { listRatings, parseValue } from "./values.ts";

interface Standing extends Claim {
  readonly from: number;
  readonly to: number;
}

/** What of the chosen readings counts, what was taken back, and what could not be read. */
export function resolve(
  text: string,
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  chosen: readonly Candidate[],
  expecting: readonly RatingName[],
): MessageReading {
  const cues = findCues(tokens);
  const clauses = clausesOf(tokens, cues);
  const stated = chosen.flatMap((candidate) =>
    candidate.claims.map((claim) => ({ ...claim, from: candidate.start, to: candidate.end })),
  );
  const explained = new Array<boolean>(tokens.length).fill(false);
  for (const candidate of chosen) explained.fill(true, candidate.start, candidate.end);
  const owners = ownersOf(tokens, clauses, cues, stated);
  const denied: Standing[] = [];
  let standing: Standing[] = [];
  for (const claim of stated) {
    if (isDenied(tokens, cues, claim)) denied.push(claim);
    else if (counts(owners, claim)) standing.push(claim);
  }
  standing = retract(tokens, cues, clauses, standing);
  standing.push(...corrected(tokens, cues, explained, owners, [...stated]));
  const placed = (claim: Claim): Standing => ({ ...claim, from: claim.start, to: claim.end });
  const ofLabel = (claim: Claim) => owners[claim.start] === "label";
  const free = [...explained];
  for (const claim of standing) free.fill(true, claim.start, claim.end);
  for (const more of [openQuestions(tokens, names, free, standing), selfEvident(tokens, free, standing)]) {
    const kept = more.filter(ofLabel).map(placed);
    standing.push(...kept);
    for (const claim of kept) free.fill(true, claim.start, claim.end);
  }
  standing = standing.filter((claim) => !isCapacitorRating(claim, standing));
  standing.push(...answers(tokens, free, owners, expecting, standing));
  standing.sort((a, b) => a.start - b.start);
  standing = halved(clauses, cues, standing);
  standing = standing.filter(
    (claim) =>
      !denied.some(
        (no) => no.rating === claim.rating && same(no.value, claim.value) && no.start > claim.start,
      ),
  );

  const readings: Reading[] = [];
  const unreadable: Unreadable[] = [];
  const ratings = [...new Set(standing.map(({ rating }) => rating))];
  const span = (from: number, to: number) => {
    const start = tokens[from]?.start ?? 0;
    const end = tokens[Math.max(from, to - 1)]?.end ?? start;
    return { words: text.slice(start, end), span: { start, end } };
  };
  for (const rating of ratings) {
    const claims = standing.filter((claim) => claim.rating === rating);
    const settled = settle(rating, claims, tokens, cues);
    if (!settled) continue;
    const where = span(settled.from, settled.to);
    if (settled.value === undefined) unreadable.push({ rating, ...where });
    else {
      const value =
        rating === "pumpModel"
          ? span(settled.start, settled.end).words.replace(/[\s.,;]+$/, "")
          : settled.value;
      readings.push({ rating, value: value as RatingValue<RatingName>, ...where });
    }
  }
  for (const name of illegible(tokens, names, cues, clauses, stated, owners)) {
    const known =
      readings.some(({ rating }) => rating === name.rating) ||
      unreadable.some(({ rating }) => rating === name.rating);
    if (!known) unreadable.push({ rating: name.rating, ...span(name.start, name.end) });
  }
  return { readings, unreadable };
}

/** A capacitor's own voltage stands beside its microfarads and is no rating of the motor. */
function isCapacitorRating(claim: Standing, claims: readonly Standing[]): boolean {
  if (claim.rating !== "volts" || !Array.isArray(claim.value) || claim.value.length !== 1) return false;
  const volts = Number(claim.value[0]);
  return volts >= 160 && claims.some(({ rating, from, to }) => rating === "capacitorUf" && claim.from - to <= 3 && claim.from >= to && volts !== 230 && volts !== 208 && from < claim.from);
}

const measurable = new Set<RatingName>(["amps", "volts", "serviceFactorAmps", "rpm", "hz", "kw"]);

function counts(owners: readonly Owner[], claim: Standing): boolean {
  const owner = owners[claim.start];
  const ofPlace = /^(?:supplyVolts|breakerAmps|breakerPoles|pumpModel|pricePerKwh|hoursPerDay)$/.test(
    claim.rating,
  );
  if (owner === "label") return true;
  // The end of the shaft and the face are described by what they carry: "the impeller screws on".
  if (owner === "part") return claim.rating === "shaft" || claim.rating === "flange" || claim.rating === "pumpModel";
  if (ofPlace)
    return (
      owner === "measured" ||
      (owner === "other" &&
        claim.rating !== "breakerAmps" &&
        claim.rating !== "supplyVolts" &&
        claim.rating !== "breakerPoles")
    );
  return owner === "measured" && !measurable.has(claim.rating);
}

/** "not 230", "isn't a 56J", "no 115 on this one". */
function isDenied(tokens: readonly Token[], cues: readonly Cue[], claim: Standing): boolean {
  return cues.some((cue) => {
    if (cue.kind !== "negator" || cue.end > claim.start) return false;
    for (let at = cue.end; at < claim.start; at++) {
      const token = tokens[at];
      if (at >= claim.from && token?.kind === "word" && !isWord(token, "a", "an", "the")) {
        // The name between them is part of the value: "not HP 2".
        if (at - cue.end > 3) return false;
        continue;
      }
      if (
        !isWord(
          token,
          "a",
          "an",
          "the",
          "el",
          "la",
          "un",
          "una",
          "de",
          "really",
          "it",
          "that",
          "at",
          "says",
          "is",
          "like",
          "been",
        ) &&
        !isMark(token, '"', "'", "“")
      )
        return false;
    }
    return !(cue.phrase === "no" && isNameWord(tokens, cue));
  });
}

function isNameWord(tokens: readonly Token[], cue: Cue): boolean {
  return (
    isWord(
      tokens[cue.start - 1],
      "model",
      "serial",
      "part",
      "frame",
      "ser",
      "mod",
      "cat",
      "type",
      "catalog",
    ) || isMark(tokens[cue.end], ".", ":")
  );
}

/** "scratch that", "disregard all of that": what was said before does not count. */
function retract(
  tokens: readonly Token[],
  cues: readonly Cue[],
  clauses: readonly Clause[],
  claims: readonly Standing[],
): Standing[] {
  let kept = [...claims];
  for (const cue of cues) {
    if (cue.kind !== "retraction") continue;
    const clause = clauses.findIndex(({ start, end }) => cue.start >= start && cue.start < end);
    const here = clauses[clause];
    if (!here) continue;
    const rest =
      clauses
        .slice(clause)
        .filter(({ sentence }) => sentence === here.sentence)
        .at(-1)?.end ?? here.end;
    const following =
      kept.some((claim) => claim.start > cue.end && claim.start < rest) ||
      tokens.slice(cue.end, rest).some(({ kind }) => kind === "number");
    const all = /all|those|above|said/.test(cue.phrase) || isWord(tokens[cue.end], "all", "everything");
    if (all) kept = kept.filter((claim) => claim.start > cue.start);
    else if (!following) {
      const last = kept.filter((claim) => claim.end <= cue.start).at(-1);
      const from = clauses.find(
        ({ start, end }) => last && last.start >= start && last.start < end,
      )?.sentence;
      kept = kept.filter(
        (claim) =>
          claim.start > cue.start ||
          clauses.find(({ start, end }) => claim.start >= start && claim.start < end)?.sentence !== from,
      );
    }
  }
  return kept;
}

/** A figure without a name after words of correction is a new value for what was said before. */
function corrected(
  tokens: readonly Token[],
  cues: readonly Cue[],
  explained: readonly boolean[],
  owners: readonly Owner[],
  claims: readonly Standing[],
): Standing[] {
  const found: Standing[] = [];
  const used = new Set<number>();
  for (const cue of cues) {
    if (cue.kind !== "correction" && cue.kind !== "retraction" && cue.kind !== "negator") continue;
    const reach = cue.kind === "negator" ? 8 : 12;
    for (let at = cue.end; at < Math.min(tokens.length, cue.end + reach); at++) {
      const token = tokens[at];
      if (!token || (token.kind !== "number" && token.kind !== "code")) continue;
      if (explained[at] || used.has(at)) {
        if (cue.kind !== "negator") break;
        continue;
      }
      if (cue.kind === "negator" && at - cue.end < 2) continue;
      if (negatedHere(tokens, cues, at)) continue;
      if (owners[at] !== "label") continue;
      const before = claims
        .filter((claim) => claim.end <= cue.start && owners[claim.start] !== "asked")
        .reverse();
      const fitting = before.map((claim) => revalue(tokens, at, claim)).find((claim) => claim !== undefined);
      if (fitting) {
        used.add(at);
        found.push(fitting);
      }
      break;
    }
  }
  return found;
}

function negatedHere(tokens: readonly Token[], cues: readonly Cue[], at: number): boolean {
  return cues.some(
    (cue) =>
      cue.kind === "negator" &&
      cue.end <= at &&
      tokens
        .slice(cue.end, at)
        .every((token) => isWord(token, "a", "the", "an", "el", "la") || isMark(token, '"')),
  );
}

function revalue(tokens: readonly Token[], at: number, claim: Standing): Standing | undefined {
  const token = tokens[at];
  if (claim.rating === "modelNumbers" || claim.rating === "serialNumber") {
    if (token?.kind !== "code") return undefined;
    return {
      ...claim,
      value: [token.chunk.text] as unknown as RatingValue<RatingName>,
      start: at,
      end: at + 1,
      from: at,
      to: at + 1,
    };
  }
  const best = parseValue(claim.rating, tokens, at)
    .filter(({ half }) => !half)
    .sort((a, b) => b.fit - a.fit)[0];
  if (!best || best.fit < 0.8) return undefined;
  return { ...claim, value: best.value, start: at, end: best.end, from: at, to: best.end };
}

/** A bare answer to what was just asked. */
function answers(
  tokens: readonly Token[],
  explained: readonly boolean[],
  owners: readonly Owner[],
  expecting: readonly RatingName[],
  claims: readonly Standing[],
): Standing[] {
  const open = expecting.filter((rating) => !claims.some((claim) => claim.rating === rating));
  const found: Standing[] = [];
  for (let at = 0; at < tokens.length && open.length > 0; at++) {
    if (explained[at] || owners[at] === "asked" || owners[at] === "other") continue;
    const options = open.flatMap((rating) =>
      parseValue(rating, tokens, at).map((parsed) => ({ rating, parsed })),
    );
    const best = options
      .filter(({ parsed }) => parsed.fit >= 0.8)
      .sort((a, b) => b.parsed.fit - a.parsed.fit || b.parsed.end - a.parsed.end)[0];
    if (!best) continue;
    found.push({
      rating: best.rating,
      value: best.parsed.half ? undefined : best.parsed.value,
      start: at,
      end: best.parsed.end,
      from: at,
      to: best.parsed.end,
      score: 1,
    });
    open.splice(open.indexOf(best.rating), 1);
    at = best.parsed.end - 1;
  }
  return found;
}

const leading =
  /^(?:either|start|starts|starting|begins|ends|ending|empieza|termina|looks like either|no se si)/;

/** Claims next to words such as "something" or "either … or" are only half read. */
function halved(clauses: readonly Clause[], cues: readonly Cue[], claims: readonly Standing[]): Standing[] {
  const half = new Set<Standing>();
  const clauseAt = (at: number) => clauses.find(({ start, end }) => at >= start && at < end);
  for (const cue of cues) {
    if (cue.kind !== "partial" && !(cue.kind === "illegible" && /tell|not sure/.test(cue.phrase))) continue;
    const sentence = clauseAt(cue.start)?.sentence;
    const near = claims.filter((claim) => clauseAt(claim.start)?.sentence === sentence);
    if (cue.kind === "illegible") {
      continue;
    }
    if (leading.test(cue.phrase)) {
      const following = near.filter((claim) => claim.end > cue.start);
      const first = following[0];
      if (first) for (const claim of following) if (claim.rating === first.rating) half.add(claim);
    } else {
      const last = near.filter((claim) => claim.start < cue.start && cue.start - claim.end < 6).at(-1);
      if (last && /^(?:first|last|middle|second) (?:digit|letter)|digit|could/.test(cue.phrase) === false)
        half.add(last);
      else if (last && cue.start - last.end < 6) half.add(last);
    }
  }
  return claims.map((claim) => (half.has(claim) ? { ...claim, value: undefined } : claim));
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

/** One value from all that was said of one rating: the last word wins; the two values of a list join. */
function settle(
  rating: RatingName,
  claims: readonly Standing[],
  tokens: readonly Token[],
  cues: readonly Cue[],
): Standing | undefined {
  const named = claims.filter((claim) => !claim.bare);
  const strong =
    named.length > 0 && claims.some((claim) => claim.bare) && !corrects(cues, claims) ? named : [...claims];
  if (rating === "modelNumbers") return allNumbers(strong, cues);
  const last = strong.at(-1);
  if (!last || strong.length === 1) return last;
  const read = strong.filter(({ value }) => value !== undefined);
  if (last.value === undefined && read.length > 0 && !corrects(cues, strong)) return read.at(-1);
  if (!listRatings.has(rating)) {
    if (
      strong.every((claim) => isMark(tokens[claim.to], "?")) &&
      !strong.every((claim) => same(claim.value, last.value))
    )
      return { ...last, value: undefined };
    return last;
  }
  let joined = read[0];
  for (const claim of read.slice(1)) {
    if (!joined) break;
    const earlier = joined;
    const list = earlier.value as number[];
    const more = claim.value as number[];
    const turned = cues.some(
      (cue) =>
        (cue.kind === "correction" || cue.kind === "retraction") &&
        cue.start >= earlier.end &&
        cue.end <= claim.start,
    );
    if (turned) joined = claim;
    else if (more.every((value) => list.includes(value))) continue;
    else if (list.every((value) => more.includes(value))) joined = claim;
    else if (
      list.length === 1 &&
      more.length === 1 &&
      goTogether(rating, list[0] ?? 0, more[0] ?? 0) &&
      suits(rating, more[0] ?? 0) > 0
    )
      joined = { ...earlier, value: [...list, ...more] as RatingValue<RatingName>, to: claim.to };
    else joined = claim;
  }
  return joined ?? last;
}

function pairs(rating: RatingName, one: unknown, other: unknown): boolean {
  if (!Array.isArray(one) || !Array.isArray(other)) return false;
  return one.every((a) => other.every((b) => a === b || goTogether(rating, Number(a), Number(b))));
}

function corrects(cues: readonly Cue[], claims: readonly Standing[]): boolean {
  const first = claims[0]?.end ?? 0;
  const last = claims.at(-1)?.start ?? 0;
  return cues.some(
    (cue) =>
      (cue.kind === "correction" || cue.kind === "retraction" || cue.kind === "negator") &&
      cue.start >= first &&
      cue.end <= last,
  );
}

function allNumbers(claims: readonly Standing[], cues: readonly Cue[]): Standing | undefined {
  const [first] = claims;
  if (!first) return undefined;
  let kept: string[] = [];
  let before = first;
  for (const claim of claims) {
    if (claim.value === undefined) continue;
    const text = String(Array.isArray(claim.value) ? claim.value[0] : claim.value).toUpperCase();
    if (
      claim !== first &&
      cues.some(
        (cue) =>
          (cue.kind === "correction" || cue.kind === "retraction") &&
          cue.start >= before.end &&
          cue.end <= claim.start,
      )
    )
      kept.pop();
    if (!kept.includes(text)) kept = [...kept, text];
    before = claim;
  }
  return { ...first, value: kept.length > 0 ? (kept as RatingValue<RatingName>) : undefined, to: before.to };
}

/** Names without a value that somebody says cannot be read, or are not there. */
function illegible(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  cues: readonly Cue[],
  clauses: readonly Clause[],
  claims: readonly Standing[],
  owners: readonly Owner[],
): Name[] {
  const taken = new Set<number>();
  for (const claim of claims) for (let at = claim.from; at < claim.to; at++) taken.add(at);
  const free: Name[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const longest = [...(names[at] ?? [])].sort((a, b) => b.end - a.end)[0];
    if (!longest) continue;
    if (!taken.has(at) && owners[at] === "label" && namesRating(tokens, longest)) free.push(longest);
    at = longest.end - 1;
  }
  const sentenceAt = (at: number) =>
    clauses.find(({ start, end }) => at >= start && at < end)?.sentence ?? -1;
  const found = new Set<Name>();
  for (const cue of cues) {
    const bad = cue.kind === "illegible" || cue.kind === "partial";
    if (!bad && cue.kind !== "negator") continue;
    const sentence = sentenceAt(cue.start);
    const near = free.filter((name) => sentenceAt(name.start) === sentence);
    const after = near.filter(
      (name) =>
        name.start >= cue.end && !claims.some((claim) => claim.start >= cue.end && claim.start < name.start),
    );
    const before = near.filter(
      (name) =>
        name.end <= cue.start && !claims.some((claim) => claim.start >= name.end && claim.start < cue.start),
    );
    if (cue.kind === "negator") {
      for (const name of after)
        if (
          tokens
            .slice(cue.end, name.start)
            .every(
              (token) =>
                isWord(token, "the", "a", "an", "el", "la", "any", "that", "or", "nor") ||
                after.some(
                  (other) =>
                    other !== name &&
                    tokens.indexOf(token) >= other.start &&
                    tokens.indexOf(token) < other.end,
                ),
            )
        )
          found.add(name);
      continue;
    }
    const forward =
      /read|see|find|make|tell|know|sure|have|say|list|show|get|ve|veo|lee|leer|idea|clue|tiene|dice|encuentro|missing|falta|aparece|viene|hay/.test(
        cue.phrase,
      );
    const side = forward ? (after.length > 0 ? after : before) : before.length > 0 ? before : after;
    for (const name of side) found.add(name);
  }
  for (const name of free) if (blankAfter(tokens, name)) found.add(name);
  return [...found];
}

/** An everyday word names a rating here only with an article, in capitals, or before a colon. */
function namesRating(tokens: readonly Token[], name: Name): boolean {
  if (!name.weak) return true;
  const single = name.end === name.start + 1 && (tokens[name.start]?.norm.length ?? 0) === 1;
  const labelled = isMark(tokens[name.end], ":", "=") || (isMark(tokens[name.end], "?", "-", "_") && isMark(tokens[name.end + 1], "?", "-", "_"));
  if (single) return labelled && name.upper;
  return labelled || name.upper || isWord(tokens[name.start - 1], "the", "el", "la", "my", "lo");
}

/** "SF ???", "AMPS: --", "HP ____": a place left empty. */
function blankAfter(tokens: readonly Token[], name: Name): boolean {
  let at = name.end;
  if (isMark(tokens[at], ":", "=")) at += 1;
  let marks = 0;
  while (isMark(tokens[at], "?", "-", "_", "*", "…") || (isMark(tokens[at], ".") && marks > 0)) {
    at += 1;
    marks += 1;
  }
  if (tokens[at] && tokens[at]?.kind !== "break" && !isMark(tokens[at], ",", ";", "|", ")"))
    return marks >= 2;
  return marks >= 2 || (marks === 1 && !name.weak && isMark(tokens[at - 1], "?", "-") && name.upper);
}
