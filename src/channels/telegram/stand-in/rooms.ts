import type { Chat, ChatMember, Message, User } from "grammy/types";

/** How the person of a private chat stands with the bot. */
export type Standing = "never wrote" | "open" | "blocked the bot" | "deleted the account";

/** What every kind of chat keeps. Messages are replaced, never changed, so updates already queued stay as they were. */
interface Kept {
  readonly messages: Map<number, Message>;
  readonly pinned: number[];
}

export interface PrivateRoom extends Kept {
  readonly kind: "private";
  readonly chat: Chat.PrivateChat;
  readonly user: User;
  standing: Standing;
}

export interface Topic {
  readonly threadId: number;
  name: string;
  readonly iconColor: number;
  closed: boolean;
}

export interface GroupRoom extends Kept {
  readonly kind: "group";
  readonly chat: Chat.GroupChat | Chat.SupergroupChat;
  /** Everyone who is or was a member, the bot included. */
  readonly members: Map<number, ChatMember>;
  /** Empty unless the group is a forum. */
  readonly topics: Map<number, Topic>;
  /** Set once a basic group has become a supergroup: the old identifier answers with the new one. */
  migratedTo?: number;
  lastMessageId: number;
}

export type Room = PrivateRoom | GroupRoom;

/** A private chat; its identifier is the person's. */
export function privateRoom(user: User): PrivateRoom {
  const { id, first_name, last_name, username } = user;
  return {
    kind: "private",
    chat: {
      id,
      type: "private",
      first_name,
      ...(last_name === undefined ? {} : { last_name }),
      ...(username === undefined ? {} : { username }),
    },
    user,
    standing: "never wrote",
    messages: new Map(),
    pinned: [],
  };
}

/** A group nobody has joined yet. */
export function groupRoom(chat: Chat.GroupChat | Chat.SupergroupChat): GroupRoom {
  return {
    kind: "group",
    chat,
    members: new Map(),
    topics: new Map(),
    messages: new Map(),
    pinned: [],
    lastMessageId: 0,
  };
}

/** True while the member is in the group (restricted members may or may not be). */
export function isIn(member: ChatMember | undefined): boolean {
  if (member === undefined) return false;
  return member.status === "restricted"
    ? member.is_member
    : member.status !== "left" && member.status !== "kicked";
}
