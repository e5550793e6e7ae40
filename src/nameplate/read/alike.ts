import type { Standing } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Cue } from "./findCues.ts";
import type { Name } from "./naming.ts";
import type { Ordered } from "./ordered.ts";
import { fields, joints } from "./spokenOf.ts";
import { isMark, isWord, type Token } from "./token.ts";

const alikeAfter = [
  "tampoco",
  "tambien",
  "too",
  "either",
  "neither",
  "likewise",
  "same",
  "ditto",
  "igual",
  "also",
];

/** "so is the rpm", "same with volts", "and the frame too", "la serie tampoco": said of it as of the one before. */
export function sharesFate({ tokens }: Context, name: Name): boolean {
  const next = isWord(tokens[name.end], ...fields, "is", "are", "as")
    ? tokens[name.end + 1]
    : tokens[name.end];
  const well = isWord(tokens[name.end], "as") && isWord(next, "well");
  if (well || isWord(next, ...alikeAfter)) return true;
  if (!closes(tokens[name.end]) && !isWord(tokens[name.end], ...fields, ...joints)) return false;
  let at = name.start - 1;
  while (
    isWord(
      tokens[at],
      ...joints.filter((word) => !alikeAfter.includes(word)),
      "for",
      "with",
      "goes",
      "con",
      "para",
    )
  )
    at -= 1;
  const opener = tokens[at];
  const links = isWord(tokens[at + 1], "or", "nor", "and", "o", "y", "ni");
  if (links && (isMark(opener, ".", "!") || opener?.kind === "break")) return true;
  if (isWord(tokens[at], "is", "are", "was", "were", "does", "did", "do", "can", "thing"))
    return isWord(tokens[at - 1], "so", "neither", "nor", "same", "as");
  return isWord(
    tokens[at],
    "same",
    "ditto",
    "likewise",
    "tampoco",
    "neither",
    "nor",
    "igual",
    "mismo",
    "along",
  );
}

const closes = (token: Token | undefined) =>
  token === undefined || token.kind === "break" || isMark(token, ".", ",", ";", "!", ")", "-");

const fateReach = 30;

/** A name that cannot be read stands not far before it, and no figure between. */
export function followsOne(
  { sentenceAt }: Context,
  name: Name,
  free: Ordered<Name>,
  found: ReadonlySet<Name>,
  claims: Ordered<Standing>,
): boolean {
  return free.within(name.start - fateReach, name.start).some((one) => {
    const apart = (sentenceAt[name.start] ?? 0) - (sentenceAt[one.start] ?? 0);
    return found.has(one) && apart <= 1 && claims.within(one.end, name.start).length === 0;
  });
}

/** "The numbers under it are mush. That's hp and amps.": the next sentence says which. */
export function namelyAfter(context: Context, cue: Cue, free: Ordered<Name>): Name[] {
  const { tokens, sentences, sentenceAt } = context;
  const next = sentences[(sentenceAt[cue.start] ?? 0) + 1];
  const [start, end] = [next?.[0]?.start, next?.at(-1)?.end];
  if (start === undefined || end === undefined) return [];
  if (!isWord(tokens[start], "thats", "those", "meaning", "namely", "specifically", "including", "son"))
    return [];
  if (cuesIn(context, start, end, "illegible", "correction").length > 0) return [];
  return [...free.within(start, end)];
}
