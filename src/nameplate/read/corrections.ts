import type { RatingValue } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cuesIn, cuesOf } from "./context.ts";
import type { Cue } from "./findCues.ts";
import type { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

const articles = [
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
  "even",
];

/** "not 230", "isn't a 56J", "no 115 on this one". */
export function isDenied(context: Context, claim: Standing): boolean {
  const { tokens } = context;
  if (isMark(tokens[claim.to], "?") && isWord(tokens[claim.to + 1], "no", "nope", "nah")) return true;
  return cuesIn(context, claim.start - 10, claim.start, "negator").some((cue) => {
    if (cue.end > claim.start || claim.start - cue.end > 6) return false;
    if (cue.phrase === "no" && (isNumberSign(tokens, cue) || takesBack(context, cue, claim))) return false;
    for (let at = cue.end; at < claim.start; at++) {
      const token = tokens[at];
      // The rating's own name may stand between: "not HP 2".
      const named = at >= claim.from && token?.kind === "word" && at - cue.end <= 3;
      if (!named && !isWord(token, ...articles) && !isMark(token, '"', "'", "“")) return false;
    }
    return true;
  });
}

/** "15 amp no 20 amp", "1.65 sf? no 1.1 sf": without a comma the "no" takes back what stands before it. */
function takesBack(context: Context, cue: Cue, claim: Standing): boolean {
  const { tokens, stated } = context;
  if (isMark(tokens[cue.start - 1], "?")) return true;
  const before = stated.before(cue.start, 1)[0];
  if (!before || before.end < cue.start - 1 || tokens[cue.start - 1]?.kind === "mark") return false;
  return before.rating === claim.rating || before.rating === "breakerAmps";
}

/** "model no 7", "ser. no. 12": short for number. */
function isNumberSign(tokens: readonly Token[], cue: Cue): boolean {
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
    ) ||
    isMark(tokens[cue.start - 1], ".") ||
    isMark(tokens[cue.end], ".", ":")
  );
}

/** "scratch that", "disregard all of that": what was said before does not count. */
export function retract(context: Context, owners: readonly Owner[], claims: readonly Standing[]): Standing[] {
  const { tokens, sentenceAt } = context;
  let kept = [...claims];
  for (const cue of cuesOf(context, "retraction").slice(0, 20)) {
    let rest = cue.end;
    while (rest < tokens.length && sentenceAt[rest] === sentenceAt[cue.start]) rest += 1;
    const all = /all|those|above|said/.test(cue.phrase) || isWord(tokens[cue.end], "all", "everything");
    let figure = cue.start - 1;
    while (figure > 0 && tokens[figure]?.kind !== "number" && tokens[figure]?.kind !== "code") figure -= 1;
    // "(I said 1.5 earlier, ignore that)" takes back what did not count anyway.
    if (!all && owners[figure] !== "label") continue;
    if (all) kept = kept.filter((claim) => claim.start > cue.start);
    else if (!tokens.slice(cue.end, rest).some(({ kind }) => kind === "number" || kind === "code")) {
      const last = kept.filter((claim) => claim.end <= cue.start).at(-1);
      const sentence = last && sentenceAt[last.start];
      kept = kept.filter((claim) => claim.start > cue.start || sentenceAt[claim.start] !== sentence);
    }
  }
  return kept;
}

/** A figure without a name after words of correction is a new value for what was said before. */
export function corrected(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  const { tokens } = context;
  const found: Standing[] = [];
  const used = new Set<number>();
  for (const cue of cuesOf(context, "correction", "retraction", "negator")) {
    const denial = cue.kind === "negator";
    const figure = ({ kind }: Token) => kind === "number" || kind === "code";
    if (denial && !tokens.slice(cue.end, cue.end + 4).some(figure)) continue;
    const ahead =
      denial && !explained[cue.start - 1] && tokens[cue.start - 1]?.kind === "number"
        ? cue.start - 1
        : undefined;
    if (ahead !== undefined && owners[ahead] === "label") {
      const volts = instead(tokens, cue.end, ahead);
      if (volts) found.push(volts);
    }
    for (let at = cue.end; at < Math.min(tokens.length, cue.end + (denial ? 9 : 12)); at++) {
      const token = tokens[at];
      if (!token || !figure(token)) continue;
      if (explained[at] || used.has(at)) {
        if (denial) continue;
        break;
      }
      // The rest of a fraction goes with its beginning: "not 1/2".
      const rest = isMark(tokens[at - 1], "/") && tokens[at - 2]?.kind === "number";
      if (rest || isNegated(context, at) || owners[at] !== "label") continue;
      const before = stated.before(at, 12).filter((claim) => owners[claim.start] !== "asked");
      const fitting = firstFit(tokens, at, before) ?? (denial ? instead(tokens, cue.end, at) : undefined);
      if (fitting) {
        used.add(at);
        found.push(fitting);
      }
      break;
    }
  }
  return found;
}

