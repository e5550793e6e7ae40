import { InputFile } from "grammy";
import type { Message } from "grammy/types";
import type { Pictured } from "../../conversation/pictured.ts";
import { pictureOf } from "../../pictures/picture-for.ts";
import { PictureError, renderPng } from "../../pictures/render.ts";
import { describe, failureOf } from "./failures.ts";
import type { Station } from "./station.ts";
import { fitText } from "./text.ts";

/** Bot API, sendPhoto: a caption of 0 to 1024 characters. */
const CAPTION_CHARACTERS = 1024;

/**
 * Sends the drawn picture, its caption saying what it shows for people who do not see it. The words after it stand by
 * themselves: a picture that cannot be drawn or is refused is left out rather than keeping them back.
 */
export async function sendPicture(
  { api, wording, log }: Station,
  chat: number,
  of: Pictured,
): Promise<readonly Message[]> {
  const picture = pictureOf(of, wording);
  if (picture === null) return [];
  try {
    const file = new InputFile(renderPng(picture), "picture.png");
    const caption = fitText(picture.alt, CAPTION_CHARACTERS);
    // The words come right after it: the phone buzzes once.
    return [await api.sendPhoto(chat, file, { caption, disable_notification: true })];
  } catch (error) {
    if (!(error instanceof PictureError) && failureOf(error).kind !== "refused") throw error;
    log.warn({ failure: describe(error) }, "a picture was left out");
    return [];
  }
}
