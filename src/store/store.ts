import type { StockMotor } from "../matching/types.ts";

/** A message as it came in, stored before anything is done with it. */
export interface InboxItem {
  /** Unique for ever: the channel's own update id, prefixed with the channel. */
  readonly id: string;
  readonly threadId: string;
  readonly text: string;
  /** ISO instant. */
  readonly at: string;
}

/** A reply waiting to be delivered, in order per thread. */
export interface OutboxItem {
  readonly id: number;
  readonly threadId: string;
  readonly text: string;
}

/** How a case stands with the staff. */
export type CaseState = "waiting" | "taken" | "closed";

export interface CaseRecord {
  readonly id: number;
  readonly threadId: string;
  readonly urgency: string;
  readonly reason: string;
  readonly state: CaseState;
  readonly brief: string;
  readonly openedAt: string;
  readonly updatedAt: string;
}

/** What one handled message changes; stored together or not at all. */
export interface Turn {
  readonly item: InboxItem;
  /** The thread's new state, as text the store does not look into. */
  readonly state: string;
  readonly replies: readonly string[];
  /** The thread's open case as it should now stand; null leaves cases alone. */
  readonly case: { readonly urgency: string; readonly reason: string; readonly brief: string } | null;
  /** True when the customer asked to be forgotten: everything of the thread but this turn's replies goes. */
  readonly erase: boolean;
}

/** Durable state. Asynchronous, so that a database server can stand behind it. */
export interface Store {
  /** The thread's state as last stored, or undefined for a new customer. */
  readonly findThread: (threadId: string) => Promise<string | undefined>;
  /** Stores a message before it is handled; false when its id was seen before. */
  readonly receive: (item: InboxItem) => Promise<boolean>;
  /** Messages received but not handled, oldest first: what a crash left over. */
  readonly unhandled: () => Promise<readonly InboxItem[]>;
  /** One transaction: message handled, thread, case and replies. */
  readonly commit: (turn: Turn) => Promise<void>;
  /** Replies not yet delivered, oldest first. */
  readonly undelivered: (threadId?: string) => Promise<readonly OutboxItem[]>;
  readonly delivered: (id: number) => Promise<void>;
  readonly cases: () => Promise<readonly CaseRecord[]>;
  /** The thread's case that is not closed, if any. */
  readonly openCase: (threadId: string) => Promise<CaseRecord | undefined>;
  /** Replaces the whole stock, all or nothing. */
  readonly replaceStock: (motors: readonly StockMotor[], importedOn: string) => Promise<void>;
  readonly stock: () => Promise<{
    readonly motors: readonly StockMotor[];
    readonly importedOn: string | null;
  }>;
  readonly close: () => Promise<void>;
}

/** The store cannot be used; the message names the file and what to do. */
export class StoreError extends Error {
  override readonly name = "StoreError";
}
