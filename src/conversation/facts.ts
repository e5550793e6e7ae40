import type { Certainty, MessageReading, Reading } from "../nameplate/reading.ts";
import {
  isNameplateRating,
  type Nameplate,
  type RatingName,
  type RatingValue,
  type Site,
} from "../nameplate/vocabulary.ts";
import type { Fact, Facts, Thread } from "./thread.ts";

/** A rating whose value this message replaced. */
export interface Change {
  readonly rating: RatingName;
  readonly before: RatingValue<RatingName>;
  readonly after: RatingValue<RatingName>;
}

export interface Absorbed {
  readonly thread: Thread;
  /** Ratings that are new or now have another value. */
  readonly news: readonly RatingName[];
  readonly changes: readonly Change[];
}

/**
 * Merges one message's readings into the thread: the latest statement wins, stated words replace
 * deductions, and a rating that was read after all is no longer unreadable.
 */
export function absorb(thread: Thread, reading: MessageReading): Absorbed {
  const facts: Record<string, Fact> = { ...thread.facts } as Record<string, Fact>;
  const news: RatingName[] = [];
  const changes: Change[] = [];
  const repeated: RatingName[] = [];
  for (const { rating, value, words } of reading.readings) {
    const old = facts[rating];
    // A person at the desk has settled it; the customer's other figure stands in their last words.
    if (old?.certainty === "staff") continue;
    if (old && sameValue(old.value, value)) {
      if (old.certainty === "inferred") facts[rating] = { value, words, certainty: "typed" };
      else repeated.push(rating);
      continue;
    }
    if (old?.certainty === "typed" && namesOneOf(old, { rating, value }, reading)) continue;
    facts[rating] = { value, words, certainty: "typed" };
    news.push(rating);
    if (old && old.certainty !== "inferred") changes.push({ rating, before: old.value, after: value });
  }
  const stated = new Set(reading.readings.map(({ rating }) => rating));
  const unreadable = new Set(thread.unreadable.filter((rating) => !stated.has(rating)));
  for (const { rating } of reading.unreadable) {
    if (stated.has(rating)) continue;
    // Who can't read it after all takes back what was said before.
    unreadable.add(rating);
    delete facts[rating];
  }
  // Saying the same value again after it was doubted is the customer's answer to the doubt.
  const askedAgain = thread.pending.kind === "ratings" ? thread.pending.ratings : [];
  const confirmed = new Set(thread.confirmed.filter((rating) => !news.includes(rating)));
  for (const rating of repeated) if (askedAgain.includes(rating)) confirmed.add(rating);
  return {
    thread: { ...thread, facts: facts as Facts, unreadable: [...unreadable], confirmed: [...confirmed] },
    news,
    changes,
  };
}

/** "14.8 amps on 115" after "115/230 V": a current is told at one of the label's voltages, which keeps both. */
function namesOneOf(
  old: Fact,
  { rating, value }: Pick<Reading, "rating" | "value">,
  reading: MessageReading,
): boolean {
  if (rating !== "volts" || !Array.isArray(old.value) || !Array.isArray(value)) return false;
  const known: readonly unknown[] = old.value;
  const current = reading.readings.some((one) => one.rating === "amps" || one.rating === "serviceFactorAmps");
  return current && value.length < known.length && value.every((volts) => known.includes(volts));
}

/** The thread with one value set outright: a confirmed proposal, a staff correction. */
export function setFact<K extends RatingName>(
  thread: Thread,
  rating: K,
  value: RatingValue<K>,
  certainty: Certainty,
): Thread {
  const fact = { value, words: thread.facts[rating]?.words ?? "", certainty };
  return {
    ...thread,
    facts: { ...thread.facts, [rating]: fact },
    unreadable: thread.unreadable.filter((name) => name !== rating),
  };
}

/** Plain values for the audit and the rules, leaving out the ratings in `without`. */
export function plainValues(
  facts: Facts,
  without: ReadonlySet<RatingName> = new Set(),
): { readonly nameplate: Nameplate; readonly site: Site } {
  const nameplate: Record<string, unknown> = {};
  const site: Record<string, unknown> = {};
  for (const [rating, fact] of factEntries(facts)) {
    if (without.has(rating)) continue;
    (isNameplateRating(rating) ? nameplate : site)[rating] = fact.value;
  }
  return { nameplate: nameplate as Nameplate, site: site as Site };
}

/** The known facts as pairs, in vocabulary-independent insertion order. */
export function factEntries(facts: Facts): readonly (readonly [RatingName, Fact])[] {
  return Object.entries(facts).filter((entry): entry is [RatingName, Fact] => entry[1] !== undefined);
}

export function sameValue(a: RatingValue<RatingName>, b: RatingValue<RatingName>): boolean {
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((value, index) => value === b[index]);
  }
  return a === b;
}
