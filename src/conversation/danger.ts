import { type Hazard, hazards, type Span } from "../nameplate/reading.ts";
import { type JudgedMention, judge } from "./danger/judge.ts";
import { sentenceEnd, sentenceStart } from "./danger/mention.ts";
import { type Token, tokenize } from "./danger/tokens.ts";
import { type Vote, vote, type Weights } from "./danger/vote/vote.ts";

/** A danger that is present or not known to be over, with the words that tell of it. */
export interface Danger {
  readonly hazard: Hazard;
  readonly words: string;
  readonly span: Span;
}

/**
 * Two opinions are weighed as log odds: a vote learned from labelled messages, which knows wordings nobody listed,
 * and the mentions found by rule, which know the trade's own. The weights are fitted by logistic regression on
 * messages neither of them was made from, the threshold lies where hardly any danger is missed.
 */
const mentionPresent = 1.2;
const onlyDismissed = -0.8;
const onlyOtherSense = -1.35;
const beingAlone = 1.2;
const alarmFrom = 0.3;

/** Every mention of danger in a message and what became of it. Never throws; time is linear in the length. */
export function judgeMentions(text: string): readonly JudgedMention[] {
  return judge(text, tokenize(text));
}

/** Where the sentence that holds the offset begins: the index of its first word. */
function sentenceAt(tokens: readonly Token[], offset: number): number {
  return sentenceStart(
    tokens,
    tokens.findIndex(({ end }) => end > offset),
  );
}

function weigh(
  tokens: readonly Token[],
  mentions: readonly JudgedMention[],
  { odds }: Vote,
  weights: Weights | undefined,
): number {
  const present = mentions.filter(({ dismissed }) => dismissed === undefined);
  if (mentions.some(({ dismissed }) => dismissed === "another sense") && present.length === 0) {
    return odds + onlyOtherSense;
  }
  if (present.length === 0) return mentions.length > 0 ? odds + onlyDismissed : odds;
  // A danger told in a sentence of its own is not to be talked down by the sentences around it.
  const starts = new Set(present.slice(0, 3).map(({ span }) => sentenceAt(tokens, span.start)));
  const alone = [...starts]
    .map((start) => tokens.slice(start, sentenceEnd(tokens, start)))
    .filter(({ length }) => length < tokens.length)
    .map((sentence) => vote(sentence, weights).odds - beingAlone);
  return mentionPresent + Math.max(odds, ...alone);
}

function name(text: string, mentions: readonly JudgedMention[], voted: Vote): Danger {
  const present = mentions.filter(({ dismissed }) => dismissed === undefined);
  const kinds = new Set(present.map(({ hazard }) => hazard));
  if (present.length === 0 || voted.odds > 1) kinds.add(voted.hazard);
  const hazard = hazards.find((one) => kinds.has(one)) ?? voted.hazard;
  const span = present.find((one) => one.hazard === hazard)?.span ?? voted.span;
  return { hazard, span, words: text.slice(span.start, span.end) };
}

/** The danger with the score it was judged by, for given weights of the vote: for learning and for checking. */
export function judgeWith(text: string, weights?: Weights): { danger: Danger | null; score: number } {
  const tokens = tokenize(text);
  if (tokens.length === 0) return { danger: null, score: Number.NEGATIVE_INFINITY };
  const mentions = judge(text, tokens);
  const voted = vote(tokens, weights);
  const score = weigh(tokens, mentions, voted, weights);
  return { danger: score > alarmFrom ? name(text, mentions, voted) : null, score };
}

/**
 * The most urgent danger a message tells of, present or unresolved, in earnest, as a joke or as a question; null
 * when there is none, or it is denied, over, printed on a label, supposed, or a way of speaking.
 * Of several, shock comes before fire before water before trip. Signs of shock in water after U.S. CPSC,
 * "Don't Swim with Shocks"; the rest is common practice, no source.
 */
export function detectDanger(text: string): Danger | null {
  return judgeWith(text).danger;
}
