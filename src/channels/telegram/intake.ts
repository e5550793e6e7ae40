import type { Message, Update } from "grammy/types";
import type { KeptUpdate } from "../../store/telegram.ts";
import { threadIdOf } from "./refs.ts";

/** The kinds of updates the channel works on; others are not even sent. */
export const wantedUpdates = [
  "message",
  "edited_message",
  "callback_query",
  "my_chat_member",
  "chat_member",
] as const satisfies readonly Exclude<keyof Update, "update_id">[];

/** An update as the store keeps it. Updates of one chat are handled in order. */
export function intakeOf(update: Update): Omit<KeptUpdate, "album"> {
  return { id: update.update_id, queue: queueOf(update), body: JSON.stringify(update) };
}

/** Reads a kept update again. */
export const updateOf = ({ body }: KeptUpdate): Update => JSON.parse(body) as Update;

/** The message of an update, new or edited. */
export const messageOf = (update: Update): Message | undefined => update.message ?? update.edited_message;

function queueOf(update: Update): string {
  const chat = (messageOf(update) ?? update.my_chat_member ?? update.chat_member)?.chat.id;
  const query = update.callback_query;
  const id = chat ?? query?.message?.chat.id ?? query?.from.id;
  return id === undefined ? "" : threadIdOf(id);
}

/**
 * The id under which the engine knows what came in: unique for ever. Telegram starts its update ids anew after a
 * quiet week, so the instant goes with it.
 */
export function itemIdOf(update: Update): string {
  const message = messageOf(update);
  const when = message?.edit_date ?? message?.date ?? update.callback_query?.id ?? "";
  return `telegram:${update.update_id}.${when}`;
}
