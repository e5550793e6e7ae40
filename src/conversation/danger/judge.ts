import { type Hazard, hazards, type Span } from "../../nameplate/reading.ts";
import { denied } from "./contexts/denied.ts";
import { hypothetical } from "./contexts/hypothetical.ts";
import { inAnotherSense, wordsInAnotherSense } from "./contexts/otherSense.ts";
import { printed } from "./contexts/printed.ts";
import { reported } from "./contexts/reported.ts";
import { resolved } from "./contexts/resolved.ts";
import type { Context, Mention } from "./mention.ts";
import { findAll, type Pattern } from "./pattern.ts";
import { fireSense } from "./senses/fire.ts";
import { shockSense } from "./senses/shock.ts";
import { tripSense } from "./senses/trip.ts";
import { waterSense } from "./senses/water.ts";
import type { Token } from "./tokens.ts";

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

/** A mention of danger with the context that took it off the list, if any. */
export interface JudgedMention {
  readonly hazard: Hazard;
  readonly words: string;
  readonly span: Span;
  readonly dismissed: string | undefined;
}

/** Every mention of danger in a message and what became of it. */
export function judge(text: string, tokens: readonly Token[]): readonly JudgedMention[] {
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
