import type { MessageEntity } from "grammy/types";

const patterns: readonly [MessageEntity.CommonMessageEntity["type"], RegExp][] = [
  ["bot_command", /(?<![\w/])\/[a-z0-9_]{1,32}(?:@[a-z0-9_]{4,32})?(?![\w/])/gi],
  ["mention", /(?<![\w/@])@[a-z0-9_]{4,32}(?!\w)/gi],
  ["url", /(?<!\S)https?:\/\/\S{1,2000}/gi],
];

/** Entities Telegram finds by itself in what a person types: commands, mentions and plain links. */
export function typedEntities(text: string): MessageEntity[] {
  return patterns
    .flatMap(([type, pattern]) =>
      [...text.matchAll(pattern)].map(
        (match): MessageEntity => ({ type, offset: match.index, length: match[0].length }),
      ),
    )
    .sort((a, b) => a.offset - b.offset);
}

/** True when the text is meant for this bot under privacy mode: a command of its own, or its name mentioned. */
export function addressesBot(text: string, entities: readonly MessageEntity[], username: string): boolean {
  return entities.some(({ type, offset, length }) => {
    const words = text.slice(offset, offset + length).toLowerCase();
    const name = `@${username.toLowerCase()}`;
    if (type === "mention") return words === name;
    return type === "bot_command" && (!words.includes("@") || words.endsWith(name));
  });
}
