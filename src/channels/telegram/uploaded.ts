import { InputFile } from "grammy";
import type { Message } from "grammy/types";
import type { Picture } from "../../pictures/picture.ts";
import { contentKey, renderPng } from "../../pictures/render.ts";
import { failureOf } from "./failures.ts";
import { CHANNEL } from "./refs.ts";
import type { Station } from "./station.ts";

/**
 * Sends a picture by the identifier that Telegram gave it when it was uploaded before; uploads it the first time, and
 * when Telegram does not take the identifier any more. Identifiers are a bot's own (Bot API, "Sending files"). What
 * shows a customer's words is uploaded each time, and nothing of it is kept.
 */
export async function sendUploaded(
  { me, store }: Pick<Station, "me" | "store">,
  picture: Picture,
  send: (photo: string | InputFile) => Promise<Message.PhotoMessage>,
): Promise<Message.PhotoMessage> {
  const upload = () => send(asFile(picture));
  if (picture.personal) return upload();
  const account = `${CHANNEL}:${me.id}`;
  const key = contentKey(picture);
  const known = await store.sentPictures.find(account, key);
  if (known !== undefined) {
    try {
      return await send(known);
    } catch (error) {
      if (!isIdRefused(error)) throw error;
    }
  }
  const sent = await upload();
  const id = sent.photo.at(-1)?.file_id;
  if (id !== undefined) await store.sentPictures.keep(account, key, id);
  return sent;
}

/** The picture as a file to upload. Throws `PictureError` when it cannot be rendered. */
export const asFile = (picture: Picture): InputFile => new InputFile(renderPng(picture), "picture.png");

/** "wrong file identifier", "wrong remote file identifier specified: …", "FILE_REFERENCE_EXPIRED". */
function isIdRefused(error: unknown): boolean {
  const failure = failureOf(error);
  return failure.kind === "refused" && /file[ _](?:id|reference)/i.test(failure.description);
}
