import type { ChatMember, Message, User } from "grammy/types";
import { administrator, type BotRights, kicked, left, member, owner } from "../membership.ts";
import { type Content, deliver, openTopic, post } from "../posting.ts";
import { type GroupRoom, groupRoom, isIn, type Topic } from "../rooms.ts";
import { botMember, botUser, newGroupId, unixTime, type World } from "../world.ts";
import { type Part, type Seen, seenIn } from "./seen.ts";
import { Speaker } from "./speaker.ts";

/** Anybody with an account. */
type Somebody = Pick<Speaker, "user">;

/** A group or supergroup, with or without topics. */
export class Group {
  constructor(
    private readonly world: World,
    private room: GroupRoom,
  ) {}

  get id(): number {
    return this.room.chat.id;
  }

  /** Somebody as a member of this group. Throws when they are not in it. */
  as({ user }: Somebody): Speaker {
    if (!isIn(this.room.members.get(user.id))) throw new Error(`${user.first_name} is not in this group.`);
    return new Speaker(this.world, user, () => this.room);
  }

  /** Puts somebody into the group before the story begins: nobody is told. */
  has(somebody: Somebody, as: "member" | "creator" = "member"): Speaker {
    const { user } = somebody;
    this.room.members.set(user.id, as === "creator" ? owner(user) : member(user));
    return this.as(somebody);
  }

  joins(somebody: Somebody): Speaker {
    const { user } = somebody;
    this.changeMember(user, user, member(user));
    this.announce(user, { new_chat_members: [user] });
    return this.as(somebody);
  }

  leaves({ user }: Somebody): void {
    this.announce(user, { left_chat_member: user });
    this.changeMember(user, user, left(user));
  }

  /** Throws somebody out. */
  removes({ user }: Somebody, by: Somebody): void {
    this.announce(by.user, { left_chat_member: user });
    this.changeMember(user, by.user, kicked(user));
  }

  /** Somebody drags the bot into the group, as a plain member. */
  addsBot(by: Somebody): void {
    const bot = botUser(this.world);
    this.changeBot(by.user, member(bot));
    this.announce(by.user, { new_chat_members: [bot] });
  }

  /** Makes the bot an administrator; rights not named are given. */
  promotesBot(by: Somebody, rights: BotRights = {}): void {
    this.changeBot(by.user, administrator(botUser(this.world), rights));
  }

  removesBot(by: Somebody): void {
    this.changeBot(by.user, kicked(botUser(this.world)));
  }

  /** A member opens a topic of their own. Returns its number. */
  opensTopic(by: Somebody, name: string): number {
    const message = openTopic(this.world, this.room, by.user, { name, icon_color: 0x6fb9f0 });
    deliver(this.world, this.room, message, "message");
    return message.message_id;
  }

  /**
   * The basic group becomes a supergroup: it gets another identifier, and calls with the old one are refused with
   * 400 and the new one.
   */
  upgrades(by: Somebody): void {
    const { room: old } = this;
    if (old.chat.type !== "group") throw new Error("Only a basic group can be upgraded.");
    const { title } = old.chat;
    const upgraded = groupRoom({ id: newGroupId(this.world, "supergroup"), type: "supergroup", title });
    for (const [id, standing] of old.members) upgraded.members.set(id, standing);
    this.world.rooms.set(upgraded.chat.id, upgraded);
    this.announce(by.user, { migrate_to_chat_id: upgraded.chat.id });
    old.migratedTo = upgraded.chat.id;
    this.room = upgraded;
    this.announce(by.user, { migrate_from_chat_id: old.chat.id });
  }

  /** Topics there are now. */
  topics(): readonly Readonly<Topic>[] {
    return [...this.room.topics.values()];
  }

  /** Everything in the group, or in one topic, in order. */
  sees(topic?: Part): Seen[] {
    return seenIn(this.world, this.room, topic);
  }

  private announce(from: User, content: Content): Message {
    const message = post(this.world, this.room, { from, content });
    deliver(this.world, this.room, message, "message");
    return message;
  }

  private changeBot(from: User, next: ChatMember): void {
    const change = this.memberChange(from, botMember(this.world, this.room), next);
    this.world.updates.add({ my_chat_member: change });
  }

  /** Bots hear of other members' changes as administrators only, and only on request. */
  private changeMember(user: User, from: User, next: ChatMember): void {
    const change = this.memberChange(from, this.room.members.get(user.id), next);
    if (botMember(this.world, this.room)?.status === "administrator")
      this.world.updates.add({ chat_member: change });
  }

  private memberChange(from: User, old: ChatMember | undefined, next: ChatMember) {
    this.room.members.set(next.user.id, next);
    this.world.changes.tell();
    return {
      chat: this.room.chat,
      from,
      date: unixTime(this.world),
      old_chat_member: old ?? left(next.user),
      new_chat_member: next,
    };
  }
}
