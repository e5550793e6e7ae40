import type { Message } from "grammy/types";
import { inlineKeyboard } from "../keyboards.ts";
import { fileFor, photoSizes } from "../media.ts";
import { asReply, isService, post, replace } from "../posting.ts";
import type { Methods } from "../protocol.ts";
import { knownRoom, may, messageIn, writableRoom } from "../reach.ts";
import { badRequest } from "../refusal.ts";
import type { Room } from "../rooms.ts";
import { caption, messageText } from "../text/formatted.ts";
import { botMember, botUser, unixTime, type World } from "../world.ts";

/** "A message can only be deleted if it was sent less than 48 hours ago" (Bot API, deleteMessage). */
const deletableForSeconds = 48 * 60 * 60;
const unchanged =
  "message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message";

/** Changes to messages that are already there. */
export const editingMethods = (
  world: World,
): Pick<
  Methods,
  "editMessageText" | "editMessageMedia" | "editMessageReplyMarkup" | "deleteMessage" | "pinChatMessage"
> => ({
  editMessageText(params) {
    const { room, message } = ownMessage(world, params);
    if (message.text === undefined) throw badRequest("there is no text in the message to edit");
    const { text, entities } = messageText({
      text: params.text,
      parseMode: params.parse_mode,
      entities: params.entities,
    });
    const { reply_markup: _, entities: __, ...kept } = message;
    const edited = {
      ...kept,
      text,
      ...(entities.length === 0 ? {} : { entities: [...entities] }),
      ...inlineKeyboard(params.reply_markup),
      edit_date: unixTime(world),
    };
    if (looks(edited) === looks(message)) throw badRequest(unchanged);
    return replace(world, room, edited);
  },

  editMessageMedia(params, { uploads }) {
    const { room, message } = ownMessage(world, params);
    if (message.photo === undefined) throw badRequest("there is no photo in the message to edit");
    const { media } = params;
    if (media?.type !== "photo")
      throw badRequest(`can't parse InputMedia: type ${media?.type} is not kept here`);
    const file = fileFor(world.files, "photo", "", media.media, uploads);
    const { reply_markup: _, caption: __, caption_entities: ___, ...kept } = message;
    const edited = {
      ...kept,
      photo: photoSizes(file),
      ...caption({ text: media.caption, parseMode: media.parse_mode, entities: media.caption_entities }),
      ...inlineKeyboard(params.reply_markup),
      edit_date: unixTime(world),
    };
    if (looks(edited) === looks(message)) throw badRequest(unchanged);
    return replace(world, room, edited);
  },

  editMessageReplyMarkup(params) {
    const { room, message } = ownMessage(world, params);
    const { reply_markup: _, ...kept } = message;
    const edited = { ...kept, ...inlineKeyboard(params.reply_markup), edit_date: unixTime(world) };
    if (looks(edited) === looks(message)) throw badRequest(unchanged);
    return replace(world, room, edited);
  },

  deleteMessage({ chat_id, message_id }) {
    const room = knownRoom(world, chat_id);
    const message = messageIn(room, message_id, "delete");
    const own = message.from?.id === world.bot.id || room.kind === "private";
    const allowed = own
      ? unixTime(world) - message.date < deletableForSeconds
      : room.kind === "group" && may(botMember(world, room), "can_delete_messages");
    if (!allowed) throw badRequest("message can't be deleted");
    room.messages.delete(message.message_id);
    world.changes.tell();
    return true;
  },

  pinChatMessage({ chat_id, message_id }) {
    const room = writableRoom(world, chat_id);
    const message = messageIn(room, message_id, "pin");
    if (isService(message)) throw badRequest("message can't be pinned");
    if (room.kind === "group" && !may(botMember(world, room), "can_pin_messages"))
      throw badRequest("not enough rights to manage pinned messages in the chat");
    if (!room.pinned.includes(message.message_id)) {
      room.pinned.push(message.message_id);
      const threadId = message.is_topic_message === true ? message.message_thread_id : undefined;
      post(world, room, { from: botUser(world), threadId, content: { pinned_message: asReply(message) } });
    }
    return true;
  },
});

interface Target {
  readonly chat_id?: number | string | undefined;
  readonly message_id?: number | undefined;
}

/** A message the bot wrote itself; others cannot be edited. Blocking does not prevent editing, leaving does. */
function ownMessage(world: World, { chat_id, message_id }: Target): { room: Room; message: Message } {
  const room = knownRoom(world, chat_id);
  const message = messageIn(room, message_id, "edit");
  if (message.from?.id !== world.bot.id || isService(message)) throw badRequest("message can't be edited");
  return { room, message };
}

const looks = ({ text, entities, photo, caption, caption_entities, reply_markup }: Message): string =>
  JSON.stringify([
    text ?? caption,
    entities ?? caption_entities ?? [],
    photo?.map(({ file_unique_id }) => file_unique_id),
    reply_markup ?? null,
  ]);
