import type { Message } from "grammy/types";
import type { Pictured } from "../../conversation/pictured.ts";
import { picturesOf } from "../../pictures/picture-for.ts";
import { PictureError } from "../../pictures/render.ts";
import { describe, failureOf } from "./failures.ts";
import type { Station } from "./station.ts";
import { fitText } from "./text.ts";
import { sendUploaded } from "./uploaded.ts";

/** Bot API, sendPhoto: a caption of 0 to 1024 characters. */
const CAPTION_CHARACTERS = 1024;

/**
 * Sends what is drawn, each caption saying what the picture shows for people who do not see it. The words after it stand
 * by themselves.
 */
export async function sendPictures(
  station: Station,
  chat: number,
  of: Pictured,
): Promise<readonly Message[]> {
  const sent: Message[] = [];
  for (const picture of picturesOf(of, station.wording)) {
    const caption = fitText(picture.alt, CAPTION_CHARACTERS);
    // The words come right after it: the phone buzzes once.
    const quietly = { caption, disable_notification: true } as const;
    const message = await unlessRefused(station, () =>
      sendUploaded(station, picture, (photo) => station.api.sendPhoto(chat, photo, quietly)),
    );
    if (message !== undefined) sent.push(message);
  }
  return sent;
}

/** What `show` gives; undefined for a picture that cannot be drawn or is refused: it is left out and keeps nothing back. */
export async function unlessRefused<T>({ log }: Station, show: () => Promise<T>): Promise<T | undefined> {
  try {
    return await show();
  } catch (error) {
    if (!(error instanceof PictureError) && failureOf(error).kind !== "refused") throw error;
    log.warn({ failure: describe(error) }, "a picture was left out");
    return undefined;
  }
}
