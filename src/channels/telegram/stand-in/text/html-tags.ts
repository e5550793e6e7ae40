import type { MessageEntity } from "grammy/types";

/** Refuses the text: what is wrong, at which character, and what follows the position in the description. */
export type FailAt = (what: string, position: number, after?: string) => never;
type EntityOf = (offset: number, length: number, text: string) => MessageEntity | undefined;

export interface StartTag {
  readonly name: string;
  /** Position after the closing angle bracket. */
  readonly next: number;
  readonly entity: EntityOf;
}

type Attributes = ReadonlyMap<string, string>;

const plain = (type: MessageEntity.CommonMessageEntity["type"]) => (): EntityOf => (offset, length) => ({
  type,
  offset,
  length,
});

/** Every tag of the Bot API's HTML style and the entity it becomes. */
const tags: Record<string, (attributes: Attributes) => EntityOf> = {
  b: plain("bold"),
  strong: plain("bold"),
  i: plain("italic"),
  em: plain("italic"),
  u: plain("underline"),
  ins: plain("underline"),
  s: plain("strikethrough"),
  strike: plain("strikethrough"),
  del: plain("strikethrough"),
  span: plain("spoiler"),
  "tg-spoiler": plain("spoiler"),
  code: plain("code"),
  pre: () => (offset, length) => ({ type: "pre", offset, length }),
  a: (attributes) => (offset, length, text) => {
    const url = attributes.get("href") ?? text;
    return /^(https?:\/\/|tg:\/\/|mailto:|tel:)/i.test(url)
      ? { type: "text_link", offset, length, url }
      : undefined;
  },
  blockquote: (attributes) => (offset, length) => ({
    type: attributes.has("expandable") ? "expandable_blockquote" : "blockquote",
    offset,
    length,
  }),
};

/** Reads the start tag at `begin`; `fail` is called with Telegram's wording when it is none. */
export function readStartTag(source: string, begin: number, fail: FailAt): StartTag {
  let at = begin + 1;
  while (at < source.length && !/[\s>]/.test(source.charAt(at))) at += 1;
  if (at >= source.length) fail("Unclosed start tag", begin);
  const name = source.slice(begin + 1, at).toLowerCase();
  const make = Object.hasOwn(tags, name) ? tags[name] : undefined;
  if (make === undefined) return fail(`Unsupported start tag "${name}"`, begin);

  const attributes = new Map<string, string>();
  for (;;) {
    at = skipSpace(source, at);
    if (at >= source.length) fail("Unclosed start tag", begin);
    if (source.charAt(at) === ">") break;
    const nameBegin = at;
    while (at < source.length && !/[\s=>/"']/.test(source.charAt(at))) at += 1;
    const attribute = source.slice(nameBegin, at).toLowerCase();
    if (attribute === "") fail(`Empty attribute name in the tag "${name}"`, begin);
    at = skipSpace(source, at);
    if (source.charAt(at) !== "=") {
      // `<blockquote expandable>` is the one attribute without a value.
      if (name !== "blockquote" || attribute !== "expandable")
        fail(`Expected equal sign in declaration of an attribute of the tag "${name}"`, begin);
      attributes.set(attribute, "");
      continue;
    }
    const value = readValue(source, skipSpace(source, at + 1), fail);
    if (value.next >= source.length) fail("Unclosed start tag", begin);
    attributes.set(attribute, value.value);
    at = value.next;
  }
  if (name === "span" && attributes.get("class") !== "tg-spoiler")
    fail('Tag "span" must have class "tg-spoiler"', begin);
  return { name, next: at + 1, entity: make(attributes) };
}

function readValue(source: string, begin: number, fail: FailAt): { value: string; next: number } {
  const quote = source.charAt(begin);
  let at = begin;
  if (quote !== '"' && quote !== "'") {
    while (/[a-z0-9.-]/i.test(source.charAt(at))) at += 1;
    if (at < source.length && !/[\s>]/.test(source.charAt(at))) fail("Unexpected end of name token", begin);
    return { value: source.slice(begin, at).toLowerCase(), next: at };
  }
  let value = "";
  at += 1;
  while (at < source.length && source.charAt(at) !== quote) {
    const decoded = decodeCharacter(source, at);
    value += decoded.character;
    at = decoded.next;
  }
  return { value, next: at + 1 };
}

function skipSpace(source: string, from: number): number {
  let at = from;
  while (/\s/.test(source.charAt(at))) at += 1;
  return at;
}

const named: Record<string, string> = { "&lt;": "<", "&gt;": ">", "&amp;": "&", "&quot;": '"' };

/** The character at `at`, with the four named and all numeric references decoded; others stay as typed. */
export function decodeCharacter(source: string, at: number): { character: string; next: number } {
  const reference =
    source.charAt(at) === "&"
      ? /^&(?:[a-z]{2,4}|#\d{1,7}|#x[\da-f]{1,6});?/i.exec(source.slice(at, at + 12))?.[0]
      : undefined;
  if (reference === undefined) return { character: source.charAt(at), next: at + 1 };
  const next = at + reference.length;
  const numeric = /^&#(x?)([\da-f]+)/i.exec(reference);
  if (numeric !== null) {
    const code = Number.parseInt(numeric[2] ?? "", numeric[1] === "" ? 10 : 16);
    if (code > 0 && code <= 0x10ffff) return { character: String.fromCodePoint(code), next };
  }
  const character = named[reference.endsWith(";") ? reference : `${reference};`];
  return character === undefined ? { character: source.charAt(at), next: at + 1 } : { character, next };
}
