import type { Standing } from "./candidate.ts";
import type { Context } from "./context.ts";
import { isWord, type Token } from "./token.ts";

/** Who says a figure, as a later "he was right" can point back at. */
type Speaker = "i" | "he" | "she" | "they";

const spoken: readonly (readonly [Speaker, readonly string[]])[] = [
  ["i", ["i", "me", "yo"]],
  ["he", ["he", "him", "husband", "son", "brother", "dad", "father", "guy", "uncle", "grandpa", "buddy"]],
  ["he", ["esposo", "marido", "hijo", "hermano", "papa", "suegro", "cunado", "abuelo", "tecnico"]],
  ["she", ["she", "her", "wife", "daughter", "sister", "mom", "mother", "aunt", "grandma"]],
  ["she", ["ella", "esposa", "mujer", "hija", "hermana", "mama", "suegra", "cunada", "abuela"]],
  ["they", ["they", "them", "kids", "ellos"]],
];
const speakers = new Map(spoken.flatMap(([speaker, words]) => words.map((word) => [word, speaker] as const)));

const speakerOf = (token: Token | undefined) =>
  token?.kind === "word" ? speakers.get(token.norm) : undefined;

/** "He says 1725, I say 3450. I was right.": of two figures told by two people the one counts that proved right. */
export function decided(
  context: Context,
  stated: readonly Standing[],
  standing: readonly Standing[],
): Standing[] {
  const { tokens } = context;
  const verdict = verdictIn(tokens);
  if (!verdict) return [...standing];
  const told = stated.slice(0, mostFigures).map((claim) => ({ claim, by: toldBy(context, claim) }));
  let kept = [...standing];
  for (const rating of new Set(stated.map((claim) => claim.rating))) {
    const ofRating = told.filter(({ claim, by }) => claim.rating === rating && by !== undefined);
    const holds = ({ by }: { by?: Speaker | undefined }) => (by === verdict.speaker) === verdict.right;
    const right = ofRating.filter(holds).map(({ claim }) => claim);
    const wrong = new Set(ofRating.filter((one) => !holds(one)).map(({ claim }) => claim.start));
    if (right.length === 0 || wrong.size === 0) continue;
    kept = kept.filter((claim) => claim.rating !== rating || !wrong.has(claim.start));
    kept.push(
      ...right.filter(
        (claim) => !kept.some(({ start, rating: other }) => start === claim.start && other === rating),
      ),
    );
  }
  return kept.sort((a, b) => a.start - b.start);
}

const mostFigures = 40;

/** The nearest person named before a figure in its sentence. */
function toldBy({ tokens, sentenceAt }: Context, claim: Standing): Speaker | undefined {
  for (let at = claim.start - 1; at >= 0 && sentenceAt[at] === sentenceAt[claim.start]; at--) {
    const speaker = speakerOf(tokens[at]);
    if (speaker) return speaker;
  }
  return undefined;
}

/** "she was right", "tenía razón él", "I was wrong". */
function verdictIn(tokens: readonly Token[]): { speaker: Speaker; right: boolean } | undefined {
  for (let at = 0; at < tokens.length; at++) {
    const reason = isWord(tokens[at], "razon") && isWord(tokens[at - 1], "tenia", "tiene", "tuvo", "tenian");
    if (reason) {
      const after = isWord(tokens[at + 1], "mi", "el", "la") ? tokens[at + 2] : tokens[at + 1];
      const him = isWord(tokens[at + 1], "el") ? "he" : undefined;
      const speaker =
        speakerOf(after) ??
        him ??
        speakerOf(tokens[at - 2]) ??
        (isWord(tokens[at - 2], "el") ? "he" : undefined);
      if (speaker) return { speaker, right: true };
    }
    if (!isWord(tokens[at], "right", "correct", "wrong")) continue;
    const verb = isWord(tokens[at - 1], "it") ? at - 2 : at - 1;
    if (!isWord(tokens[verb], "was", "is", "were", "am", "are", "had", "got")) continue;
    const speaker = speakerOf(tokens[verb - 1]);
    if (speaker) return { speaker, right: !isWord(tokens[at], "wrong") };
  }
  return undefined;
}
