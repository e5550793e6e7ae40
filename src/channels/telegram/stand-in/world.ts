import type { CallbackQuery, Chat, ChatMember, User, UserFromGetMe } from "grammy/types";
import { Changes } from "./changes.ts";
import { FileStore } from "./files.ts";
import { type GroupRoom, isIn, type PrivateRoom, privateRoom, type Room } from "./rooms.ts";
import { UpdateQueue } from "./updates.ts";

/** A button press waiting for `answerCallbackQuery`. */
export interface OpenQuery {
  readonly query: CallbackQuery;
  readonly pressedMs: number;
  answer?: { readonly text: string; readonly alert: boolean };
}

/** Commands the bot published, by scope and language. */
export type PublishedCommands = Map<
  string,
  readonly { readonly command: string; readonly description: string }[]
>;

/** Everything Telegram would know about this bot and the people around it. */
export interface World {
  /** Instant as ISO 8601 text. */
  readonly now: () => string;
  readonly bot: UserFromGetMe;
  readonly changes: Changes;
  readonly updates: UpdateQueue;
  readonly files: FileStore;
  readonly rooms: Map<number, Room>;
  readonly queries: Map<string, OpenQuery>;
  readonly commands: PublishedCommands;
  /** Private chats and basic groups of one account share a row of message numbers. */
  lastSharedMessageId: number;
  lastUserId: number;
  lastGroupNumber: number;
}

export interface BotDetails {
  readonly firstName?: string;
  readonly username?: string;
  /** Privacy mode off: the bot reads everything in groups where it is no administrator. */
  readonly readsAllGroupMessages?: boolean;
}

/** An empty world with one bot in it. The bot's identifier is the number before the colon of its token. */
export function emptyWorld(token: string, now: () => string, details: BotDetails = {}): World {
  const changes = new Changes();
  return {
    now,
    bot: {
      id: Number(token.slice(0, token.indexOf(":"))),
      is_bot: true,
      first_name: details.firstName ?? "Desk",
      username: details.username ?? "desk_stand_in_bot",
      can_join_groups: true,
      can_read_all_group_messages: details.readsAllGroupMessages ?? false,
      supports_inline_queries: false,
      can_connect_to_business: false,
      has_main_web_app: false,
      has_topics_enabled: false,
      allows_users_to_create_topics: false,
      can_manage_bots: false,
      supports_join_request_queries: false,
    },
    changes,
    updates: new UpdateQueue(() => Date.parse(now()), changes),
    files: new FileStore(),
    rooms: new Map(),
    queries: new Map(),
    commands: new Map(),
    lastSharedMessageId: 0,
    lastUserId: 500_000_000,
    lastGroupNumber: 1_000_000_000,
  };
}

/** Seconds since 1970, as the Bot API dates everything. */
export const unixTime = (world: World): number => Math.floor(Date.parse(world.now()) / 1000);

/** The bot as other people see it in messages. */
export function botUser(world: World): User {
  const { id, is_bot, first_name, username } = world.bot;
  return { id, is_bot, first_name, username };
}

/** Where the bot stands in a group. */
export function botMember(world: World, room: GroupRoom): ChatMember | undefined {
  return room.members.get(world.bot.id);
}

/** A person the world has not met before, with a private chat that is not open yet. */
export function newPerson(world: World, details: Omit<User, "id" | "is_bot">): PrivateRoom {
  world.lastUserId += 1;
  const room = privateRoom({ id: world.lastUserId, is_bot: false, ...details });
  world.rooms.set(room.chat.id, room);
  return room;
}

/** Next identifier for a group; supergroups have theirs below -10^12. */
export function newGroupId(world: World, type: Chat["type"]): number {
  world.lastGroupNumber += 1;
  return type === "supergroup" ? -1_000_000_000_000 - world.lastGroupNumber : -world.lastGroupNumber;
}

/** True when the bot shares a group with this person, and so may know them without a private chat. */
export function sharesGroup(world: World, userId: number): boolean {
  for (const room of world.rooms.values())
    if (room.kind === "group" && isIn(room.members.get(userId)) && isIn(botMember(world, room))) return true;
  return false;
}
