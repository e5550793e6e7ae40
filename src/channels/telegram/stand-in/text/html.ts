import type { MessageEntity } from "grammy/types";
import { badRequest } from "../refusal.ts";
import { decodeCharacter, type FailAt, readStartTag, type StartTag } from "./html-tags.ts";

export interface FormattedText {
  readonly text: string;
  readonly entities: readonly MessageEntity[];
}

/**
 * Text and entities of a message in Telegram's HTML style (Bot API, "HTML style"). Throws a 400 with Telegram's
 * description when a tag is unknown, unclosed or closed out of order; offsets are in UTF-8 bytes, as Telegram's.
 */
export function parseHtml(source: string): FormattedText {
  const open: { tag: StartTag; offset: number }[] = [];
  const entities: MessageEntity[] = [];
  let text = "";
  let at = 0;
  const fail: FailAt = (what, position, after = "") => {
    const bytes = Buffer.byteLength(source.slice(0, position));
    throw badRequest(`can't parse entities: ${what} at byte offset ${bytes}${after}`);
  };

  while (at < source.length) {
    const character = source.charAt(at);
    if (character === "&") {
      const decoded = decodeCharacter(source, at);
      text += decoded.character;
      at = decoded.next;
    } else if (character !== "<") {
      text += character;
      at += 1;
    } else if (source.charAt(at + 1) === "/") {
      const begin = at;
      const innermost = open.pop() ?? fail("Unexpected end tag", begin);
      at += 2;
      while (at < source.length && !/[\s>]/.test(source.charAt(at))) at += 1;
      const name = source.slice(begin + 2, at).toLowerCase();
      while (/\s/.test(source.charAt(at))) at += 1;
      if (source.charAt(at) !== ">") fail("Unclosed end tag", begin);
      const expected = innermost.tag.name;
      if (name !== "" && name !== expected)
        fail("Unmatched end tag", begin, `, expected "</${expected}>", found "</${name}>"`);
      at += 1;
      const length = text.length - innermost.offset;
      const entity = innermost.tag.entity(innermost.offset, length, text.slice(innermost.offset));
      if (entity !== undefined && length > 0) entities.push(entity);
    } else {
      const tag = readStartTag(source, at, fail);
      open.push({ tag, offset: text.length });
      at = tag.next;
    }
  }
  const unclosed = open.at(-1);
  if (unclosed !== undefined)
    throw badRequest(
      `can't parse entities: Can't find end tag corresponding to start tag "${unclosed.tag.name}"`,
    );
  entities.sort((a, b) => a.offset - b.offset || b.length - a.length);
  return { text, entities };
}
