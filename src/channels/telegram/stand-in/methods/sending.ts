import type { InlineKeyboardMarkup, Message, ReplyParameters } from "grammy/types";
import { inlineKeyboard } from "../keyboards.ts";
import { type Content, post } from "../posting.ts";
import type { Methods } from "../protocol.ts";
import { writableRoom, writableThread } from "../reach.ts";
import { badRequest } from "../refusal.ts";
import type { Room } from "../rooms.ts";
import { messageText } from "../text/formatted.ts";
import { botUser, type World } from "../world.ts";

/** Where a message goes and what it answers; shared by every sending method. */
interface Destination {
  readonly chat_id?: number | string | undefined;
  readonly message_thread_id?: number | undefined;
  readonly reply_parameters?: Pick<ReplyParameters, "message_id" | "allow_sending_without_reply"> | undefined;
  readonly reply_to_message_id?: number | undefined;
  readonly reply_markup?: object | undefined;
}

/** A place checked for writing: later posts into it cannot fail. */
export interface Place {
  readonly room: Room;
  readonly threadId: number | undefined;
  readonly replyTo: Message | undefined;
  readonly keyboard: { reply_markup?: InlineKeyboardMarkup };
}

/** Checks everything about a call except its content. Throws Telegram's refusal. */
export function placeFor(world: World, params: Destination): Place {
  const room = writableRoom(world, params.chat_id);
  const threadId = writableThread(world, room, params.message_thread_id);
  const keyboard = inlineKeyboard(params.reply_markup);
  const replyId = params.reply_parameters?.message_id ?? params.reply_to_message_id;
  const replyTo = replyId === undefined ? undefined : room.messages.get(replyId);
  const mustExist = params.reply_parameters?.allow_sending_without_reply !== true;
  if (replyId !== undefined && replyTo === undefined && mustExist)
    throw badRequest("message to be replied not found");
  // An answer inside a topic stays in that topic, also when the call does not name it.
  return { room, threadId: threadId ?? topicOfReply(replyTo), replyTo, keyboard };
}

const topicOfReply = (replyTo: Message | undefined): number | undefined =>
  replyTo?.is_topic_message === true ? replyTo.message_thread_id : undefined;

/** Stores a message of the bot. */
export const postByBot = <C extends Content>(world: World, place: Place, content: C): Message & C =>
  post(world, place.room, {
    from: botUser(world),
    threadId: place.threadId,
    replyTo: place.replyTo,
    content: { ...content, ...place.keyboard },
  });

/** Text messages and the "typing" line. */
export const sendingMethods = (world: World): Pick<Methods, "sendMessage" | "sendChatAction"> => ({
  sendMessage(params) {
    const { text, parse_mode, entities } = params;
    if (text === undefined || text === "") throw badRequest("message text is empty");
    const place = placeFor(world, params);
    const formatted = messageText({ text, parseMode: parse_mode, entities });
    return postByBot(world, place, {
      text: formatted.text,
      ...(formatted.entities.length === 0 ? {} : { entities: [...formatted.entities] }),
    });
  },

  sendChatAction({ chat_id, message_thread_id, action }) {
    const room = writableRoom(world, chat_id);
    writableThread(world, room, message_thread_id);
    if (action === undefined || !chatActions.has(action))
      throw badRequest("wrong parameter action in request");
    return true;
  },
});

const chatActions: ReadonlySet<string> = new Set([
  "typing",
  "upload_photo",
  "record_video",
  "upload_video",
  "record_voice",
  "upload_voice",
  "upload_document",
  "choose_sticker",
  "find_location",
  "record_video_note",
  "upload_video_note",
]);
