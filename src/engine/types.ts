import type { Catalogue } from "../catalogue/types.ts";
import type { Assessment } from "../conversation/assess.ts";
import type { Shop } from "../conversation/knowledge.ts";
import type { Thread } from "../conversation/thread.ts";
import type { Understand } from "../conversation/understand.ts";
import type { Wording } from "../conversation/wording.ts";
import type { Act } from "../desk/acts/act.ts";
import type { DeskHours } from "../desk/hours.ts";
import type { Choice, Content } from "../outgoing.ts";
import type { StaffMember } from "../staff.ts";
import type { InboxItem, Store } from "../store/store.ts";
import type { Limits } from "./limits.ts";

/** What the engine is built from; none of it changes while a message is handled. */
export interface EngineParts {
  readonly store: Store;
  readonly understand: Understand;
  readonly wording: Wording;
  /** The shop's stock as it now is: another object whenever it has changed. The engine adds the numbers on record. */
  readonly catalogue: () => Catalogue | Promise<Catalogue>;
  readonly shop: Shop;
  readonly hours: DeskHours;
  /** More messages a minute than these wait and are read together; unlimited when absent. */
  readonly limits?: Limits;
  /** Threads without activity are erased after that many days; never when absent or null. */
  readonly keepDays?: number | null;
  /** Told of a message or act that made the code throw; must not throw itself. */
  readonly onTrouble: (item: Pick<InboxItem, "id" | "threadId">, error: unknown) => void;
}

/** What one message led to. Its replies wait in the store's outbox; here they are for callers that script. */
export interface Handled {
  readonly replies: readonly string[];
  readonly thread: Thread;
  /** Null when the message was seen before or could not be handled. */
  readonly assessment: Assessment | null;
}

/** An act as it came in. */
export interface StaffItem {
  /** Unique for ever, like {@link InboxItem.id}: an act that comes twice is done once and answered alike. */
  readonly id: string;
  readonly caseId: number;
  readonly act: Act;
  /** Whom the channel has seen act; the channel has checked that this person is staff. */
  readonly by: StaffMember;
  /** ISO instant. */
  readonly at: string;
}

export interface StaffAnswer {
  /** False when the act was refused: nothing has changed. */
  readonly done: boolean;
  /** For the one who acted. Not in the outbox: shown at once, where the act was made. */
  readonly answer: string;
  /** What that person may want to do next; none when an act that came twice is answered again. */
  readonly choices?: readonly Choice[];
}

/** One message, one act, one tick: one transaction each. Those of one customer run one after the other. */
export interface Engine {
  /** Takes one customer's message through store, conversation and back; one seen before changes nothing. */
  readonly handle: (item: InboxItem) => Promise<Handled>;
  /** One act of staff on one case. */
  readonly staff: (item: StaffItem) => Promise<StaffAnswer>;
  /** Does what time alone brings (digest, late word, second alert); gives the number of messages queued. */
  readonly tick: (at: string) => Promise<number>;
  /** What waits, most urgent first, each with a choice that takes it. */
  readonly waiting: (at: string) => Promise<Content>;
  /** A case's brief and history, with the choices it has now; undefined when there is none. */
  readonly show: (caseId: number, at: string) => Promise<Content | undefined>;
  /** Handles what was received but not finished before a crash. */
  readonly catchUp: () => Promise<number>;
  readonly thread: (threadId: string) => Promise<Thread>;
}
