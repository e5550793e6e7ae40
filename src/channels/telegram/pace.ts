/** How long the channel waits for what; milliseconds unless the name says otherwise. */
export interface Pace {
  /** How long Telegram holds a request for updates open when there are none. */
  readonly pollSeconds: number;
  /** A call without an answer is given up after that; must be above {@link pollSeconds}. */
  readonly callTimeoutSeconds: number;
  /** Work longer than this shows "typing". */
  readonly typingAfter: number;
  /** The rest of an album arrives within this time of its last picture. */
  readonly albumGap: number;
  readonly tickEvery: number;
  /** The first wait after a failure; each further one doubles it. */
  readonly firstRetry: number;
  readonly longestRetry: number;
  /** A membership that was looked up counts for this long. */
  readonly membershipKept: number;
  /** Customers written to at the same time: as many messages a crash can repeat, and more than Telegram takes a second. */
  readonly lanesAtOnce: number;
  /** Cases shown to staff at the same time; they are one chat, which Telegram lets grow slowly. */
  readonly casesAtOnce: number;
  /** Chats handled at the same time. */
  readonly chatsAtOnce: number;
  /** What is under way when the desk is told to stop may take this long. */
  readonly stopWithin: number;
}

export const usualPace: Pace = {
  pollSeconds: 30,
  callTimeoutSeconds: 45,
  typingAfter: 500,
  albumGap: 1200,
  tickEvery: 10_000,
  firstRetry: 1000,
  longestRetry: 60_000,
  membershipKept: 60_000,
  lanesAtOnce: 8,
  casesAtOnce: 3,
  chatsAtOnce: 16,
  stopWithin: 8000,
};

/** The wait before the next attempt after `failures` of them. */
export function backoff({ firstRetry, longestRetry }: Pace, failures: number): number {
  return Math.min(firstRetry * 2 ** Math.min(failures, 16), longestRetry);
}
