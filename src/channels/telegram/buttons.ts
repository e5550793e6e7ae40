import type { CallbackQuery } from "grammy/types";
import { describe, failureOf } from "./failures.ts";
import type { Station } from "./station.ts";

/** Bot API, answerCallbackQuery: 0 to 200 characters. */
export const TOAST_CHARACTERS = 200;

/**
 * Ends the button's spinning, with a word if there is one. A press that is too old to be answered, or a line that
 * breaks, changes nothing: what the press did is told in the chat as well.
 */
export async function answerPress(
  { api, log }: Station,
  { id }: CallbackQuery,
  text: string,
  alert = false,
): Promise<void> {
  try {
    await api.answerCallbackQuery(
      id,
      text === "" ? {} : { text: text.slice(0, TOAST_CHARACTERS), show_alert: alert },
    );
  } catch (error) {
    if (failureOf(error).kind === "token") throw error;
    log.info({ failure: describe(error) }, "a press was not answered");
  }
}

/** Takes the buttons away from a message whose question is answered. */
export async function removeButtons({ api, log }: Station, chat: number, message: number): Promise<void> {
  try {
    await api.editMessageReplyMarkup(chat, message);
  } catch (error) {
    if (failureOf(error).kind === "token") throw error;
    log.info({ failure: describe(error) }, "buttons were not taken away");
  }
}
