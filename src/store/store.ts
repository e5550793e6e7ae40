import type { NumberOnRecord } from "../catalogue/numbers-on-record.ts";
import type { Attachment, Lane, Outgoing } from "../outgoing.ts";
import type { StaffMember } from "../staff.ts";
import type { SentPictures } from "./sent-pictures.ts";
import type { StockStore } from "./stock.ts";
import type { TelegramStore } from "./telegram.ts";
import type { UpkeepStore } from "./upkeep.ts";
import type { GivenVerdict, VerdictRow } from "./verdicts.ts";

/** A message as it came in, stored before anything is done with it. */
export interface InboxItem {
  /** Unique for ever: the channel's own update id, prefixed with the channel. */
  readonly id: string;
  readonly threadId: string;
  readonly text: string;
  /** ISO instant. */
  readonly at: string;
  /** The channel's own name for the message, where it has one; an edited message keeps it. */
  readonly message?: string;
  /** True when these are new words of a message that came before. */
  readonly edited?: boolean;
  /** Pictures and files, for staff. */
  readonly attachments?: readonly Attachment[];
}

/** A message waiting to be delivered, in order per lane. */
export interface OutboxItem extends Outgoing {
  readonly id: number;
  /** ISO instant. */
  readonly createdAt: string;
  /** Deliveries that have failed so far. */
  readonly attempts: number;
  /** Not to be tried before this ISO instant; null: at once. */
  readonly retryAt: string | null;
}

/** A message that cannot be delivered, and why. */
export interface ParkedItem extends OutboxItem {
  readonly error: string;
}

/** A thread as last stored. `version` goes into the commit that replaces it; 0 is a thread not stored yet. */
export interface StoredThread {
  readonly state: string;
  readonly version: number;
}

/** A case: the columns that lists need, and all of it as text the store does not look into. */
export interface CaseRow {
  readonly id: number;
  readonly threadId: string;
  readonly state: string;
  readonly urgency: string;
  readonly doc: string;
  /** ISO instants. */
  readonly openedAt: string;
  readonly updatedAt: string;
}

/** A line of a case's history. */
export interface EventRow {
  readonly caseId: number;
  readonly at: string;
  readonly by: StaffMember | null;
  readonly kind: string;
  readonly text: string;
}

/** A finding that a part which came back speaks against; `finding` is JSON. */
export interface DoubtedRow {
  readonly caseId: number | null;
  readonly sku: string;
  readonly finding: string;
  readonly by: StaffMember;
  readonly at: string;
}

export type NumberEdit =
  | { readonly kind: "add"; readonly number: string; readonly sku: string; readonly caseId: number }
  | { readonly kind: "withdraw" | "strike"; readonly id: number };

/** What one message, act or tick changes; stored together or not at all. */
export interface Change {
  /** ISO instant. */
  readonly at: string;
  /** The inbox item that is handled with this. */
  readonly handled?: string;
  /** More inbox items that were read together with that one. */
  readonly handledToo?: readonly string[];
  /** The act that is done with this, and its answer. */
  readonly acted?: {
    readonly id: string;
    readonly caseId: number;
    readonly done: boolean;
    readonly answer: string;
  };
  /** Removes everything kept of the thread, its cases included; only the version of {@link thread} counts then. */
  readonly erase?: boolean;
  readonly thread?: { readonly id: string; readonly state: string; readonly version: number };
  readonly case?: CaseRow;
  readonly events?: readonly EventRow[];
  readonly numbers?: { readonly edits: readonly NumberEdit[]; readonly by: StaffMember };
  readonly doubted?: readonly DoubtedRow[];
  /** The verdict given to the {@link thread} with this. */
  readonly verdict?: VerdictRow;
  /** Key of what is sent once only. */
  readonly notice?: string;
  readonly outgoing: readonly Outgoing[];
}

/**
 * `seen`: the message, act or notice was done before. `stale`: somebody changed the thread since it was read.
 * With both nothing was stored.
 */
export type Committed = "done" | "seen" | "stale";

/** Where something of ours is in a channel: a lane's topic, the message of a slot. */
export interface Link {
  /** The channel's own reference, unique in the channel. */
  readonly theirs: string;
  readonly lane: Lane;
  /** The channel's own word for what it is. */
  readonly kind: string;
}

/** Durable state. Asynchronous, so that a database server can stand behind it. */
export interface Store {
  readonly findThread: (threadId: string) => Promise<StoredThread | undefined>;
  /** Stores a message before it is handled; false when its id was seen before. */
  readonly receive: (item: InboxItem) => Promise<boolean>;
  /** Messages received but not handled, oldest first: what a crash left over. */
  readonly unhandled: () => Promise<readonly InboxItem[]>;
  /** The answer an act was given; undefined when it was never done. */
  readonly actAnswer: (
    id: string,
  ) => Promise<{ readonly done: boolean; readonly answer: string } | undefined>;
  /** One transaction. */
  readonly commit: (change: Change) => Promise<Committed>;

  /** Messages neither delivered nor parked, oldest first. */
  readonly undelivered: (lane?: Lane) => Promise<readonly OutboxItem[]>;
  readonly delivered: (id: number) => Promise<void>;
  /** A delivery failed and is tried again at `retryAt` (ISO instant). */
  readonly postponed: (id: number, retryAt: string) => Promise<void>;
  /** A message can never be delivered: it is kept apart and no longer holds its lane up. */
  readonly park: (id: number, error: string) => Promise<void>;
  readonly parked: () => Promise<readonly ParkedItem[]>;

  /** A number for a case about to be opened; never given twice. */
  readonly newCaseId: () => Promise<number>;
  readonly cases: () => Promise<readonly CaseRow[]>;
  /** The cases that are not closed. */
  readonly openCases: () => Promise<readonly CaseRow[]>;
  readonly findCase: (id: number) => Promise<CaseRow | undefined>;
  /** The thread's newest case, whatever its state. */
  readonly latestCase: (threadId: string) => Promise<CaseRow | undefined>;
  /** A case's history, oldest first. */
  readonly events: (caseId: number) => Promise<readonly EventRow[]>;
  /** True when the notice with this key was sent. */
  readonly noticed: (key: string) => Promise<boolean>;

  /** All numbers ever recorded, oldest first. */
  readonly numbers: () => Promise<readonly NumberOnRecord[]>;
  /** Changes whenever {@link Store.numbers} does. */
  readonly numbersVersion: () => Promise<number>;
  readonly doubted: () => Promise<readonly DoubtedRow[]>;
  /** Verdicts given since that ISO instant, oldest first. */
  readonly verdicts: (since: string) => Promise<readonly GivenVerdict[]>;

  readonly link: (channel: string, link: Link) => Promise<void>;
  readonly unlink: (channel: string, theirs: string) => Promise<void>;
  readonly links: (channel: string, lane: Lane) => Promise<readonly Link[]>;
  readonly linkOf: (channel: string, theirs: string) => Promise<Link | undefined>;
  /** Links of cases that were erased: the channel removes what they stand for. */
  readonly orphans: (channel: string) => Promise<readonly Link[]>;

  readonly telegram: TelegramStore;
  readonly upkeep: UpkeepStore;

  readonly sentPictures: SentPictures;
  readonly stock: StockStore;
  readonly close: () => Promise<void>;
}

/** The store cannot be used; the message names the file and what to do. */
export class StoreError extends Error {
  override readonly name = "StoreError";
}
