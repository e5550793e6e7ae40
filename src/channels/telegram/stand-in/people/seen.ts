import type { Message, MessageEntity } from "grammy/types";
import { buttonRows } from "../keyboards.ts";
import { isService } from "../posting.ts";
import type { Room } from "../rooms.ts";
import type { World } from "../world.ts";

/** Which kind of thing a message shows. */
export type SeenKind =
  | "text"
  | "photo"
  | "document"
  | "voice"
  | "sticker"
  | "location"
  | "contact"
  | "service";

/** A message as somebody in the chat sees it now: edits applied, deleted ones gone. */
export interface Seen {
  readonly message_id: number;
  readonly kind: SeenKind;
  /** First name of the sender. */
  readonly from: string;
  readonly byBot: boolean;
  /** The words: text, caption, or a line that says what happened for a service message. */
  readonly text: string;
  readonly entities: readonly MessageEntity[];
  /** Labels of the buttons, row by row. */
  readonly buttons: readonly (readonly string[])[];
  readonly edited: boolean;
  /** Instant it was sent, ISO 8601. */
  readonly at: string;
  /** Set when it is an answer to a message. */
  readonly replyTo?: number;
  readonly topic?: number;
  readonly album?: string;
  /** Identifier of the picture, for getFile; the largest size. */
  readonly file?: string;
  /** First name of whoever wrote it first, for a forward. */
  readonly forwardedFrom?: string;
}

/** Which part of a chat is looked at; `undefined` is all of it, "general" what stands outside every topic. */
export type Part = number | "general" | undefined;

/** Everything in a chat, or in one topic of it, in the order it was sent. */
export function seenIn(world: World, room: Room, topic: Part): Seen[] {
  return [...room.messages.values()]
    .filter(({ message_thread_id: thread, is_topic_message: inTopic }) => {
      if (topic === undefined) return true;
      return topic === "general" ? inTopic !== true : thread === topic;
    })
    .sort((a, b) => a.message_id - b.message_id)
    .map((message) => seen(world, message));
}

function seen(world: World, message: Message): Seen {
  const { reply_to_message: answered, forward_origin: origin } = message;
  // In a topic, what answers nothing points at the message that opened it; people do not see that as an answer.
  const opening =
    answered !== undefined && answered.message_id === message.message_thread_id && message.is_topic_message;
  return {
    message_id: message.message_id,
    kind: kindOf(message),
    from: message.from?.first_name ?? "",
    byBot: message.from?.id === world.bot.id,
    text: message.text ?? message.caption ?? serviceLine(message),
    entities: message.entities ?? message.caption_entities ?? [],
    buttons: buttonRows(message).map((row) => row.map(({ text }) => text)),
    edited: message.edit_date !== undefined,
    at: new Date(message.date * 1000).toISOString(),
    ...(answered === undefined || opening === true ? {} : { replyTo: answered.message_id }),
    ...(message.message_thread_id === undefined ? {} : { topic: message.message_thread_id }),
    ...(message.media_group_id === undefined ? {} : { album: message.media_group_id }),
    ...(message.photo === undefined ? {} : { file: message.photo.at(-1)?.file_id ?? "" }),
    ...(origin?.type === "user" ? { forwardedFrom: origin.sender_user.first_name } : {}),
  };
}

const contentKinds = ["photo", "document", "voice", "sticker", "location", "contact"] as const;

function kindOf(message: Message): SeenKind {
  if (isService(message)) return "service";
  return contentKinds.find((kind) => kind in message) ?? "text";
}

function serviceLine(message: Message): string {
  const names = message.new_chat_members?.map(({ first_name }) => first_name).join(", ");
  if (names !== undefined) return `joined: ${names}`;
  if (message.left_chat_member !== undefined) return `left: ${message.left_chat_member.first_name}`;
  if (message.forum_topic_created !== undefined) return `topic opened: ${message.forum_topic_created.name}`;
  if (message.forum_topic_edited !== undefined)
    return `topic named: ${message.forum_topic_edited.name ?? ""}`;
  if (message.forum_topic_closed !== undefined) return "topic closed";
  if (message.forum_topic_reopened !== undefined) return "topic reopened";
  if (message.pinned_message !== undefined) return `pinned: ${message.pinned_message.text ?? "a message"}`;
  if (message.migrate_to_chat_id !== undefined) return "became a supergroup";
  if (message.migrate_from_chat_id !== undefined) return "was a group";
  return "";
}
