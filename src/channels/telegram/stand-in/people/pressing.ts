import type { CallbackQuery, InlineKeyboardButton, Message, User } from "grammy/types";
import { buttonRows } from "../keyboards.ts";
import type { Room } from "../rooms.ts";
import type { World } from "../world.ts";

/** A button pressed by somebody, and what the bot said to it. */
export interface Press {
  readonly queryId: string;
  /** The bot's answer to the press; `undefined` while the button still spins. */
  readonly answer: () => { readonly text: string; readonly alert: boolean } | undefined;
}

/**
 * The message and the data of a button, found by its label or its data on `on`, or on the latest message that has
 * it. Throws when no such button can be seen: a person could not press it either.
 */
export function findButton(
  room: Room,
  button: string,
  on: number | undefined,
): { message: Message; data: string } {
  const messages = on === undefined ? [...room.messages.values()].reverse() : [room.messages.get(on)];
  const labels: string[] = [];
  for (const message of messages) {
    if (message === undefined) continue;
    for (const candidate of buttonRows(message).flat()) {
      labels.push(candidate.text);
      const data = dataOf(candidate);
      if (data !== undefined && (candidate.text === button || data === button)) return { message, data };
    }
  }
  throw new Error(
    `There is no button "${button}" to press. Buttons in sight: ${labels.join(", ") || "none"}.`,
  );
}

/** Sends a press to the bot, as the app of this person would. */
export function sendPress(world: World, from: User, message: Message, data: string): Press {
  const queryId = String(4_000_000_000 + world.queries.size + 1);
  const query: CallbackQuery = {
    id: queryId,
    from,
    message,
    chat_instance: `instance${message.chat.id}`,
    data,
  };
  world.queries.set(queryId, { query, pressedMs: Date.parse(world.now()) });
  world.updates.add({ callback_query: query });
  return { queryId, answer: () => world.queries.get(queryId)?.answer };
}

const dataOf = (button: InlineKeyboardButton): string | undefined =>
  "callback_data" in button ? button.callback_data : undefined;
