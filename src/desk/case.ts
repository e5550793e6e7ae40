import type { PartEdit } from "../conversation/parts-list.ts";
import type { CaseReason, Thread, Urgency } from "../conversation/thread.ts";
import type { Finding } from "../matching/types.ts";
import type { Hazard } from "../nameplate/reading.ts";
import type { StaffMember } from "../staff.ts";
import type { OutcomeName } from "./outcomes.ts";

/** Who has the case. */
export type Standing =
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

/** A rule's word on a motor, as kept with a sale. */
export type KeptFinding = Pick<Finding, "rule" | "outcome" | "reason" | "values">;

export interface Sale {
  readonly sku: string;
  readonly findings: readonly KeptFinding[];
}

/** A customer's matter on the desk. Plain data: it is stored as JSON. A customer has at most one that is not closed. */
export interface DeskCase {
  readonly id: number;
  readonly threadId: string;
  readonly urgency: Urgency;
  readonly reason: CaseReason;
  readonly standing: Standing;
  /**
   * Since when the customer waits for a person's word; null while nobody owes one. `promised`: the bot has said
   * when somebody answers; false in a talk that a person has begun.
   */
  readonly unanswered: { readonly since: string; readonly promised: boolean } | null;
  /** The danger an alert went out for and when it did; null when none did. */
  readonly alerted: { readonly hazard: Hazard; readonly at: string } | null;
  /** The motor a person has offered, by stock number. */
  readonly offered: string | null;
  /** The motor the rules put first, by stock number; null while none fits or nothing is decided. */
  readonly fits: string | null;
  /** What staff changed of the parts list, laid over what the rules call for. */
  readonly partEdits: readonly PartEdit[];
  /** Of these, what no longer suits the verdict: sentences for staff. */
  readonly partsAgain: readonly string[];
  /** The motor that was sold, and what the rules said of it then; null when none was. */
  readonly sale: Sale | null;
  /** One line on what the customer has and what fits, for lists and titles. */
  readonly headline: string;
  readonly brief: string;
  /** What the brief's card shows; empty while there is nothing to show. */
  readonly card: string;
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
  "parts",
  "confirmed",
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

/** The thread with its mirror of the case: what `step` must know of the desk. */
export function mirrored(thread: Thread, { standing, urgency, reason, partEdits }: DeskCase): Thread {
  const open = standing.state === "waiting" || standing.state === "taken";
  return {
    ...thread,
    partEdits,
    case: open ? { state: standing.state, urgency, reason } : { state: "none" },
  };
}

/** A new case, waiting from `at` (ISO instant). Brief and headline follow when it is presented. */
export function openedCase(
  id: number,
  threadId: string,
  { urgency, reason, at }: { readonly urgency: Urgency; readonly reason: CaseReason; readonly at: string },
): DeskCase {
  return {
    id,
    threadId,
    urgency,
    reason,
    standing: { state: "waiting", since: at },
    unanswered: { since: at, promised: true },
    alerted: null,
    offered: null,
    fits: null,
    partEdits: [],
    partsAgain: [],
    sale: null,
    headline: "",
    brief: "",
    card: "",
    openedAt: at,
    updatedAt: at,
  };
}
