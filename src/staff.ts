/** Somebody of the shop's staff, as the channel knows them. */
export interface StaffMember {
  /** The channel's own id, prefixed with the channel: who it is never rests on what a message claims. */
  readonly id: string;
  /** Shown to colleagues and to the customer. */
  readonly name: string;
}
