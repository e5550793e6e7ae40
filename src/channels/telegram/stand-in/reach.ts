import type { ChatMember, Message } from "grammy/types";
import { badRequest, forbidden } from "./refusal.ts";
import { type GroupRoom, isIn, type PrivateRoom, type Room, type Topic } from "./rooms.ts";
import { botMember, sharesGroup, type World } from "./world.ts";

type ChatId = number | string | undefined;

/** The chat a call names, if the bot may know it. Throws Telegram's 400 or 403 otherwise. */
export function knownRoom(world: World, chatId: ChatId): Room {
  if (chatId === undefined || chatId === "") throw badRequest("chat_id is empty");
  const room = world.rooms.get(Number(chatId));
  if (room === undefined) throw badRequest("chat not found");
  if (room.kind === "private") return knownPerson(world, room);
  if (room.migratedTo !== undefined)
    throw badRequest("group chat was upgraded to a supergroup chat", { migrate_to_chat_id: room.migratedTo });
  const standing = botMember(world, room);
  if (standing === undefined) throw badRequest("chat not found");
  if (isIn(standing)) return room;
  const kind = `${room.chat.type} chat`;
  throw forbidden(
    standing.status === "kicked" ? `bot was kicked from the ${kind}` : `bot is not a member of the ${kind}`,
  );
}

function knownPerson(world: World, room: PrivateRoom): PrivateRoom {
  if (room.standing === "never wrote" && !sharesGroup(world, room.user.id))
    throw badRequest("chat not found");
  return room;
}

/** The chat a call wants to write to. Throws also when the person does not let the bot write. */
export function writableRoom(world: World, chatId: ChatId): Room {
  const room = knownRoom(world, chatId);
  if (room.kind === "group") return room;
  switch (room.standing) {
    case "open":
      return room;
    case "never wrote":
      throw forbidden("bot can't initiate conversation with a user");
    case "blocked the bot":
      throw forbidden("bot was blocked by the user");
    case "deleted the account":
      throw forbidden("user is deactivated");
  }
}

/** The topic a call writes to; `undefined` is the general one, or a chat without topics. */
export function writableThread(world: World, room: Room, threadId: number | undefined): number | undefined {
  if (threadId === undefined) return undefined;
  const topic = room.kind === "group" ? room.topics.get(threadId) : undefined;
  if (topic === undefined) throw badRequest("message thread not found");
  if (topic.closed && room.kind === "group" && !may(botMember(world, room), "can_manage_topics"))
    throw badRequest("TOPIC_CLOSED");
  return threadId;
}

/** A group call on topics: the forum and, with `threadId`, the topic. Throws when the bot lacks the right. */
export function forum(world: World, chatId: ChatId, doing: string): GroupRoom {
  const room = knownRoom(world, chatId);
  if (room.kind === "private" || room.chat.type !== "supergroup" || room.chat.is_forum !== true)
    throw badRequest("the chat is not a forum");
  if (!may(botMember(world, room), "can_manage_topics")) throw badRequest(`not enough rights to ${doing}`);
  return room;
}

/** The topic with this number. Throws a 400 when there is none. */
export function topicOf(room: GroupRoom, threadId: number | undefined): Topic {
  const topic = threadId === undefined ? undefined : room.topics.get(threadId);
  if (topic === undefined) throw badRequest("TOPIC_ID_INVALID");
  return topic;
}

/** A stored message. Throws a 400 that names what was meant to happen to it. */
export function messageIn(room: Room, messageId: number | undefined, purpose: string): Message {
  const message = messageId === undefined ? undefined : room.messages.get(messageId);
  if (message === undefined) throw badRequest(`message to ${purpose} not found`);
  return message;
}

/** True when the member is the owner, or an administrator with this right. */
export function may(
  member: ChatMember | undefined,
  right: "can_manage_topics" | "can_pin_messages" | "can_delete_messages",
): boolean {
  return member?.status === "creator" || (member?.status === "administrator" && member[right] === true);
}
