import type { Update } from "grammy/types";
import { describe, failureOf } from "./failures.ts";
import { threadIdOf } from "./refs.ts";
import { isIn } from "./staff-group.ts";
import type { Station } from "./station.ts";

/**
 * A group that is not the desk's: the bot says so and leaves. Before a staff group is configured it stays and tells
 * the group's id, once, so that the operator can configure it.
 */
export async function fromForeign(station: Station, update: Update, chatId: number): Promise<void> {
  const { api, log, staff, wording, nameOf } = station;
  const joined = update.my_chat_member !== undefined && isIn(update.my_chat_member.new_chat_member);
  if (update.my_chat_member !== undefined && !joined) return;
  // Of being added the bot is told twice; the change of membership is the one that counts.
  const spoken = update.message !== undefined && update.message.new_chat_members === undefined;
  if (!joined && (staff === null || !spoken)) return;
  const key = staff === null ? "foreign.setup" : "foreign.leaves";
  const text = wording.say("telegram", key, { id: chatId });
  await unlessShutOut(station, () => api.sendMessage(chatId, text));
  if (staff === null) return;
  await unlessShutOut(station, () => api.leaveChat(chatId));
  log.info({ group: nameOf(threadIdOf(chatId)) }, "left a group that is not the desk's");
}

/** A group that shuts the bot out has no need of it either. */
async function unlessShutOut({ log }: Station, call: () => Promise<unknown>): Promise<void> {
  try {
    await call();
  } catch (error) {
    const { kind } = failureOf(error);
    if (kind !== "shut-out" && kind !== "refused" && kind !== "moved") throw error;
    log.info({ failure: describe(error) }, "a group did not take a word or a goodbye");
  }
}
