import type { RatingName } from "../nameplate/vocabulary.ts";
import { factEntries } from "./facts.ts";
import type { Fact, Facts, Thread } from "./thread.ts";

/** Ratings whose value was said in this message. */
export function ratingsFrom(facts: Facts, message: string): readonly RatingName[] {
  return factEntries(facts).flatMap(([rating, { from }]) => (from === message ? [rating] : []));
}

/**
 * The thread before a message was edited: what it had said is gone, unless its new words speak of the same rating;
 * then the new value replaces the old one as any correction does.
 */
export function withoutMessage(thread: Thread, message: string, said: readonly RatingName[]): Thread {
  const gone = ratingsFrom(thread.facts, message).filter((rating) => !said.includes(rating));
  if (gone.length === 0) return thread;
  const facts = Object.fromEntries(factEntries(thread.facts).filter(([rating]) => !gone.includes(rating)));
  return {
    ...thread,
    facts: facts as Facts,
    confirmed: thread.confirmed.filter((rating) => !gone.includes(rating)),
  };
}

/** Notes on every fact that is new or has another value which message it came from. */
export function markedFrom(before: Facts, after: Facts, message: string): Facts {
  const marked = factEntries(after).map(([rating, fact]): readonly [RatingName, Fact] =>
    fact === before[rating] ? [rating, fact] : [rating, { ...fact, from: message }],
  );
  return Object.fromEntries(marked) as Facts;
}
