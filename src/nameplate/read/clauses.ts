import {
  aliveCues,
  deadCues,
  earlierCues,
  entityKeys,
  generalQuestionCues,
  havingWords,
  homeCues,
  measuredCues,
  otherPeople,
  otherThings,
  questionOpeners,
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

/** A stretch of text between commas, sentence ends, line ends and turning words. */
export interface Clause {
  readonly start: number;
  readonly end: number;
  readonly sentence: number;
  /** What ends it: a mark, a line end, a turning word, or nothing. */
  readonly closing: string;
  /** Line ends after it: one, or two for an empty line. */
  readonly lines: 0 | 1 | 2;
  /** It begins as a question does. */
  readonly opener: boolean;
}

const turning = new Set([
  "but",
  "however",
  "though",
  "although",
  "while",
  "whereas",
  "pero",
  "aunque",
  "because",
  "cause",
  "cuz",
  "mientras",
  "except",
  "plus",
  "yet",
  "sino",
]);
const starters = new Set([
  "so",
  "ok",
  "okay",
  "and",
  "but",
  "hey",
  "hi",
  "also",
  "just",
  "quick",
  "question",
  "um",
  "well",
  "y",
  "oh",
  "or",
  "then",
  "now",
  "hola",
  "oye",
  "pero",
]);
const openers = new Set(questionOpeners);

export function clausesOf(tokens: readonly Token[], cues: readonly Cue[]): Clause[] {
  const subjects = new Set(cues.filter(({ kind }) => subjectKinds.has(kind)).map(({ start }) => start));
  const clauses: Clause[] = [];
  let start = 0;
  let sentence = 0;
  for (let at = 0; at <= tokens.length; at++) {
    const end =
      at === tokens.length ? { closing: "", sentence: true, words: true } : boundary(tokens, at, subjects);
    if (!end || (end.words && at === start && at < tokens.length)) continue;
    if (at > start)
      clauses.push({
        start,
        end: at,
        sentence,
        closing: end.closing,
        lines: 0,
        opener: opens(tokens, start, at),
      });
    const token = tokens[at];
    const last = clauses.at(-1);
    if (token?.kind === "break" && last)
      clauses[clauses.length - 1] = { ...last, lines: token.blank ? 2 : 1 };
    start = end.words ? at : at + 1;
    if (end.sentence) sentence += 1;
  }
  return clauses;
}

const subjectKinds: ReadonlySet<CueKind> = new Set<CueKind>(["home", "thing", "person", "earlier", "wish"]);

interface Boundary {
  readonly closing: string;
  /** The sentence ends too. */
  readonly sentence: boolean;
  /** The boundary is a word, which belongs to the clause it opens. */
  readonly words: boolean;
}

function boundary(tokens: readonly Token[], at: number, subjects: ReadonlySet<number>): Boundary | undefined {
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (!token) return undefined;
  const mark = (sentence: boolean) => ({ closing: token.norm, sentence, words: false });
  if (token.kind === "break") return mark(true);
  if (isMark(token, "!", "?", ";", "…")) return mark(true);
  if (isMark(token, ".")) {
    if (next && next.kind !== "break" && next.glued && !isMark(next, ".")) return undefined;
    const dots = isMark(next, ".") || isMark(tokens[at - 1], ".");
    if (dots) return mark(false);
    const figure = next?.kind === "number" || next?.kind === "code";
    return mark(!(shortWord(tokens[at - 1]) && figure));
  }
  if (isMark(token, ",", "(", ")")) return mark(false);
  if (isMark(token, "-")) {
    const spaced = !token.glued && !next?.glued;
    return spaced && !(tokens[at - 1]?.kind === "number" && next?.kind === "number")
      ? mark(false)
      : undefined;
  }
  if (token.kind !== "word" || token.glued) return undefined;
  const opening = { closing: token.norm, sentence: false, words: true };
  if (turning.has(token.norm)) return opening;
  const joins = token.norm === "and" || token.norm === "y" || token.norm === "so";
  const article = isWord(next, "the", "my", "a", "el", "la", "mi", "on");
  return joins && (subjects.has(at + 1) || (article && subjects.has(at + 2))) ? opening : undefined;
}

/** After a short abbreviation a dot ends no sentence: "no.", "ser.", "amp.". */
function shortWord(token: Token | undefined): boolean {
  return (
    token?.kind === "word" &&
    /^(?:no|ser|mod|cat|ins|max|serv|amb|cl|fr|ph|approx|num|pt|vol|hp|sf)$/.test(token.norm)
  );
}

function opens(tokens: readonly Token[], start: number, end: number): boolean {
  let at = start;
  while (
    at < end &&
    (tokens[at]?.kind === "mark" || (tokens[at]?.kind === "word" && starters.has(tokens[at]?.norm ?? "")))
  )
    at += 1;
  const token = tokens[at];
  if (tokens.slice(start, at).some((mark) => isMark(mark, "¿"))) return true;
  return token?.kind === "word" && openers.has(token.norm);
}

export interface Entity {
  readonly start: number;
  readonly key: string;
}

const keys = new Set(entityKeys);

/** Motors told apart by number or letter: "pump 1", "motor B". */
export function findEntities(tokens: readonly Token[]): Entity[] {
  const entities: Entity[] = [];
  for (let at = 0; at + 1 < tokens.length; at++) {
    const [noun, key, next] = [tokens[at], tokens[at + 1], tokens[at + 2]];
    const ordinal =
      isWord(noun, "first", "second", "third", "1st", "2nd", "3rd") &&
      isWord(key, "pump", "motor", "unit", "bomba");
    if (ordinal && noun)
      entities.push({ start: at, key: noun.norm.slice(0, 3).replace("1st", "fir").replace("2nd", "sec") });
    if (
      noun?.kind === "word" &&
      isWord(noun, "pump", "motor", "unit", "bomba") &&
      key &&
      (key.kind === "word" || key.kind === "number")
    ) {
      const plain = key.kind === "number" ? key.form !== "fraction" : key.norm !== "a" || key.upper;
      const figure =
        key.kind === "number" && next?.kind === "word" && /^(?:hp|horse|thp|phase|speed)$/.test(next.norm);
      if (plain && keys.has(key.norm) && !figure && !isMark(next, "/", "-"))
        entities.push({ start: at, key: key.norm });
    }
  }
  return entities;
}
