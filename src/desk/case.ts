import type { CaseReason, Urgency } from "../conversation/thread.ts";
import type { Hazard } from "../nameplate/reading.ts";
import type { StaffMember } from "../staff.ts";
import type { OutcomeName } from "./outcomes.ts";

/** Who has the case. */
export type Standing =
  /** `since`: the wait that the promise of an answer counts from. */
  | { readonly state: "waiting"; readonly since: string }
  | { readonly state: "taken"; readonly by: StaffMember; readonly since: string }
  /** Handed back: open, but nobody waits for a person. */
  | { readonly state: "with-bot"; readonly since: string }
  | {
      readonly state: "closed";
      readonly outcome: OutcomeName;
      /** Stock number, where a motor was sold or came back. */
      readonly sku: string | null;
      readonly by: StaffMember;
      readonly since: string;
    };

export type CaseState = Standing["state"];

/** A customer's matter on the desk. Plain data: it is stored as JSON. A customer has at most one that is not closed. */
export interface DeskCase {
  readonly id: number;
  readonly threadId: string;
  readonly urgency: Urgency;
  readonly reason: CaseReason;
  readonly standing: Standing;
  /** The danger an alert went out for and when it did; null when none did. */
  readonly alerted: { readonly hazard: Hazard; readonly at: string } | null;
  /** The motor a person has offered, by stock number. */
  readonly offered: string | null;
  /** One line on what the customer has and what fits, for lists and titles. */
  readonly headline: string;
  readonly brief: string;
  /** ISO instants. */
  readonly openedAt: string;
  readonly updatedAt: string;
}

export const eventKinds = [
  "opened",
  "took",
  "told",
  "noted",
  "corrected",
  "offered",
  "handed-back",
  "cleared",
  "ranked",
  "closed",
  "reopened",
  "alerted",
  "told-late",
] as const;
export type EventKind = (typeof eventKinds)[number];

/** One line of a case's history: kept for ever, seen by staff only. */
export interface CaseEvent {
  readonly caseId: number;
  readonly at: string;
  /** Null: the bot. */
  readonly by: StaffMember | null;
  readonly kind: EventKind;
  readonly text: string;
}
