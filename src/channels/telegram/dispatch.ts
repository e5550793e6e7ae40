import type { Update } from "grammy/types";
import type { Outgoing } from "../../outgoing.ts";
import { answerPress } from "./buttons.ts";
import { fromCustomer, pressedByCustomer } from "./customer.ts";
import { fromForeign } from "./foreign.ts";
import { messageOf } from "./intake.ts";
import { fromStaff, pressedByStaff } from "./staff.ts";
import type { Station } from "./station.ts";

/**
 * Sends what came in to whoever it is for: who wrote is settled by the chat's id, which Telegram sets, never by words.
 * Several updates come together for an album only.
 */
export async function dispatch(
  station: Station,
  updates: readonly [Update, ...Update[]],
): Promise<readonly Outgoing[]> {
  const [update] = updates;
  if (update.callback_query !== undefined) return pressed(station, update, update.callback_query);
  const { staff } = station;
  if (update.chat_member !== undefined) {
    if (update.chat_member.chat.id === staff?.id) staff.changed(update.chat_member.new_chat_member.user.id);
    return [];
  }
  const message = messageOf(update);
  const chat = (message ?? update.my_chat_member)?.chat;
  if (chat === undefined) return [];
  if (chat.type === "private") return message === undefined ? [] : fromCustomer(station, updates);
  if (staff === null || chat.id !== staff.id) {
    // The group's first word under its new id, after the old one has told of it.
    if (message?.migrate_from_chat_id !== undefined && message.migrate_from_chat_id === staff?.id)
      await staff.moveTo(chat.id);
    else await fromForeign(station, update, chat.id);
    return [];
  }
  if (message === undefined) {
    station.log.warn({}, "the bot's place in the staff group has changed");
    return [];
  }
  if (message.migrate_to_chat_id !== undefined) {
    await staff.moveTo(message.migrate_to_chat_id);
    return [];
  }
  for (const { id } of [
    ...(message.new_chat_members ?? []),
    ...(message.left_chat_member ? [message.left_chat_member] : []),
  ])
    staff.changed(id);
  return (await Promise.all(updates.map((each) => fromStaff(station, staff, each)))).flat();
}

async function pressed(
  station: Station,
  update: Update,
  query: NonNullable<Update["callback_query"]>,
): Promise<readonly Outgoing[]> {
  const { staff, onCall, wording } = station;
  const chat = query.message?.chat;
  if (staff !== null && chat !== undefined && (chat.id === staff.id || chat.id === onCall))
    if (chat.id === staff.id || isStaffButton(query.data))
      return pressedByStaff(station, staff, update, query);
  if (chat?.type === "private") return pressedByCustomer(station, update, query);
  await answerPress(station, query, wording.say("telegram", "button.nothing"));
  return [];
}

/** The person on call may also be a customer in the same chat: case numbers come first on a staff button. */
const isStaffButton = (data = ""): boolean => /^\d{1,9}\//.test(data);
