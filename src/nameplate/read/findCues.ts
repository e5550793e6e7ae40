import { isLabelWord } from "./naming.ts";
import { PhraseBook } from "./phrases.ts";
import { namesOwn, othersPronoun, ownPronoun } from "./possessors.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { turnCue } from "./turnCues.ts";
import { unreadCue } from "./unreadCues.ts";
import * as words from "./words/index.ts";

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
  | "dismissal"
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
  ["home", words.homeCues],
  ["thing", words.otherThings],
  ["person", words.otherPeople],
  ["earlier", words.earlierCues],
  ["wish", words.wishCues],
  ["measured", words.measuredCues],
  ["general", words.generalQuestionCues],
  ["alive", words.aliveCues],
  ["dead", words.deadCues],
  ["dismissal", words.dismissalCues],
  ["correction", words.correctionPhrases],
  ["retraction", words.retractionPhrases],
  ["negator", words.negators],
  ["partial", words.partialPhrases],
  ["illegible", words.illegiblePhrases],
];
for (const [kind, phrases] of listed)
  for (const phrase of phrases) {
    book.add(phrase, { kind, phrase });
    // "the current one's a 1.5"
    if (kind === "home" && / one$/.test(phrase) && !phrases.includes(`${phrase}s`))
      book.add(`${phrase}s`, { kind, phrase });
    // "the heater's label", "next door's"
    if (kind === "person" && !/s$/.test(phrase) && !phrases.includes(`${phrase}s`))
      book.add(`${phrase}s`, { kind, phrase: `${phrase}s` });
    if (kind === "thing" && !/s$/.test(phrase) && !phrases.includes(`${phrase}s`))
      book.add(`${phrase}s`, { kind, phrase });
  }

/** Every cue in the text; of one kind at one place the longest. */
export function findCues(tokens: readonly Token[]): Cue[] {
  const cues: Cue[] = [];
  const covered = new Map<CueKind, number>();
  const own = namesOwn(tokens);
  for (let at = 0; at < tokens.length; at++) {
    if (isWord(tokens[at], "one") && isWord(tokens[at + 1], "on") && isWord(tokens[at + 3], "motor"))
      cues.push({ kind: "home", start: at, end: at + 4, phrase: "one on it" });
    const mixed = mixedUpWith(tokens, at);
    if (mixed !== undefined)
      cues.push({ kind: "thing", start: mixed, end: mixed + 1, phrase: "mixed up with" });
    const elsewhere = paperElsewhere(tokens, at);
    if (elsewhere) cues.push({ kind: "thing", start: at, end: elsewhere, phrase: "one before" });
    const earlier = beforeThis(tokens, at);
    if (earlier) cues.push({ kind: "earlier", start: at, end: earlier, phrase: "one before" });
    // "I took the old 2 HP out"
    if (
      isWord(tokens[at], "old", "viejo", "vieja") &&
      tokens[at + 1]?.kind === "number" &&
      !isWord(tokens[at - 1], "year", "years")
    )
      cues.push({ kind: "earlier", start: at, end: at + 1, phrase: "old" });
    // "in place of my 1.5 hp"
    if (isWord(tokens[at], "my", "our", "mi") && tokens[at + 1]?.kind === "number")
      cues.push({ kind: "home", start: at, end: at + 1, phrase: "my" });
    const others = othersPronoun(tokens, at, own);
    if (others) {
      cues.push({ kind: "person", start: at, end: others, phrase: "theirs" });
      covered.set("home", others);
    }
    const ours = ownPronoun(tokens, at);
    if (ours) cues.push({ kind: "home", start: at, end: ours, phrase: "nosotros" });
    const turn = turnCue(tokens, at);
    if (turn) cues.push(turn);
    const unread = unreadCue(tokens, at);
    for (const match of book.matchesAt(tokens, at).reverse())
      for (const { kind, phrase } of match.found) {
        if ((covered.get(kind) ?? -1) > at) continue;
        // "I would rather have 1 hp" wishes; it corrects nothing.
        if (phrase === "rather" && isWord(tokens[at - 1], "would", "id", "wed", "hed")) continue;
        // "something you carry": no half of a figure.
        if (kind === "partial" && phrase === "something" && isWord(tokens[match.end], ...relating)) continue;
        if (kind === "person" && isAddressed(tokens, match.start, match.end)) continue;
        if (kind === "person" && !owns(tokens, match.end, phrase) && !isOwnedBy(tokens, match.start))
          continue;
        covered.set(kind, match.end);
        cues.push({ kind, start: match.start, end: match.end, phrase });
      }
    if (unread && (covered.get("illegible") ?? -1) <= at) {
      covered.set("illegible", unread.end);
      cues.push(unread);
    }
  }
  return cues;
}

