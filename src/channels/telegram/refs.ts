/** Name of this channel in the store. */
export const CHANNEL = "telegram";

/** The thread of a private chat. */
export const threadIdOf = (chatId: number): string => `${CHANNEL}:${chatId}`;

/** The private chat of a thread; undefined for threads of other channels. */
export function chatIdOf(threadId: string): number | undefined {
  const [, digits] = /^telegram:(-?\d{1,16})$/.exec(threadId) ?? [];
  return digits === undefined ? undefined : Number(digits);
}

/** A topic, as the store remembers it. The group is part of it: numbers change when a group is upgraded. */
export const topicRef = (groupId: number, topic: number): string => `${groupId}/topic/${topic}`;

/** A message, as the store remembers it. */
export const messageRef = (groupId: number, message: number): string => `${groupId}/message/${message}`;

/** The number in a reference made by the functions above, if it belongs to this group. */
export function numberIn(ref: string, groupId: number): number | undefined {
  const [, group, number] = /^(-?\d+)\/(?:topic|message)\/(\d+)$/.exec(ref) ?? [];
  return group !== undefined && Number(group) === groupId ? Number(number) : undefined;
}

/** How a staff member is known to the desk. */
export const staffIdOf = (userId: number): string => `${CHANNEL}:${userId}`;
