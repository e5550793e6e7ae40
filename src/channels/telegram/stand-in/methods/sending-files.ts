import type { Message } from "grammy/types";
import { documentOf, fileFor, photoSizes } from "../media.ts";
import type { Methods } from "../protocol.ts";
import { badRequest } from "../refusal.ts";
import { caption } from "../text/formatted.ts";
import type { World } from "../world.ts";
import { placeFor, postByBot } from "./sending.ts";

type Album = Message.PhotoMessage | Message.DocumentMessage;

/** Photos, documents and albums of them, and what getFile answers. */
export const fileMethods = (
  world: World,
): Pick<Methods, "sendPhoto" | "sendDocument" | "sendMediaGroup" | "getFile"> => ({
  sendPhoto(params, { uploads }) {
    const place = placeFor(world, params);
    const words = captionOf(params);
    const file = fileFor(world.files, "photo", "photo", params.photo, uploads);
    return postByBot(world, place, { photo: photoSizes(file), ...words });
  },

  sendDocument(params, { uploads }) {
    const place = placeFor(world, params);
    const words = captionOf(params);
    const file = fileFor(world.files, "document", "document", params.document, uploads);
    return postByBot(world, place, { document: documentOf(file), ...words });
  },

  sendMediaGroup(params, { uploads }) {
    const place = placeFor(world, params);
    const media = Array.isArray(params.media) ? params.media : [];
    if (media.length > 10) throw badRequest("too many messages to send as an album");
    if (media.length < 2) throw badRequest("an album must include 2 to 10 items");
    // Everything is checked before anything is posted: an album arrives whole or not at all.
    const contents = media.map((item) => {
      const words = captionOf(item);
      if (item.type === "photo") {
        const file = fileFor(world.files, "photo", "", item.media, uploads);
        return { photo: photoSizes(file), ...words };
      }
      if (item.type !== "document")
        throw badRequest(`can't parse InputMedia: type ${item.type} is not kept here`);
      const file = fileFor(world.files, "document", "", item.media, uploads);
      return { document: documentOf(file), ...words };
    });
    const media_group_id = `bot-album-${world.lastSharedMessageId}-${place.room.messages.size}`;
    return contents.map((content): Album => postByBot(world, place, { ...content, media_group_id }));
  },

  getFile({ file_id = "" }) {
    return world.files.describe(file_id);
  },
});

type Captioned = Pick<Parameters<Methods["sendPhoto"]>[0], "caption" | "parse_mode" | "caption_entities">;

const captionOf = (params: Captioned) =>
  caption({ text: params.caption, parseMode: params.parse_mode, entities: params.caption_entities });
