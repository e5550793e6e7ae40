import type { Pictured } from "./conversation/pictured.ts";

/** Where a message goes. Messages of one lane are delivered in order; lanes run side by side. */
export type Lane =
  | { readonly kind: "customer"; readonly threadId: string }
  /** The staff's own place for one case: a topic, or a message and its answers. The customer never sees it. */
  | { readonly kind: "case"; readonly caseId: number }
  /** All staff: the digest, alerts. */
  | { readonly kind: "desk" }
  /** The person called at any hour; danger only. */
  | { readonly kind: "on-call" };

/** A button. Pressing it comes back as its `id`; what that does is decided again at that moment. */
export interface Choice {
  /** At most 64 bytes. */
  readonly id: string;
  readonly label: string;
}

/** A picture or file by the channel's own reference; the bot does not look into it. */
export interface Attachment {
  readonly kind: "photo" | "file";
  readonly ref: string;
}

/** What a channel shows. */
export interface Content {
  /** Plain text: a channel escapes it for its own markup. */
  readonly text: string;
  readonly choices?: readonly Choice[];
  readonly attachments?: readonly Attachment[];
  /** A picture that helps with the text, where there is one and the channel can show it. */
  readonly picture?: Pictured;
}

/** A message on its way out. */
export interface Outgoing {
  readonly lane: Lane;
  readonly content: Content;
  /** A later message of the same lane and slot takes the place of the earlier one, where the channel can edit. */
  readonly slot?: "brief";
}

/** The name of a lane as one string: what the store orders and channels look lanes up by. */
export function laneKey(lane: Lane): string {
  switch (lane.kind) {
    case "customer":
      return `customer:${lane.threadId}`;
    case "case":
      return `case:${lane.caseId}`;
    case "desk":
    case "on-call":
      return lane.kind;
  }
}

/** Telegram's limit on what a button carries, and ours everywhere. */
export const CHOICE_ID_BYTES = 64;

/** True when a choice's id is short enough to be carried by every channel. */
export function fitsChoice(id: string): boolean {
  return new TextEncoder().encode(id).length <= CHOICE_ID_BYTES;
}

/** The lane of a {@link laneKey}. Throws on a key that is none: it was not written by us. */
export function laneOfKey(key: string): Lane {
  const colon = key.indexOf(":");
  const kind = colon < 0 ? key : key.slice(0, colon);
  const rest = key.slice(colon + 1);
  switch (kind) {
    case "customer":
      return { kind, threadId: rest };
    case "case":
      return { kind, caseId: Number(rest) };
    case "desk":
    case "on-call":
      return { kind };
    default:
      throw new Error(`"${key}" is no lane`);
  }
}
