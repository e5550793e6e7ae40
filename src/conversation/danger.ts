import { type Hazard, hazards, type Span } from "../nameplate/reading.ts";
import { denied } from "./danger/contexts/denied.ts";
import { hypothetical } from "./danger/contexts/hypothetical.ts";
import { inAnotherSense, wordsInAnotherSense } from "./danger/contexts/otherSense.ts";
import { printed } from "./danger/contexts/printed.ts";
import { reported } from "./danger/contexts/reported.ts";
import { resolved } from "./danger/contexts/resolved.ts";
import type { Context, Mention } from "./danger/mention.ts";
import { findAll, type Pattern } from "./danger/pattern.ts";
import { fireSense } from "./danger/senses/fire.ts";
import { shockSense } from "./danger/senses/shock.ts";
import { tripSense } from "./danger/senses/trip.ts";
import { waterSense } from "./danger/senses/water.ts";
import { tokenize } from "./danger/tokens.ts";

/** A danger that is present or not known to be over, with the words that tell of it. */
export interface Danger {
  readonly hazard: Hazard;
  readonly words: string;
  readonly span: Span;
}

/** First propose every mention of a danger, by sense ... */
const senses: Readonly<Record<Hazard, readonly Pattern[]>> = {
  shock: shockSense,
  fire: fireSense,
  water: waterSense,
  trip: tripSense,
};

/** ... then drop a mention as soon as one of these contexts explains it. */
const contexts: readonly (readonly [name: string, context: Context])[] = [
  ["denied", denied],
  ["hypothetical", hypothetical],
  ["printed", printed],
  ["reported", reported],
  ["resolved", resolved],
];

/** A mention with the context that took it off the list, if any. For tests and for the scorer's list of misses. */
export interface JudgedMention extends Danger {
  readonly dismissed: string | undefined;
}

/** Every mention of danger in a message and what became of it. Never throws; time is linear in the length. */
export function judgeMentions(text: string): readonly JudgedMention[] {
  const tokens = tokenize(text);
  const others = wordsInAnotherSense(tokens);
  const mentions: readonly Mention[] = hazards.flatMap((hazard) =>
    findAll(senses[hazard], tokens).map((found) => ({ hazard, ...found })),
  );
  const starts = new Set(mentions.map(({ from }) => from));
  return mentions.map((mention) => {
    const span = { start: tokens[mention.from]?.start ?? 0, end: tokens[mention.to - 1]?.end ?? 0 };
    const dismissed = inAnotherSense(others, mention)
      ? "another sense"
      : contexts.find(([, context]) => context(tokens, mention, starts))?.[0];
    return { hazard: mention.hazard, words: text.slice(span.start, span.end), span, dismissed };
  });
}

/**
 * The most urgent danger a message tells of, present or unresolved, in earnest, as a joke or as a question; null
 * when there is none, or it is denied, over, printed on a label, supposed, or a way of speaking.
 * Of several, shock comes before fire before water before trip. Signs of shock in water after U.S. CPSC,
 * "Don't Swim with Shocks"; the rest is common practice, no source.
 */
export function detectDanger(text: string): Danger | null {
  const found = judgeMentions(text).find(({ dismissed }) => dismissed === undefined);
  return found ? { hazard: found.hazard, words: found.words, span: found.span } : null;
}
