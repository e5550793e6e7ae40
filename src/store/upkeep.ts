import type { StoredThread } from "./store.ts";

/** How much there is and how much waits. */
export interface Counts {
  readonly threads: number;
  /** Messages received but not handled. */
  readonly unhandled: number;
  readonly outboxWaiting: number;
  /** ISO instant of the oldest message that waits to be delivered. */
  readonly oldestWaiting: string | null;
  readonly outboxParked: number;
  readonly updatesWaiting: number;
  readonly updatesParked: number;
  /** Cases that wait for a person, by urgency. */
  readonly casesWaiting: Readonly<Record<string, number>>;
  readonly casesOpen: number;
}

/** A thread that may be erased for its age. */
export interface QuietThread extends Pick<StoredThread, "version"> {
  readonly id: string;
}

/** Everything kept of one customer, as plain values; what is stored as JSON is given as what it says. */
export interface CustomerData {
  readonly thread: unknown;
  readonly received: readonly unknown[];
  readonly sent: readonly unknown[];
  readonly cases: readonly unknown[];
  readonly places: readonly unknown[];
}

/** What keeps the store in order, beside the daily work. */
export interface UpkeepStore {
  /** A secret of this installation, made with the store: customers' names in the log are made with it. */
  readonly installationKey: () => Promise<string>;
  readonly counts: () => Promise<Counts>;
  /** Threads without a case that is not closed, last changed before that ISO instant, at most `limit`. */
  readonly quietThreads: (before: string, limit: number) => Promise<readonly QuietThread[]>;
  /** Removes ids, answers and messages from before that ISO instant that belong to no thread any more. */
  readonly forgetLoose: (before: string) => Promise<void>;
  /** Messages that would wait beyond that ISO instant are tried at once: the clock was wrong when they were postponed. */
  readonly retryBy: (latest: string) => Promise<void>;
  /** A small value kept under a name; undefined when there is none. */
  readonly note: (name: string) => Promise<string | undefined>;
  readonly keepNote: (name: string, value: string) => Promise<void>;
  /** Undefined when nothing is kept of that thread. */
  readonly customerData: (threadId: string) => Promise<CustomerData | undefined>;
}
