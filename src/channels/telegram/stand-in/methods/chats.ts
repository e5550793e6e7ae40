import type { AcceptedGiftTypes, Message } from "grammy/types";
import { left } from "../membership.ts";
import type { Methods } from "../protocol.ts";
import { knownRoom } from "../reach.ts";
import { badRequest } from "../refusal.ts";
import type { Room } from "../rooms.ts";
import { botUser, unixTime, type World } from "../world.ts";

const noGifts: AcceptedGiftTypes = {
  unlimited_gifts: false,
  limited_gifts: false,
  unique_gifts: false,
  premium_subscription: false,
  gifts_from_channels: false,
};
/** Telegram forgets a press after a while; how long is not published, this figure is our own. */
const pressAnswerableMs = 15 * 60 * 1000;

/** Chats, members, published commands and answers to button presses. */
export const chatMethods = (
  world: World,
): Pick<
  Methods,
  "getMe" | "getChat" | "getChatMember" | "leaveChat" | "setMyCommands" | "answerCallbackQuery"
> => ({
  getMe: () => world.bot,

  getChat({ chat_id }) {
    const room = knownRoom(world, chat_id);
    const pinned = latestPinned(room);
    return {
      ...room.chat,
      accent_color_id: 0,
      max_reaction_count: 11,
      accepted_gift_types: noGifts,
      ...(pinned === undefined ? {} : { pinned_message: pinned }),
    };
  },

  getChatMember({ chat_id, user_id }) {
    const room = knownRoom(world, chat_id);
    const person = user_id === undefined ? undefined : world.rooms.get(user_id);
    if (room.kind === "private") {
      if (user_id === room.user.id) return { status: "member", user: room.user };
      if (user_id === world.bot.id) return { status: "member", user: botUser(world) };
      throw badRequest("member not found");
    }
    const found = user_id === undefined ? undefined : room.members.get(user_id);
    if (found !== undefined) return found;
    // A person known to Telegram who never was in the group counts as having left it.
    if (person?.kind === "private") return { status: "left", user: person.user };
    throw badRequest("invalid user_id specified");
  },

  leaveChat({ chat_id }) {
    const room = knownRoom(world, chat_id);
    const standing = room.kind === "group" ? room.members.get(world.bot.id) : undefined;
    if (room.kind === "private" || standing === undefined)
      throw badRequest("chat member status can't be changed in private chats");
    const from = botUser(world);
    room.members.set(from.id, left(from));
    world.updates.add({
      my_chat_member: {
        chat: room.chat,
        from,
        date: unixTime(world),
        old_chat_member: standing,
        new_chat_member: left(from),
      },
    });
    return true;
  },

  setMyCommands({ commands, scope, language_code }) {
    if (!Array.isArray(commands) || commands.length > 100) throw badRequest("BOT_COMMANDS_TOO_MUCH");
    for (const { command, description } of commands) {
      if (!/^[a-z0-9_]{1,32}$/.test(String(command))) throw badRequest("BOT_COMMAND_INVALID");
      const length = String(description ?? "").trim().length;
      if (length < 1 || length > 256) throw badRequest("BOT_COMMAND_DESCRIPTION_INVALID");
    }
    world.commands.set(
      `${JSON.stringify(scope ?? { type: "default" })} ${language_code ?? ""}`.trim(),
      commands,
    );
    return true;
  },

  answerCallbackQuery({ callback_query_id = "", text = "", show_alert = false }) {
    const open = world.queries.get(callback_query_id);
    const age = Date.parse(world.now()) - (open?.pressedMs ?? 0);
    if (open === undefined || open.answer !== undefined || age > pressAnswerableMs)
      throw badRequest("query is too old and response timeout expired or query ID is invalid");
    if (text.length > 200) throw badRequest("MESSAGE_TOO_LONG");
    open.answer = { text, alert: show_alert };
    world.changes.tell();
    return true;
  },
});

function latestPinned(room: Room): Message | undefined {
  const id = room.pinned.at(-1);
  return id === undefined ? undefined : room.messages.get(id);
}
