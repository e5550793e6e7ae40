import type { NumberOnRecord } from "../../catalogue/numbers-on-record.ts";
import type { Knowledge } from "../../conversation/knowledge.ts";
import type { Reply } from "../../conversation/reply.ts";
import type { Thread, Urgency } from "../../conversation/thread.ts";
import type { Choice, Content } from "../../outgoing.ts";
import type { StaffMember } from "../../staff.ts";
import type { CaseEvent, DeskCase, KeptFinding } from "../case.ts";
import type { OutcomeName } from "../outcomes.ts";

/** What a member of staff does with a case. */
export type Act =
  | { readonly kind: "take" }
  /** From a colleague who is not there. */
  | { readonly kind: "take-over" }
  /** The only act whose words reach the customer as they are. */
  | { readonly kind: "tell"; readonly text: string }
  | { readonly kind: "note"; readonly text: string }
  /** `text` is read as a customer's would be: "sf 1.65". */
  | { readonly kind: "correct"; readonly text: string }
  | { readonly kind: "offer"; readonly sku: string; readonly why: string }
  /** The parts list, to look at. */
  | { readonly kind: "show-parts" }
  /** `part` is a stock number, a sort of part or the words it was added in. */
  | {
      readonly kind: "edit-part";
      readonly part: string;
      readonly to: "needed" | "optional" | "dropped" | "as-ruled";
    }
  | {
      readonly kind: "add-part";
      readonly part: { readonly sku: string } | { readonly words: string };
      /** For the desk only. */
      readonly note: string;
    }
  /** Motor and parts as the case has them, told to the customer. */
  | { readonly kind: "confirm" }
  | { readonly kind: "hand-back" }
  /** A person has dealt with the danger. */
  | { readonly kind: "all-clear" }
  | { readonly kind: "rank"; readonly urgency: Urgency }
  | { readonly kind: "close"; readonly outcome: OutcomeName; readonly sku: string | null }
  | { readonly kind: "reopen" };
export type ActKind = Act["kind"];

/** An act on its way through {@link decide}. */
export interface DeskTurn<A extends Act = Act> {
  readonly case: DeskCase;
  readonly thread: Thread;
  readonly act: A;
  readonly by: StaffMember;
  /** ISO instant. */
  readonly at: string;
  readonly knowledge: Knowledge;
  /** Numbers on record that are used. */
  readonly numbers: readonly NumberOnRecord[];
  /** False when the customer has a newer case. */
  readonly newest: boolean;
}

/** What becomes of the numbers on record. */
export type NumberChange =
  | { readonly kind: "add"; readonly number: string; readonly sku: string }
  | { readonly kind: "withdraw"; readonly id: number };

/** A finding that a part which came back speaks against. */
export interface DoubtedFinding {
  readonly sku: string;
  readonly finding: KeptFinding;
}

/** What an act leads to; committed as a whole. */
export type Decision =
  | { readonly kind: "refused"; readonly answer: string }
  | {
      readonly kind: "done";
      readonly case: DeskCase;
      readonly thread: Thread;
      /** For the customer, in order: the only way from the desk to the customer. */
      readonly toCustomer: readonly Reply[];
      /** For all who look at this case. */
      readonly toCase: readonly Content[];
      readonly events: readonly CaseEvent[];
      readonly numbers: readonly NumberChange[];
      readonly doubted: readonly DoubtedFinding[];
      /** For the one who acted: what happened, and who saw it. */
      readonly answer: string;
      /** What that person may want to do next. */
      readonly choices: readonly Choice[];
    };