const relating = ["you", "i", "we", "they", "that", "to", "like", "else", "similar", "close", "comparable"];

const ofMotor =
  /^(?:motor|motors|pump|bomba|side|top|back|bottom|end|front|unit|it|this|that|mine|dead|old|burnt|burned|bad|broken|can|body|bell|left|right|other|same|actual|current|real|thing|one|label|plate|sticker|tag|nameplate|pool|line|first|second|last|frame|cover|mi[oa]|nuestr[oa]|mism[oa]|ours)$/;

/** "don't mix it up with the spa, that's 2 HP": the pronoun stands for the other thing. */
function mixedUpWith(tokens: readonly Token[], at: number): number | undefined {
  const pronoun = isWord(tokens[at], "that", "thats", "its", "it", "which", "ese", "esa");
  if (!pronoun || !isMark(tokens[at - 1], ",", ".", "-")) return undefined;
  const before = tokens.slice(Math.max(0, at - 9), at - 1);
  const mixing = before.findLastIndex((token) =>
    isWord(token, "mix", "mixed", "confuse", "confused", "confundas", "confundir"),
  );
  const rest = before.slice(mixing + 1);
  const parted = rest.some((token) => isMark(token, ".", "!", "?", ";"));
  return mixing >= 0 && !parted && rest.some((token) => isWord(token, "with", "con")) ? at : undefined;
}

/** "the sticker on the timer", "the one on the panel door": papers of other things. */
function paperElsewhere(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "one", "sticker", "label", "plate", "tag", "etiqueta", "placa")) return undefined;
  if (!isWord(tokens[at + 1], "on", "inside", "from", "del", "de", "en")) return undefined;
  const article = isWord(tokens[at + 2], "the", "my", "our", "la", "el", "mi");
  if (!article && !isWord(tokens[at + 1], "del")) return undefined;
  const noun = tokens[at + (article ? 3 : 2)];
  if (isLabelWord(noun?.norm ?? "")) return undefined;
  return noun?.kind === "word" && !ofMotor.test(noun.norm) ? at + (article ? 4 : 3) : undefined;
}

/** "the motor before this one", "the unit that came before it". */
function beforeThis(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "motor", "pump", "unit", "one", "label", "bomba")) return undefined;
  for (let next = at + 1; next < at + 5; next++) {
    if (
      isWord(tokens[next], "before", "anterior", "antes") &&
      isWord(tokens[next + 1], "this", "that", "it", "mine", "de", "a")
    )
      return isWord(tokens[next + 2], "one") ? next + 3 : next + 2;
    if (!isWord(tokens[next], "that", "which", "was", "there", "we", "had", "came", "que", "habia"))
      return undefined;
  }
  return undefined;
}

/** "compadre el motor dice …": the person is spoken to. */
function isAddressed(tokens: readonly Token[], start: number, end: number): boolean {
  const before = tokens[start - 1];
  const opens =
    before === undefined || before.kind !== "word" || isWord(before, "hola", "oiga", "oye", "hey", "buenas");
  return opens && isWord(tokens[end], "el", "la", "los", "mi", "fijese", "aqui");
}

const having = new Set(words.havingWords);

/** "el de la vecina", "the one of my neighbor", "belongs to the tenant". */
function isOwnedBy(tokens: readonly Token[], start: number): boolean {
  const article = isWord(tokens[start - 1], "my", "the", "la", "el", "mi", "our", "a", "un");
  const before = start - (article ? 2 : 1);
  // "got it off a friend": where it came from.
  const came = tokens.slice(Math.max(0, before - 3), before);
  if (isWord(tokens[before], "of", "off") && came.some((token) => isWord(token, "got", "bought", "it")))
    return false;
  return isWord(tokens[before], "of", "off", "de") || belongs(tokens, before);
}

const belongs = (tokens: readonly Token[], at: number) =>
  isWord(tokens[at], "to", "a") && isWord(tokens[at - 1], "belongs", "belong", "pertenece", "pertenecen");

function owns(tokens: readonly Token[], after: number, phrase: string): boolean {
  if (phrase.endsWith("s") && !phrase.endsWith("boss")) return true;
  for (let at = after; at < after + 3; at++) {
    const token = tokens[at];
    if (token?.kind === "word" && having.has(token.norm)) return true;
  }
  return false;
}
