import type { ForumTopicCreated, Message, MessageEntity, User } from "grammy/types";
import { type GroupRoom, isIn, type Room } from "./rooms.ts";
import { addressesBot } from "./text/typed-entities.ts";
import { botMember, unixTime, type World } from "./world.ts";

/** What a message holds besides who, where and when. */
export type Content = Partial<Omit<Message, "message_id" | "date" | "chat" | "from">>;
type Outside<T> = T & { readonly message_id: number };

export interface Posting<C extends Content> {
  readonly from: User;
  readonly content: C;
  readonly threadId?: number | undefined;
  readonly replyTo?: Message | undefined;
}

/** Stores a message in a room and returns it; nobody is told yet. */
export function post<C extends Content>(
  world: World,
  room: Room,
  { from, content, threadId, replyTo }: Posting<C>,
): Message & Outside<C> {
  const message = {
    message_id: nextMessageId(world, room),
    date: unixTime(world),
    chat: room.chat,
    from,
    ...threadOf(room, threadId, replyTo),
    ...content,
  };
  room.messages.set(message.message_id, message);
  world.changes.tell();
  return message;
}

/** Puts a new version in the place of a stored message. */
export function replace<M extends Message>(world: World, room: Room, message: M): M {
  room.messages.set(message.message_id, message);
  world.changes.tell();
  return message;
}

/** Tells the bot about a person's message, if a bot in its position gets to see it. */
export function deliver(
  world: World,
  room: Room,
  message: Message,
  kind: "message" | "edited_message",
): void {
  const { chat, from } = message;
  if (from === undefined || chat.type === "channel" || !reachesBot(world, room, message)) return;
  const shared = { ...message, chat, from };
  if (kind === "message") world.updates.add({ message: shared });
  else world.updates.add({ edited_message: { ...shared, edit_date: unixTime(world) } });
}

/**
 * Privacy mode: where the bot is no administrator it sees commands, mentions, answers to its own messages and
 * service messages (Bot API, "Privacy mode").
 */
function reachesBot(world: World, room: Room, message: Message): boolean {
  if (room.kind === "private") return room.standing === "open";
  const standing = botMember(world, room);
  if (!isIn(standing)) return false;
  if (standing?.status === "administrator" || world.bot.can_read_all_group_messages) return true;
  if (isService(message) || message.reply_to_message?.from?.id === world.bot.id) return true;
  const entities: readonly MessageEntity[] = message.entities ?? message.caption_entities ?? [];
  return addressesBot(message.text ?? message.caption ?? "", entities, world.bot.username);
}

const serviceFields = [
  "new_chat_members",
  "left_chat_member",
  "forum_topic_created",
  "forum_topic_edited",
  "forum_topic_closed",
  "forum_topic_reopened",
  "pinned_message",
  "migrate_to_chat_id",
  "migrate_from_chat_id",
] as const satisfies readonly (keyof Message)[];

/** True for messages Telegram writes itself: joins, topics, pins, upgrades. */
export const isService = (message: Message): boolean => serviceFields.some((field) => field in message);

/**
 * The message as it appears inside another one: without the one it answers itself. The cast stands because the
 * library's type asks for a field that is present and `undefined`, which JSON cannot carry.
 */
export function asReply({ reply_to_message: _, ...message }: Message): ReplyMessage {
  return message as ReplyMessage;
}

type ReplyMessage = NonNullable<Message["reply_to_message"]>;
type Thread = Pick<Message, "message_thread_id" | "is_topic_message" | "reply_to_message">;

/**
 * Thread fields as Telegram sets them. In a forum topic a message that answers nothing still carries
 * `reply_to_message`: the service message that opened the topic. In other supergroups an answer carries the
 * thread it belongs to, without being a topic message.
 */
function threadOf(room: Room, threadId: number | undefined, replyTo: Message | undefined): Thread {
  const reply = replyTo === undefined ? {} : { reply_to_message: asReply(replyTo) };
  if (room.kind === "private" || room.chat.type !== "supergroup") return reply;
  if (room.chat.is_forum === true) {
    if (threadId === undefined) return reply;
    const root = room.messages.get(threadId);
    return {
      message_thread_id: threadId,
      is_topic_message: true,
      ...(root === undefined ? {} : { reply_to_message: asReply(root) }),
      ...reply,
    };
  }
  return replyTo === undefined
    ? {}
    : { message_thread_id: replyTo.message_thread_id ?? replyTo.message_id, ...reply };
}

/** Opens a topic: its identifier is the number of the service message that announces it. */
export function openTopic(
  world: World,
  room: GroupRoom,
  from: User,
  topic: Pick<ForumTopicCreated, "name" | "icon_color">,
): Message {
  const threadId = room.lastMessageId + 1;
  const message = post(world, room, { from, threadId, content: { forum_topic_created: topic } });
  room.topics.set(threadId, { threadId, name: topic.name, iconColor: topic.icon_color, closed: false });
  return message;
}

function nextMessageId(world: World, room: Room): number {
  if (room.kind === "group" && room.chat.type === "supergroup") {
    room.lastMessageId += 1;
    return room.lastMessageId;
  }
  world.lastSharedMessageId += 1;
  return world.lastSharedMessageId;
}
