import type { Message } from "grammy/types";
import type { Attachment } from "../../outgoing.ts";

/** Kinds of messages the bot can do nothing with; each has its own kind line. */
export const uselessKinds = ["voice", "video", "sticker", "location", "contact", "other"] as const;
export type UselessKind = (typeof uselessKinds)[number];

/** What a message holds, as far as the desk is concerned. */
export type Contents =
  | { readonly kind: "words"; readonly text: string }
  | { readonly kind: "file"; readonly file: Attachment; readonly caption: string }
  | { readonly kind: "useless"; readonly what: UselessKind }
  /** Written by Telegram itself: a pin, a timer, a new background. */
  | { readonly kind: "nothing" };

/** Fields of messages people send, in the order they are looked for: a venue is also a location. */
const useless: readonly (readonly [keyof Message, UselessKind])[] = [
  ["voice", "voice"],
  ["audio", "voice"],
  ["video", "video"],
  ["video_note", "video"],
  ["sticker", "sticker"],
  ["location", "location"],
  ["contact", "contact"],
  ["poll", "other"],
  ["dice", "other"],
  ["story", "other"],
  ["game", "other"],
  ["paid_media", "other"],
  ["checklist", "other"],
  ["invoice", "other"],
];

/** Looks at a message. */
export function contentsOf(message: Message): Contents {
  const { text, photo, document, animation, caption = "" } = message;
  if (text !== undefined) return { kind: "words", text };
  // The last size is the largest.
  const largest = photo?.at(-1);
  if (largest) return { kind: "file", file: { kind: "photo", ref: largest.file_id }, caption };
  // A moving picture also carries a document, which cannot be sent on as one.
  if (animation) return { kind: "useless", what: "video" };
  if (document) return { kind: "file", file: { kind: "file", ref: document.file_id }, caption };
  const found = useless.find(([field]) => message[field] !== undefined);
  return found ? { kind: "useless", what: found[1] } : { kind: "nothing" };
}

/** A command and what follows it; undefined for text that is none, or is meant for another bot. */
export function commandIn(
  text: string,
  botName: string,
): { readonly name: string; readonly forOther: boolean } | undefined {
  const [, name, addressee] = /^\/([A-Za-z0-9_]{1,32})(?:@(\w{1,40}))?(?=\s|$)/.exec(text) ?? [];
  if (name === undefined) return undefined;
  const forOther = addressee !== undefined && addressee.toLowerCase() !== botName.toLowerCase();
  return { name: name.toLowerCase(), forOther };
}
