import type { RatingName } from "../vocabulary.ts";
import type { Claim } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Name } from "./naming.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { listRatings, parseValue } from "./values.ts";

interface Topic {
  readonly rating: RatingName;
  readonly sentence: number;
  /** A value was given for it already; only a further one of a list may follow. */
  readonly answered: boolean;
}

const subjects =
  /^(?:first|second|low|high|lower|higher|top|bottom|other|one|it|its|that|thats|they|theyre|those|number|numbers|figure|line|upper|primero|segundo|primera|segunda|otro|otra|ese|eso|este)$/;
const verbs = [
  "is",
  "are",
  "says",
  "reads",
  "its",
  "thats",
  "theyre",
  "es",
  "son",
  "dice",
  "shows",
  "looks",
  "like",
];
/** How many sentences later a figure may still belong to what was spoken of. */
const reach = 3;

/**
 * Told over several sentences: "There are two lines for amps. The first is 13.6. The second is 6.8." A figure that
 * is said of a mere pronoun belongs to the rating spoken of before.
 */
export function topics(context: Context, explained: readonly boolean[], claims: readonly Claim[]): Claim[] {
  const { tokens, names, sentenceAt } = context;
  const found: Claim[] = [];
  const claimAt = new Map(claims.map((claim) => [claim.start, claim]));
  let topic: Topic | undefined;
  for (let at = 0; at < tokens.length; at++) {
    const sentence = sentenceAt[at] ?? 0;
    const claim = claimAt.get(at);
    if (claim)
      topic = resumed.has(claim.rating) ? { rating: claim.rating, sentence, answered: true } : undefined;
    const name = longest(names[at]);
    if (name && !explained[at] && !name.weak) {
      const unread = cuesIn(context, at - 8, name.end + 8, "illegible").some(
        ({ start }) => sentenceAt[start] === sentence,
      );
      topic = unread ? undefined : { rating: name.rating, sentence, answered: false };
      at = name.end - 1;
      continue;
    }
    if (tokens[at]?.kind !== "number" || explained[at] || !topic) continue;
    if (sentence === topic.sentence || sentence - topic.sentence > reach || !ofPronoun(tokens, at)) continue;
    const { rating, answered } = topic;
    const again = answered && !isOrdinal(tokens, at);
    const parsed = parseValue(rating, tokens, at)
      .filter(({ fit, half }) => fit >= (again ? 1.4 : 1) && !half)
      .at(-1);
    if (!parsed || (answered && !again && !listRatings.has(rating)) || !ends(tokens[parsed.end])) continue;
    found.push({ rating, value: parsed.value, start: at, end: parsed.end, score: 1, instead: again });
    topic = { rating, sentence, answered: true };
    at = parsed.end - 1;
  }
  return found;
}

const longest = (names: readonly Name[] | undefined) => names?.toSorted((a, b) => b.end - a.end)[0];

/** "the low one is 115", "it says 3450": between the sentence's beginning and the figure stand only words like these. */
function ofPronoun(tokens: readonly Token[], figure: number): boolean {
  if (!isWord(tokens[figure - 1], ...verbs, "a", "about")) return false;
  for (let at = figure - 1; at > figure - 7; at--) {
    const token = tokens[at];
    if (token?.kind === "word" && subjects.test(token.norm)) return true;
    if (token?.kind !== "word") return false;
  }
  return false;
}

/** "The second is 6.8" goes on with a list; "it's 9.6" says the one value again. */
function isOrdinal(tokens: readonly Token[], figure: number): boolean {
  for (let at = figure - 1; at > figure - 7 && tokens[at]?.kind === "word"; at--)
    if (ordinals.test(tokens[at]?.norm ?? "")) return true;
  return false;
}

const ordinals =
  /^(?:first|second|low|high|lower|higher|top|bottom|other|one|line|upper|primero|segundo|primera|segunda|otro|otra|they|theyre|those)$/;

/** Ratings whose figure may be said again, or go on, in a later sentence. */
const resumed: ReadonlySet<RatingName> = new Set([...listRatings, "hp", "serviceFactor", "totalHp"]);

const ends = (token: Token | undefined) =>
  token === undefined ||
  token.kind === "break" ||
  isMark(token, ".", ",", "!", ";", ")") ||
  isWord(token, "and", "y", "i");
