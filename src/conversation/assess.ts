import { motorBySku, pumpByModel } from "../catalogue/catalogue.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { planQuestions } from "../matching/plan.ts";
import { indexStock } from "../matching/stock-index.ts";
import type { MatchResult, Miss, StockMotor } from "../matching/types.ts";
import { auditNameplate } from "../nameplate/audit.ts";
import type { Doubt } from "../nameplate/reading.ts";
import { type Nameplate, nameplateRatingNames, type RatingName, type Site } from "../nameplate/vocabulary.ts";
import { type Contradiction, deduce, type LookUps } from "./deduce.ts";
import { plainValues } from "./facts.ts";
import type { Knowledge } from "./knowledge.ts";
import { searchNumber } from "./old-number.ts";
import type { Facts, Thread } from "./thread.ts";

/** Nobody is asked for the same rating more often than this; then the ladder takes over, then the desk. */
export const ASKED_AT_MOST = 2;

/** Of a large stock only the best are kept: nobody is offered more, and what-ifs look no further down. */
const LARGE_STOCK = 2000;
const KEPT_MOTORS = 60;

/** What the shop can offer on the day of the question. */
export interface Shelf extends LookUps {
  readonly motors: readonly StockMotor[];
  /** ISO date the sale rule is judged on. */
  readonly on: string;
}

/** Where the thread stands: derived afresh from the facts, never stored. */
export interface Assessment {
  /** What the customer stated plus what follows from it (marked `inferred`). */
  readonly facts: Facts;
  /** The values the rules may use: doubted ones are left out. */
  readonly nameplate: Nameplate;
  readonly site: Site;
  readonly doubts: readonly Doubt[];
  /** Doubts the customer has stood by although they cannot be true: for the desk. */
  readonly stubborn: readonly Doubt[];
  readonly contradictions: readonly Contradiction[];
  /** The best motors; null while nothing about the motor is known. */
  readonly match: MatchResult | null;
  /** Where nothing fits: the motor that comes nearest, and why it doesn't. */
  readonly nearest: Miss | null;
  /** Ratings worth asking, most useful first; empty when no answer could change the outcome. */
  readonly ask: readonly RatingName[];
}

/**
 * Where a thread stands with what the shop has today. The latest are kept: talk, brief and card of one message look at
 * the same thread, and small talk does not change it.
 */
export function assessThread(thread: Thread, { catalogue, on }: Knowledge): Assessment {
  const kept = latest.get(catalogue) ?? new Kept();
  latest.set(catalogue, kept);
  const { facts, confirmed } = thread;
  const key = JSON.stringify([facts, confirmed, [...unaskable(thread)].sort(), on]);
  return kept.take(key, () =>
    assess(thread, {
      motors: catalogue.motors,
      pumpByModel: (model) => pumpByModel(catalogue, model),
      twinByNumber: (number) => twinByNumber(catalogue, number),
      on,
    }),
  );
}

/** What is kept is bounded by the judged motors it holds, a few kilobytes each. */
const JUDGED_MOTORS_KEPT = 4000;

/** The assessments looked at last. */
class Kept {
  readonly #byKey = new Map<string, Assessment>();
  #size = 0;

  take(key: string, make: () => Assessment): Assessment {
    const known = this.#byKey.get(key) ?? make();
    if (this.#byKey.delete(key)) this.#size -= sizeOf(known);
    this.#byKey.set(key, known);
    this.#size += sizeOf(known);
    for (const [oldest, assessment] of this.#byKey) {
      if (this.#size <= JUDGED_MOTORS_KEPT || this.#byKey.size === 1) break;
      this.#byKey.delete(oldest);
      this.#size -= sizeOf(assessment);
    }
    return known;
  }
}

const sizeOf = ({ match }: Assessment) => 1 + (match?.motors.length ?? 0);

const latest = new WeakMap<Catalogue, Kept>();

function twinByNumber(catalogue: Catalogue, number: string): StockMotor | undefined {
  const result = searchNumber(catalogue, number);
  if (result.kind !== "found" || (result.how !== "exact" && result.how !== "format")) return undefined;
  return result.skus.includes(result.number) ? motorBySku(catalogue, result.number) : undefined;
}

/** Audits, matches and plans for one thread. */
export function assess(thread: Thread, shelf: Shelf): Assessment {
  const stated = plainValues(thread.facts);
  const raised = auditNameplate(stated.nameplate, stated.site);
  const stoodBy = (doubt: Doubt) => doubt.ratings.every((rating) => thread.confirmed.includes(rating));
  const settled = (doubt: Doubt) => {
    const [first] = doubt.ratings;
    return doubt.severity === "doubtful" && first !== undefined && thread.confirmed.includes(first);
  };
  const standing = raised.filter((doubt) => !settled(doubt));
  const stubborn = standing.filter(stoodBy);
  const doubts = standing.filter((doubt) => !stoodBy(doubt));

  const { facts, contradictions } = deduce(thread.facts, shelf);
  const { nameplate, site } = plainValues(facts, doubtedRatings(standing));
  const known =
    nameplateRatingNames.some((rating) => nameplate[rating] !== undefined) || site.pumpModel !== undefined;
  if (!known) {
    return { facts, nameplate, site, doubts, stubborn, contradictions, match: null, nearest: null, ask: [] };
  }
  const question = { nameplate, site, on: shelf.on };
  const stock = indexStock(shelf.motors);
  const match = stock.match(question, shelf.motors.length > LARGE_STOCK ? { limit: KEPT_MOTORS } : {});
  const closed = unaskable(thread);
  const planned = planQuestions(question, shelf.motors, { unaskable: closed });
  const ask =
    match.verdict === "undecided" ? [...roundabout(match, site, facts, closed, shelf), ...planned] : [];
  const nearest = match.verdict === "none-fits" ? (stock.nearestMiss(question) ?? null) : null;
  return { facts, nameplate, site, doubts, stubborn, contradictions, match, nearest, ask: [...new Set(ask)] };
}

/**
 * What can be seen instead of a label that can't be read, where a deduction leads on from it: the breaker
 * tells the phase, and on a known pump the number of speeds tells the rpm.
 */
function roundabout(
  match: MatchResult,
  site: Site,
  facts: Facts,
  closed: ReadonlySet<RatingName>,
  shelf: Shelf,
): readonly RatingName[] {
  const waitsFor = new Set(
    match.motors[0]?.findings.flatMap(({ outcome, needs }) => (outcome === "not-known" ? needs : [])),
  );
  const open = (rating: RatingName) => facts[rating] === undefined && !closed.has(rating);
  const pumpKnown = site.pumpModel !== undefined && shelf.pumpByModel(site.pumpModel) !== undefined;
  const speeds = pumpKnown && waitsFor.has("rpm") && closed.has("rpm") && open("speedKind");
  const poles = waitsFor.has("phase") && closed.has("phase") && open("breakerPoles");
  return [...(speeds ? (["speedKind"] as const) : []), ...(poles ? (["breakerPoles"] as const) : [])];
}

/** An impossible combination taints all it names; a merely odd value only itself. */
function doubtedRatings(doubts: readonly Doubt[]): ReadonlySet<RatingName> {
  return new Set(
    doubts.flatMap(({ severity, ratings }) => (severity === "impossible" ? ratings : ratings.slice(0, 1))),
  );
}

function unaskable(thread: Thread): ReadonlySet<RatingName> {
  const tooOften = Object.entries(thread.asked)
    .filter(([, times]) => (times ?? 0) >= ASKED_AT_MOST)
    .map(([rating]) => rating as RatingName);
  return new Set([...thread.unreadable, ...tooOften]);
}