/** "My clamp says 7.3 amps but the plate says 9.6": the second figure is of the same kind as the first. */
export function contrasted(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  const { tokens, clauses, clauseAt, sentenceAt } = context;
  const found: Standing[] = [];
  for (const claim of stated.all) {
    if (owners[claim.start] === "label" || owners[claim.start] === "asked") continue;
    const index = (clauseAt[claim.start] ?? 0) + 1;
    const next = clauses[index];
    if (!next) continue;
    const ofLabel = cuesIn(context, next.start, next.end, "home").length > 0;
    if (
      next.sentence !== sentenceAt[claim.start] &&
      !(ofLabel && next.sentence === (sentenceAt[claim.start] ?? 0) + 1)
    )
      continue;
    for (let at = next.start; at < next.end; at++) {
      if (
        tokens[at]?.kind !== "number" ||
        explained[at] ||
        owners[at] !== "label" ||
        !isWord(
          tokens[at - 1],
          "says",
          "is",
          "reads",
          "claims",
          "gives",
          "lists",
          "stamped",
          "shows",
          "dice",
          "es",
          "said",
          "de",
          "label",
          "plate",
          "nameplate",
          "placa",
          "tag",
          "sticker",
        )
      )
        continue;
      const value = revalue(tokens, at, claim);
      if (value) found.push(value);
      break;
    }
  }
  return found;
}

/** "it's not 230, it's 115": the figure denied tells what the other one is. */
function instead(tokens: readonly Token[], from: number, at: number): Standing | undefined {
  const denied = tokens.slice(from, at < from ? from + 3 : at).find(({ kind }) => kind === "number");
  if (denied?.kind !== "number" || ![115, 208, 230, 240].includes(denied.value)) return undefined;
  const volts = parseValue("volts", tokens, at).at(-1);
  if (!volts || volts.fit < 2) return undefined;
  return {
    rating: "volts",
    value: volts.value,
    start: at,
    end: volts.end,
    from: at,
    to: volts.end,
    score: 1,
  };
}

function firstFit(tokens: readonly Token[], at: number, claims: readonly Standing[]): Standing | undefined {
  for (const claim of claims) {
    const value = revalue(tokens, at, claim);
    if (value) return value;
  }
  return undefined;
}

/** "115, oops no 230": after words of regret the "no" takes back what was said before. */
function regrets(context: Context, { phrase, start }: Cue): boolean {
  return phrase === "no" && cuesIn(context, start - 4, start, "correction").some(({ end }) => end === start);
}

function isNegated(context: Context, at: number): boolean {
  const { tokens } = context;
  return cuesIn(context, at - 7, at, "negator").some(
    (cue) =>
      cue.end <= at &&
      at - cue.end < 4 &&
      !regrets(context, cue) &&
      tokens.slice(cue.end, at).every((token) => isWord(token, ...articles) || isMark(token, '"')),
  );
}

/** The figure here as a new value of the same rating, when it suits. */
function revalue(tokens: readonly Token[], at: number, claim: Standing): Standing | undefined {
  const token = tokens[at];
  if (claim.rating === "modelNumbers" || claim.rating === "serialNumber") {
    if (token?.kind !== "code") return undefined;
    return {
      ...claim,
      value: token.chunk.text as RatingValue<"serialNumber">,
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
  return { ...claim, value: best.value, start: at, end: best.end, from: at, to: best.end, bare: false };
}
