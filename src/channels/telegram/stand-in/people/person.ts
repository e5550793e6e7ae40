import type { ChatMember, Message } from "grammy/types";
import { kicked, member } from "../membership.ts";
import type { Content } from "../posting.ts";
import type { PrivateRoom } from "../rooms.ts";
import { botUser, unixTime, type World } from "../world.ts";
import { Speaker, type Where } from "./speaker.ts";

/** A person in their private chat with the bot. */
export class Person extends Speaker {
  constructor(
    world: World,
    private readonly room: PrivateRoom,
  ) {
    super(world, room.user, () => room);
  }

  get id(): number {
    return this.user.id;
  }

  /** Opens the chat as the app does: with the start command, and the payload of a link if there was one. */
  starts(payload?: string): Message {
    return this.says(payload === undefined ? "/start" : `/start ${payload}`);
  }

  /** Stops the bot: it is told, and every message to this person is refused with 403 from now on. */
  blocks(): void {
    this.changeStanding("blocked the bot");
  }

  unblocks(): void {
    this.changeStanding("open");
  }

  /** The account is gone. The bot learns of it from the next 403 only. */
  deletesAccount(): void {
    this.room.standing = "deleted the account";
    this.world.changes.tell();
  }

  protected override send<C extends Content>(content: C, where: Where): Message & C {
    if (this.room.standing === "deleted the account") throw new Error("A deleted account cannot write.");
    // Writing to a bot that was blocked unblocks it first, as the apps do.
    if (this.room.standing === "blocked the bot") this.unblocks();
    this.room.standing = "open";
    return super.send(content, where);
  }

  private changeStanding(standing: "open" | "blocked the bot"): void {
    if (this.room.standing === standing) return;
    this.room.standing = standing;
    const bot = botUser(this.world);
    const shut: ChatMember = kicked(bot);
    const open: ChatMember = member(bot);
    const blocked = standing === "blocked the bot";
    this.world.updates.add({
      my_chat_member: {
        chat: this.room.chat,
        from: this.user,
        date: unixTime(this.world),
        old_chat_member: blocked ? open : shut,
        new_chat_member: blocked ? shut : open,
      },
    });
  }
}
