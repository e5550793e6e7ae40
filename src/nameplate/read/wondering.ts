import type { RatingName } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import type { Context } from "./context.ts";
import { isMark, isWord } from "./token.ts";

const finding = [
  "know",
  "see",
  "check",
  "tell",
  "ask",
  "asking",
  "wondering",
  "verify",
  "out",
  "saber",
  "ver",
  "checar",
  "revisar",
];
const copulas = ["is", "its", "was", "has", "are", "be", "es", "sea", "tiene", "trae", "lleva", "fuera"];

/** So many tokens before the value "if" may stand: "to see if the end of the shaft is keyed". */
const reach = 9;

/** What people go and look at before they can tell. */
const looked: ReadonlySet<RatingName> = new Set<RatingName>(["shaft", "flange", "speedKind"]);

/** "I need to know if the shaft is keyed", "how do I check whether it's round": what is to be found out is not stated. */
export function isWondered({ tokens, sentenceAt }: Context, claim: Standing): boolean {
  if (!looked.has(claim.rating)) return false;
  let at = claim.start - 1;
  while (isWord(tokens[at], "a", "an", "the", "un", "una", "de")) at -= 1;
  if (!isWord(tokens[at], ...copulas)) return false;
  for (; at > claim.start - reach; at--) {
    const token = tokens[at];
    if (sentenceAt[at] !== sentenceAt[claim.start] || token?.kind === "number" || isMark(token, ","))
      return false;
    if (isWord(token, "if", "whether", "si")) return isWord(tokens[at - 1], ...finding);
  }
  return false;
}
