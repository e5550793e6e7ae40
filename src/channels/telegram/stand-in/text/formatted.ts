import type { MessageEntity, ParseMode } from "grammy/types";
import { badRequest } from "../refusal.ts";
import { type FormattedText, parseHtml } from "./html.ts";

/**
 * Limits "after entities parsing" (Bot API, sendMessage and captions). Counted in UTF-16 units, the stricter
 * reading of "characters", so that what passes here passes there.
 */
export const textLimit = 4096;
export const captionLimit = 1024;

interface Raw {
  readonly text: string | undefined;
  readonly parseMode: ParseMode | undefined;
  readonly entities: readonly MessageEntity[] | undefined;
}

/** The text of a message as people will see it. Throws a 400 when it is empty, too long or badly formatted. */
export function messageText(raw: Raw): FormattedText {
  if (raw.text === undefined || raw.text === "") throw badRequest("message text is empty");
  const formatted = format(raw);
  if (formatted.text === "") throw badRequest("text must be non-empty");
  if (formatted.text.length > textLimit) throw badRequest("message is too long");
  return formatted;
}

/** The caption of a file, which may be missing. Throws a 400 when it is too long or badly formatted. */
export function caption(raw: Raw): { caption?: string; caption_entities?: MessageEntity[] } {
  if (raw.text === undefined || raw.text === "") return {};
  const { text, entities } = format(raw);
  if (text.length > captionLimit) throw badRequest("message caption is too long");
  if (text === "") return {};
  return { caption: text, ...(entities.length === 0 ? {} : { caption_entities: [...entities] }) };
}

function format({ text = "", parseMode, entities }: Raw): FormattedText {
  if (parseMode === undefined) return trim({ text, entities: entities ?? [] });
  // Markdown is left out on purpose: a text that needs it is refused loudly instead of shown unformatted.
  if (parseMode.toLowerCase() !== "html") throw badRequest("unsupported parse_mode");
  return trim(parseHtml(text));
}

/** Telegram cuts white space at both ends and moves the entities along. */
function trim({ text, entities }: FormattedText): FormattedText {
  const start = text.length - text.trimStart().length;
  const trimmed = text.trim();
  const moved = entities.flatMap((entity) => {
    const offset = Math.max(entity.offset - start, 0);
    const end = Math.min(entity.offset + entity.length - start, trimmed.length);
    return end > offset ? [{ ...entity, offset, length: end - offset }] : [];
  });
  return { text: trimmed, entities: moved };
}
