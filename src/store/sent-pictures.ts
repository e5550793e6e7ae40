/** What a channel calls pictures of ours that it has taken once, so that they need not be uploaded again. */
export interface SentPictures {
  /** The channel's name for a picture as one account of ours knows it; undefined when that never sent it. */
  readonly find: (account: string, picture: string) => Promise<string | undefined>;
  /** A later name takes the place of an earlier one. */
  readonly keep: (account: string, picture: string, name: string) => Promise<void>;
}
