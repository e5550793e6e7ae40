import type { Standing } from "./candidate.ts";
import { type Context, cuesOf } from "./context.ts";
import type { Name } from "./naming.ts";
import type { Owner } from "./owner.ts";
import { isWord, type Token } from "./token.ts";

/** "scratch that", "disregard all of that": what was said before does not count. */
export function retract(context: Context, owners: readonly Owner[], claims: readonly Standing[]): Standing[] {
  const { tokens, sentenceAt } = context;
  let kept = withdrawn(context, claims);
  for (const cue of cuesOf(context, "retraction").slice(0, 20)) {
    let rest = cue.end;
    while (rest < tokens.length && sentenceAt[rest] === sentenceAt[cue.start]) rest += 1;
    const all = /all|those|above|said/.test(cue.phrase) || isWord(tokens[cue.end], "all", "everything");
    // "forget what I said about 2 hp" takes back no more than that.
    const about = tokens.slice(cue.end, cue.end + 3).findIndex((token) => isWord(token, "about", "sobre"));
    const named = about < 0 ? [] : tokens.slice(cue.end + about, cue.end + about + 4);
    if (ofOneRating(context, cue.end) || named.some(({ kind }) => kind === "number" || kind === "code"))
      continue;
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

const discarding = [
  ...["scratch", "strike", "ignore", "disregard", "forget", "delete", "erase", "nix", "unsay"],
  ...["olvide", "olvida", "olviden", "ignora", "ignoren", "borre", "borra", "tache", "tacha"],
];
const pointing = [
  ...[
    "the",
    "that",
    "those",
    "my",
    "what",
    "i",
    "said",
    "told",
    "you",
    "gave",
    "put",
    "wrote",
    "sent",
    "about",
    "for",
    "on",
  ],
  ...[
    "el",
    "la",
    "los",
    "las",
    "lo",
    "de",
    "del",
    "ese",
    "esa",
    "esos",
    "mi",
    "mis",
    "que",
    "dije",
    "le",
    "sobre",
  ],
];
const longestPointer = 7;
const mostTakenBack = 20;

/** "scratch the 3450", "ignore what I said about the hp", "I take back the 1.25 SF": one figure, or one rating's. */
function withdrawn(context: Context, claims: readonly Standing[]): Standing[] {
  const { tokens } = context;
  let kept = [...claims];
  let seen = 0;
  for (let at = 0; at < tokens.length && seen < mostTakenBack; at++) {
    const object = takesBackAt(tokens, at);
    if (object === undefined) continue;
    seen += 1;
    const end = pastPointer(tokens, object);
    const named = nameAt(context, end);
    const figure = kept.find(
      (claim) =>
        claim.start === end ||
        (claim.from === end && named?.rating === claim.rating && goesWith(tokens, claim)),
    );
    if (figure)
      kept = kept.filter(
        (claim) =>
          claim !== figure &&
          !(claim.start < end && claim.rating === figure.rating && includes(claim, figure)),
      );
    else if (named && end > object)
      kept = kept.filter((claim) => claim.start > end || claim.rating !== named.rating);
  }
  return kept;
}

/** Where the object of a verb that takes something back begins. */
function takesBackAt(tokens: readonly Token[], at: number): number | undefined {
  if (isWord(tokens[at - 1], "dont", "not", "no", "never", "a", "the", "cant", "didnt", "un", "lets"))
    return undefined;
  const object = isWord(tokens[at], "take", "taking") && isWord(tokens[at + 1], "back") ? at + 2 : at + 1;
  const discards = object === at + 2 || isWord(tokens[at], ...discarding);
  return discards && isWord(tokens[object], ...pointing) ? object : undefined;
}

function pastPointer(tokens: readonly Token[], from: number): number {
  let at = from;
  while (at < from + longestPointer && isWord(tokens[at], ...pointing)) at += 1;
  return at;
}

const nameAt = ({ names }: Context, at: number): Name | undefined =>
  names[at]?.toSorted((a, b) => b.end - a.end)[0];

/** In "ignore the hp, it's 2" the 2 is the new figure; in "ignore hp 2" the one taken back. */
const goesWith = (tokens: readonly Token[], { from, start }: Standing) =>
  tokens.slice(from, start).every((token) => token.kind === "word" && !isWord(token, "is", "its", "es"));

/** "forget what I said about the hp" takes back the hp alone. */
const ofOneRating = (context: Context, at: number) =>
  isWord(context.tokens[at], "about", "for", "on", "sobre") &&
  nameAt(context, pastPointer(context.tokens, at)) !== undefined;

/** The figure withdrawn is among those stated: one of a list, or the same. */
function includes(claim: Standing, figure: Standing): boolean {
  const stated = [claim.value].flat() as unknown[];
  return ([figure.value].flat() as unknown[]).every((value) => stated.includes(value));
}
