import type { Place } from "../catalogue/number-search.ts";
import type { Certainty, Doubt, Hazard } from "../nameplate/reading.ts";
import type { RatingName, RatingValue } from "../nameplate/vocabulary.ts";
import type { PartEdit } from "./parts-list.ts";

/** What a deduction rests on: the pump's need or a stocked twin (somebody checks it), or a breaker that leaves no choice. */
export type Ground = "pump" | "number" | "breaker";

/** One value held about this customer's motor or site, with its evidence. */
export interface Fact<K extends RatingName = RatingName> {
  readonly value: RatingValue<K>;
  /** The customer's own words it came from. */
  readonly words: string;
  readonly certainty: Certainty;
  /** The message it was said in, by the channel's own name for it: an edit of that message replaces it. */
  readonly from?: string;
  /** What it was inferred from; absent for what people stated. */
  readonly because?: Ground;
}

export type Facts = { readonly [K in RatingName]?: Fact<K> | undefined };

/** What a doubted value may have been; two ratings at once where they were exchanged. */
export type Proposal = NonNullable<Doubt["proposal"]>;

/** What the bot's last message asked; decides how a bare "yes" or "1.5" is understood. */
export type Pending =
  | { readonly kind: "nothing" }
  | { readonly kind: "ratings"; readonly ratings: readonly RatingName[] }
  | { readonly kind: "doubt"; readonly rating: RatingName; readonly proposal: Proposal }
  /** A number that is nearly one on record; `at` is the character that tells the candidates apart. */
  | {
      readonly kind: "number";
      readonly typed: string;
      readonly candidates: readonly string[];
      readonly at: Place | null;
    }
  | { readonly kind: "power-off"; readonly hazard: Hazard }
  | { readonly kind: "erase" };

/** Waiting cases are ordered by this list; the words are shown to staff. */
export const urgencies = ["danger", "pump-down", "ready-to-confirm", "planning"] as const;
export type Urgency = (typeof urgencies)[number];

/** True for a word of {@link urgencies}, wherever it came from. */
export function isUrgency(word: string): word is Urgency {
  return (urgencies as readonly string[]).includes(word);
}

/** Why the thread is on the desk. */
export type CaseReason =
  | "danger"
  | "asked-for-person"
  | "verdict-ready"
  | "nothing-fits"
  | "cannot-decide"
  | "sent-picture"
  /** After the case was closed. */
  | "wrote-again"
  /** A person has dealt with the danger. */
  | "danger-over";

/** How the desk's case stands, as far as the talk must know; the desk keeps the rest. */
export type ThreadCase =
  | { readonly state: "none" }
  | { readonly state: "waiting" | "taken"; readonly urgency: Urgency; readonly reason: CaseReason };

/** A line of the conversation, kept for the brief's last words. */
export interface Line {
  readonly from: "customer" | "bot" | "staff";
  readonly text: string;
  /** ISO instant. */
  readonly at: string;
}

/** Everything remembered of one conversation. Plain data: it is stored as JSON. */
export interface Thread {
  readonly facts: Facts;
  /** Ratings the customer cannot read or does not have. */
  readonly unreadable: readonly RatingName[];
  /** Ratings whose doubted value the customer has confirmed: not doubted again. */
  readonly confirmed: readonly RatingName[];
  /** How often each rating has been asked. */
  readonly asked: { readonly [K in RatingName]?: number | undefined };
  readonly pending: Pending;
  /** Messages in a row that answered nothing while something was asked. */
  readonly fruitless: number;
  /** Trade words already explained. */
  readonly explained: readonly string[];
  /** Unresolved danger: parts talk waits until the customer says the power is off. */
  readonly hazard: Hazard | null;
  /** True while the customer says that the pump still runs: such cases wait behind dead pumps. */
  readonly planning: boolean;
  /** What the last verdict said; a new one is sent only when this changes. */
  readonly answered: string | null;
  readonly case: ThreadCase;
  /** What the desk changed of the parts list, as the case has it. */
  readonly partEdits: readonly PartEdit[];
  /** The last lines, oldest first, at most {@link KEPT_LINES}. */
  readonly lines: readonly Line[];
}

export const KEPT_LINES = 12;

export const newThread: Thread = {
  facts: {},
  unreadable: [],
  confirmed: [],
  asked: {},
  pending: { kind: "nothing" },
  fruitless: 0,
  explained: [],
  hazard: null,
  planning: false,
  answered: null,
  case: { state: "none" },
  partEdits: [],
  lines: [],
};

/** The thread with one more line, the oldest dropped. */
export function withLine(thread: Thread, line: Line): Thread {
  return { ...thread, lines: [...thread.lines, line].slice(-KEPT_LINES) };
}
