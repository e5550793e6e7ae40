import type { Message } from "grammy/types";
import { type Content, isService } from "../posting.ts";
import type { Methods } from "../protocol.ts";
import { knownRoom, messageIn } from "../reach.ts";
import { badRequest } from "../refusal.ts";
import { caption } from "../text/formatted.ts";
import type { World } from "../world.ts";
import { placeFor, postByBot } from "./sending.ts";

/** Messages carried from one chat to another, with and without saying whose they were. */
export const copyingMethods = (world: World): Pick<Methods, "copyMessage" | "forwardMessage"> => ({
  copyMessage(params) {
    const place = placeFor(world, params);
    const source = messageIn(knownRoom(world, params.from_chat_id), params.message_id, "copy");
    if (isService(source)) throw badRequest("message can't be copied");
    const words =
      params.caption === undefined
        ? {}
        : caption({ text: params.caption, parseMode: params.parse_mode, entities: params.caption_entities });
    const { message_id } = postByBot(world, place, { ...contentOf(source), ...words });
    return { message_id };
  },

  forwardMessage(params) {
    const place = placeFor(world, params);
    const source = messageIn(knownRoom(world, params.from_chat_id), params.message_id, "forward");
    if (isService(source) || source.from === undefined) throw badRequest("message can't be forwarded");
    const origin = { type: "user" as const, sender_user: source.from, date: source.date };
    return postByBot(world, place, {
      ...contentOf(source),
      forward_origin: source.forward_origin ?? origin,
    });
  },
});

/** What a copy keeps: the words and files, not the place, the answer, the buttons or the album. */
function contentOf(message: Message): Content {
  const { text, entities, caption, caption_entities, photo, document, voice, sticker, location, contact } =
    message;
  return Object.fromEntries(
    Object.entries({
      text,
      entities,
      caption,
      caption_entities,
      photo,
      document,
      voice,
      sticker,
      location,
      contact,
    }).filter(([, value]) => value !== undefined),
  );
}
