import type { Outgoing } from "../outgoing.ts";

/** A platform update as it came in, kept until it is handled. */
export interface KeptUpdate {
  /** Telegram's `update_id`. */
  readonly id: number;
  /** Updates of one queue are handled in order; empty for those that belong to nobody. */
  readonly queue: string;
  /** The update as JSON. */
  readonly body: string;
  /** Set once the update was counted to an album: the id of the album's first update. */
  readonly album: number | null;
}

export interface ParkedUpdate {
  readonly id: number;
  readonly queue: string;
  readonly error: string;
  /** ISO instant it came in. */
  readonly at: string;
}

/** What the Telegram channel must not forget, beside inbox and outbox. */
export interface TelegramStore {
  /** Stores a batch in one transaction; gives those not seen before. Once it returns, they may be confirmed. */
  readonly keepUpdates: (
    updates: readonly Omit<KeptUpdate, "album">[],
    at: string,
  ) => Promise<readonly KeptUpdate[]>;
  /** Updates neither handled nor parked, oldest first. */
  readonly waitingUpdates: () => Promise<readonly KeptUpdate[]>;
  /** Counts updates to one album, so that they are handled as one also after a crash. */
  readonly joinAlbum: (ids: readonly number[], first: number) => Promise<void>;
  /** The updates are handled: their text is dropped, and what they led to is queued with that, once. */
  readonly finishUpdates: (
    ids: readonly number[],
    at: string,
    outgoing: readonly Outgoing[],
  ) => Promise<void>;
  /** An update that cannot be handled is kept apart with its error, and what is said about it is queued. */
  readonly parkUpdate: (
    id: number,
    error: string,
    at: string,
    outgoing: readonly Outgoing[],
  ) => Promise<void>;
  readonly parkedUpdates: () => Promise<readonly ParkedUpdate[]>;
  /** Removes ids of handled updates from before that ISO instant. Telegram itself keeps none for over 24 hours. */
  readonly forgetUpdates: (before: string) => Promise<void>;
  /** Keys of the lanes with messages that wait to be delivered, the one that has waited longest first. */
  readonly waitingLanes: () => Promise<readonly string[]>;
  /** Parks messages of the outbox and queues the word about them, once. */
  readonly parkAndTell: (
    ids: readonly number[],
    error: string,
    at: string,
    outgoing: readonly Outgoing[],
  ) => Promise<void>;
}
