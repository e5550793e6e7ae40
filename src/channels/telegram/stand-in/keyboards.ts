import type { InlineKeyboardButton, InlineKeyboardMarkup, Message } from "grammy/types";
import { badRequest } from "./refusal.ts";

/** Bot API, InlineKeyboardButton: `callback_data` is 1 to 64 bytes. */
const callbackDataLimitBytes = 64;
const buttonsLimit = 100;

/**
 * The inline keyboard of a call, if it has one; other kinds of keyboard are not kept with the message.
 * Throws a 400 when a button is not one.
 */
export function inlineKeyboard(markup: object | undefined): { reply_markup?: InlineKeyboardMarkup } {
  if (markup === undefined || !("inline_keyboard" in markup)) return {};
  const rows: unknown = markup.inline_keyboard;
  if (!Array.isArray(rows) || !rows.every(Array.isArray))
    throw badRequest('field "inline_keyboard" of the InlineKeyboardMarkup should be an Array of Arrays');
  const buttons: unknown[] = rows.flat();
  if (buttons.length > buttonsLimit) throw badRequest("reply markup is too long");
  for (const button of buttons) checkButton(button);
  const filled = (rows as InlineKeyboardButton[][]).filter((row) => row.length > 0);
  return filled.length === 0 ? {} : { reply_markup: { inline_keyboard: filled } };
}

function checkButton(button: unknown): void {
  if (typeof button !== "object" || button === null)
    throw badRequest("can't parse inline keyboard button: InlineKeyboardButton must be an Object");
  const { text, callback_data: data, ...rest } = button as Record<string, unknown>;
  if (typeof text !== "string" || text.trim() === "")
    throw badRequest('can\'t parse inline keyboard button: Field "text" must be of type String');
  if (data === undefined) {
    if (Object.keys(rest).length === 0)
      throw badRequest(
        "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
      );
    return;
  }
  const bytes = typeof data === "string" ? Buffer.byteLength(data) : 0;
  if (bytes < 1 || bytes > callbackDataLimitBytes) throw badRequest("BUTTON_DATA_INVALID");
}

/** Buttons of a message, row by row. */
export const buttonRows = (message: Message): readonly InlineKeyboardButton[][] =>
  message.reply_markup?.inline_keyboard ?? [];
