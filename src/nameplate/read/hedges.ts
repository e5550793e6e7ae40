import type { Standing } from "./candidate.ts";
import type { Context } from "./context.ts";
import type { Cue } from "./findCues.ts";
import { parseSpecial } from "./special.ts";
import { isMark, isWord } from "./token.ts";
import { parseValue } from "./values.ts";

const doubting = [
  "or",
  "o",
  "u",
  "maybe",
  "might",
  "may",
  "could",
  "possibly",
  "perhaps",
  "quizas",
  "puede",
  "podria",
  "talvez",
];
const fillers = [
  "but",
  "pero",
  "though",
  "be",
  "a",
  "an",
  "it",
  "its",
  "its",
  "is",
  "ser",
  "un",
  "una",
  "the",
  "either",
  "then",
  "even",
  "else",
];

/**
 * "B or F", "8.6, might be 8.0", "9.8. or 9.6": the writer offers another value of the same kind, so that neither is
 * read. The two values of a list have their own "or" (see `parseList`).
 */
export function offersAnother({ tokens, names }: Context, claim: Standing): boolean {
  if (claim.value === undefined || claim.rating === "modelNumbers" || claim.rating === "pumpModel")
    return false;
  let at = claim.to;
  let doubted = false;
  for (; at < claim.to + 7; at++) {
    if (isWord(tokens[at], ...doubting)) doubted = true;
    else if (!isMark(tokens[at], ",", ".", "?", "-", "(", "/") && !isWord(tokens[at], ...fillers)) break;
  }
  if (!doubted || at >= tokens.length) return false;
  // "56 and then J or Y"
  const letter = tokens[at];
  if (claim.rating === "frame" && letter?.kind === "word" && letter.upper && /^[yjcz]$/.test(letter.norm))
    return true;
  const other = [
    ...parseValue(claim.rating, tokens, at),
    ...parseSpecial(claim.rating, tokens, at, undefined, 0),
  ];
  return other.some(
    ({ end, value, fit }) =>
      fit > 0.5 &&
      value !== undefined &&
      !names[end]?.some(({ rating, weak }) => rating !== claim.rating && !weak) &&
      JSON.stringify(value) !== JSON.stringify(claim.value) &&
      (isWord(tokens[at - 1], "a", "an") || !belongTogether(claim, value)),
  );
}

/** "115 or 230": two voltages or speeds of one label. */
function belongTogether(claim: Standing, other: unknown): boolean {
  const [first, second] = [[claim.value].flat()[0], [other].flat()[0]].map(Number);
  if (!Array.isArray(claim.value) || !first || !second) return false;
  return (
    Math.max(first, second) / Math.min(first, second) >= 1.3 ||
    claim.rating === "volts" ||
    claim.rating === "hz"
  );
}

/** "8.6 or maybe 8.8 on the amps": the other value stands before the one that is named. */
export function offeredBefore({ tokens }: Context, claim: Standing): boolean {
  if (claim.value === undefined || claim.rating === "modelNumbers" || claim.rating === "pumpModel")
    return false;
  let at = claim.start - 1;
  let doubted = false;
  // "a 3 or an 8": single figures are told apart, not two values of a list.
  const single = isWord(tokens[at], "an", "a", "un");
  for (; at > claim.start - 5; at--) {
    if (isWord(tokens[at], "or", "o", "u")) doubted = true;
    else if (!isWord(tokens[at], "maybe", "a", "an", "un", "quizas", "possibly", "perhaps", "even")) break;
  }
  const other = tokens[at];
  if (!doubted || other?.kind !== "number") return false;
  return parseValue(claim.rating, tokens, at).some(
    ({ end, value, fit }) =>
      end === at + 1 && fit > 0.5 && value !== undefined && (single || !belongTogether(claim, value)),
  );
}

/** "something .6", "2-something-0": a part of the figure before or after is missing. */
export function lacksPart({ tokens }: Context, claim: Standing): boolean {
  const before = isMark(tokens[claim.start - 1], "-") ? claim.start - 2 : claim.start - 1;
  const after = isMark(tokens[claim.end], "-") ? claim.end + 1 : claim.end;
  return (
    isWord(tokens[before], ...unsaid) ||
    // "1 punto y ya no se ve"
    (isWord(tokens[after], "point", "punto") && tokens[after + 1]?.kind !== "number") ||
    (isWord(tokens[after], ...unsaid) && tokens[after]?.glued === true)
  );
}

const unsaid = ["something", "somethin", "blank", "blah", "algo"];

/** "not sure which of these matter", "don't know what you need": nothing is said of the label. */
export function ofWhatMatters({ tokens }: Context, cue: Cue): boolean {
  const asks = isWord(tokens[cue.end], "what", "which", "how", "if", "of") || /which$|what$/.test(cue.phrase);
  const verbs = ["matter", "matters", "need", "want", "mean", "means", "important", "helps", "useful"];
  return asks && tokens.slice(cue.end, cue.end + 6).some((token) => isWord(token, ...verbs));
}
