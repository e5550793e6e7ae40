import type { Entity } from "./entities.ts";
import type { Cue, CueKind } from "./findCues.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { questionOpeners } from "./words/questions.ts";

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

export function clausesOf(
  tokens: readonly Token[],
  cues: readonly Cue[],
  entities: readonly Entity[],
): Clause[] {
  const told = new Set(entities.map(({ start }) => start));
  const subjects = new Set(cues.filter(({ kind }) => subjectKinds.has(kind)).map(({ start }) => start));
  const clauses: Clause[] = [];
  let start = 0;
  let sentence = 0;
  for (let at = 0; at <= tokens.length; at++) {
    const end =
      at === tokens.length
        ? { closing: "", sentence: true, words: true }
        : (boundary(tokens, at, subjects) ?? (told.has(at) ? tellingApart : undefined));
    if (!end || (end.words && at === start && at < tokens.length)) continue;
    if (at > start)
      clauses.push({
        start,
        end: at,
        sentence,
        closing: end.closing,
        lines: 0,
        opener: (clauses.at(-1)?.closing !== ")" || isListNumber(tokens, start)) && opens(tokens, start, at),
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

/** "1) is 1.5 HP ok?" */
const isListNumber = (tokens: readonly Token[], start: number) =>
  tokens[start - 2]?.kind === "number" && !isMark(tokens[start - 3], "(") && isMark(tokens[start - 1], ")");

const subjectKinds: ReadonlySet<CueKind> = new Set<CueKind>(["home", "thing", "person", "earlier", "wish"]);

interface Boundary {
  readonly closing: string;
  /** The sentence ends too. */
  readonly sentence: boolean;
  /** The boundary is a word, which belongs to the clause it opens. */
  readonly words: boolean;
}

const tellingApart: Boundary = { closing: "", sentence: false, words: true };

const markEnd = ({ norm }: Token, sentence: boolean): Boundary => ({ closing: norm, sentence, words: false });

function boundary(tokens: readonly Token[], at: number, subjects: ReadonlySet<number>): Boundary | undefined {
  const [token, next] = [tokens[at], tokens[at + 1]];
  if (!token) return undefined;
  if (token.kind === "break") return markEnd(token, true);
  if (isMark(token, "!", "?", ";", "…")) return markEnd(token, true);
  if (isMark(token, ".")) {
    if (next && next.kind !== "break" && next.glued && !isMark(next, ".")) return undefined;
    // "model no. is gone"
    const numbered = isWord(tokens[at - 2], "model", "serial", "part", "cat", "frame", "type", "ser", "mod");
    if (numbered && isWord(tokens[at - 1], "no", "num")) return undefined;
    const dots = isMark(next, ".") || isMark(tokens[at - 1], ".");
    // "230 V.. Filter pressure is …": two dots and a capital end a sentence.
    const capital = next?.kind === "word" && !next.glued && !next.upper && /^\p{Lu}/u.test(next.chunk.text);
    if (dots) return markEnd(token, capital);
    const figure = next?.kind === "number" || next?.kind === "code";
    return markEnd(token, !(shortWord(tokens[at - 1]) && figure));
  }
  if (isMark(token, ",", "(", ")")) return markEnd(token, false);
  if (isMark(token, "-")) {
    const spaced = !token.glued && !next?.glued;
    return spaced && !(tokens[at - 1]?.kind === "number" && next?.kind === "number")
      ? markEnd(token, false)
      : undefined;
  }
  if (token.kind !== "word" || token.glued) return undefined;
  const opening = { closing: token.norm, sentence: false, words: true };
  if (turning.has(token.norm)) return opening;
  const joins = token.norm === "and" || token.norm === "y" || token.norm === "so";
  const article = isWord(next, "the", "my", "a", "el", "la", "mi", "on");
  // "on the motor it says 9.8 and on the filter it says 50"
  const placed = isWord(next, "on", "en") && isWord(tokens[at + 2], "the", "my", "el", "la", "mi");
  // "y la de mi prima es de 115"
  const ofSomebody = isWord(next, "el", "la") && isWord(tokens[at + 2], "de", "del");
  const opensAnother =
    subjects.has(at + 1) ||
    (article && subjects.has(at + 2)) ||
    (placed && subjects.has(at + 3)) ||
    (ofSomebody && (subjects.has(at + 3) || subjects.has(at + 4)));
  return joins && opensAnother ? opening : undefined;
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
  // "… asks whether a variable-speed motor would pay"
  const indirect = tokens.slice(at, end).findIndex((word) => isWord(word, "whether"));
  if (indirect >= 0 && isWord(tokens[at + indirect + 1], "a", "an", "any")) return true;
  if (tokens.slice(start, at).some((mark) => isMark(mark, "¿"))) return true;
  return token?.kind === "word" && openers.has(token.norm);
}
