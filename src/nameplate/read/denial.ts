import type { Standing } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Cue } from "./findCues.ts";
import { isNumberSign } from "./numberSign.ts";
import { isMark, isWord, type Token } from "./token.ts";

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
  "tiene",
  "trae",
  "lleva",
  "hay",
  "have",
  "has",
  "any",
  "with",
];

/** "not 230", "isn't a 56J", "no 115 on this one". */
export function isDenied(context: Context, claim: Standing): boolean {
  const { tokens } = context;
  if (isMark(tokens[claim.to], "?") && isWord(tokens[claim.to + 1], "no", "nope", "nah")) return true;
  return cuesIn(context, claim.start - 10, claim.start, "negator").some((cue) => {
    if (cue.end > claim.start || claim.start - cue.end > 6) return false;
    // "don't forget the 1.25 SF"
    if (cue.phrase === "forget" && isWord(tokens[cue.start - 1], "dont", "not", "cant")) return false;
    // "no sé si es 1 o 1.5" doubts, it does not deny.
    if (cuesIn(context, cue.start, cue.start + 1, "partial").length > 0) return false;
    if (
      cue.phrase === "no" &&
      (isNumberSign(tokens, cue.start) || isDotted(tokens, cue) || takesBack(context, cue, claim))
    )
      return false;
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
  // "keyed shaft no threads"
  if (isWord(tokens[claim.start], "threads", "thread", "keyway", "key", "slot", "bolts", "rosca", "cuna"))
    return false;
  const before = stated.before(cue.start, 1)[0];
  if (!before || before.end < cue.start - 1 || tokens[cue.start - 1]?.kind === "mark") return false;
  return before.rating === claim.rating || before.rating === "breakerAmps";
}

/** "no. 12", "Nr. no: 12": short for number, whatever is numbered. */
function isDotted(tokens: readonly Token[], cue: Cue): boolean {
  return isMark(tokens[cue.start - 1], ".") || isMark(tokens[cue.end], ".", ":");
}

/** "115, oops no 230": after words of regret the "no" takes back what was said before. */
function regrets(context: Context, { phrase, start }: Cue): boolean {
  return phrase === "no" && cuesIn(context, start - 4, start, "correction").some(({ end }) => end === start);
}

/** A negation stands right before this figure. */
export function isNegated(context: Context, at: number): boolean {
  const { tokens } = context;
  return cuesIn(context, at - 7, at, "negator").some(
    (cue) =>
      cue.end <= at &&
      at - cue.end < 4 &&
      !regrets(context, cue) &&
      tokens.slice(cue.end, at).every((token) => isWord(token, ...articles) || isMark(token, '"')),
  );
}
