import {
  aliveCues,
  deadCues,
  earlierCues,
  generalQuestionCues,
  havingWords,
  homeCues,
  measuredCues,
  otherPeople,
  otherThings,
  wishCues,
} from "./cues.ts";
import {
  correctionPhrases,
  illegiblePhrases,
  negators,
  partialPhrases,
  retractionPhrases,
} from "./lexicon.ts";
import { PhraseBook } from "./phrases.ts";
import { isMark, isWord, type Token } from "./token.ts";

export type CueKind =
  | "home"
  | "thing"
  | "person"
  | "earlier"
  | "wish"
  | "measured"
  | "general"
  | "alive"
  | "dead"
  | "correction"
  | "retraction"
  | "negator"
  | "partial"
  | "illegible";

export interface Cue {
  readonly kind: CueKind;
  readonly start: number;
  readonly end: number;
  readonly phrase: string;
}

const book = new PhraseBook<{ kind: CueKind; phrase: string }>();

const listed: readonly (readonly [CueKind, readonly string[]])[] = [
  ["home", homeCues],
  ["thing", otherThings],
  ["person", otherPeople],
  ["earlier", earlierCues],
  ["wish", wishCues],
  ["measured", measuredCues],
  ["general", generalQuestionCues],
  ["alive", aliveCues],
  ["dead", deadCues],
  ["correction", correctionPhrases],
  ["retraction", retractionPhrases],
  ["negator", negators],
  ["partial", partialPhrases],
  ["illegible", illegiblePhrases],
];
for (const [kind, phrases] of listed)
  for (const phrase of phrases) {
    book.add(phrase, { kind, phrase });
    // "the heater's label"
    if (kind === "thing" && !/s$/.test(phrase) && !phrases.includes(`${phrase}s`))
      book.add(`${phrase}s`, { kind, phrase });
  }

/** Every cue in the text; of one kind at one place the longest. */
export function findCues(tokens: readonly Token[]): Cue[] {
  const cues: Cue[] = [];
  const covered = new Map<CueKind, number>();
  for (let at = 0; at < tokens.length; at++) {
    // "in place of my 1.5 hp"
    if (isWord(tokens[at], "my", "our", "mi") && tokens[at + 1]?.kind === "number")
      cues.push({ kind: "home", start: at, end: at + 1, phrase: "my" });
    // "*1.0" after "hp 1.5"
    if (
      at > 0 &&
      isMark(tokens[at], "*") &&
      !tokens[at]?.glued &&
      tokens[at + 1]?.kind === "number" &&
      tokens[at + 1]?.glued
    )
      cues.push({ kind: "correction", start: at, end: at + 1, phrase: "*" });
    for (const match of book.matchesAt(tokens, at).reverse())
      for (const { kind, phrase } of match.found) {
        if ((covered.get(kind) ?? -1) > at) continue;
        if (kind === "person" && !owns(tokens, match.end, phrase)) continue;
        covered.set(kind, match.end);
        cues.push({ kind, start: match.start, end: match.end, phrase });
      }
  }
  return cues;
}

const having = new Set(havingWords);

function owns(tokens: readonly Token[], after: number, phrase: string): boolean {
  if (phrase.endsWith("s") && !phrase.endsWith("boss")) return true;
  for (let at = after; at < after + 3; at++) {
    const token = tokens[at];
    if (token?.kind === "word" && having.has(token.norm)) return true;
  }
  return false;
}
