import type { InboxItem } from "../store/store.ts";

/** At least one message of one thread, in the order they came. */
export type Items = readonly [InboxItem, ...InboxItem[]];

/** No message is kept longer than this; one that is, is cut, and the customer is told that only its start is read. */
export const KEPT_CHARACTERS = 64 * 1024;

export function cutToKeep(item: InboxItem): InboxItem {
  return item.text.length <= KEPT_CHARACTERS ? item : { ...item, text: item.text.slice(0, KEPT_CHARACTERS) };
}

/** Several messages as one: the last one's name and instant, the words of all. */
export function asOne(items: Items): InboxItem {
  const [first, ...more] = items;
  const last = more.at(-1);
  if (last === undefined) return first;
  const attachments = items.flatMap((item) => item.attachments ?? []);
  const { edited: _, ...plain } = last;
  return cutToKeep({
    ...plain,
    text: items.map(({ text }) => text).join("\n"),
    ...(attachments.length === 0 ? {} : { attachments }),
  });
}

/** The messages of each thread, threads in the order of their first one. */
export function byThread(items: readonly InboxItem[]): readonly Items[] {
  const threads = new Map<string, [InboxItem, ...InboxItem[]]>();
  for (const item of items) {
    const own = threads.get(item.threadId);
    if (own === undefined) threads.set(item.threadId, [item]);
    else own.push(item);
  }
  return [...threads.values()];
}
