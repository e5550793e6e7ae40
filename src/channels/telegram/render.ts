import type { InlineKeyboardButton } from "grammy/types";
import type { Pictured } from "../../conversation/pictured.ts";
import { type Attachment, type Choice, type Content, fitsChoice } from "../../outgoing.ts";
import { escapeHtml, fitText, splitText, withBoldHead } from "./text.ts";

/** One call that shows a part of a message. */
export type Part =
  | {
      readonly kind: "text";
      readonly html: string;
      readonly keyboard: readonly (readonly InlineKeyboardButton[])[];
    }
  | { readonly kind: "picture"; readonly of: Pictured }
  | { readonly kind: "files"; readonly of: Attachment["kind"]; readonly refs: readonly string[] };

/** Content that answers a message of staff in their group; the channel's own addition, kept with the content. */
export interface AnswerContent extends Content {
  /** Number of the message that is answered. */
  readonly answers?: number;
}

/** Bot API, sendMediaGroup: 2 to 10 items, photos and documents apart. */
const ALBUM_FILES = 10;
/** More buttons than this cannot be told apart on a phone. */
const MOST_BUTTONS = 24;
/** Labels of this many characters go side by side in pairs on a phone, shorter ones in threes. */
const PAIR_CHARACTERS = 18;
const TRIPLE_CHARACTERS = 10;

/** The calls that show a message, in order: the drawn picture before the words, the buttons under the last of them. */
export function partsOf({ text, choices = [], attachments = [], picture }: Content): readonly Part[] {
  const texts = splitText(text);
  const keyboard = keyboardOf(choices);
  return [
    ...(picture === undefined ? [] : [{ kind: "picture", of: picture } as const]),
    ...texts.map((part, index): Part => {
      const last = index === texts.length - 1;
      return { kind: "text", html: escapeHtml(part), keyboard: last ? keyboard : [] };
    }),
    ...(["photo", "file"] as const).flatMap((kind) =>
      inAlbums(attachments.filter((file) => file.kind === kind)).map(
        (files): Part => ({ kind: "files", of: kind, refs: files.map(({ ref }) => ref) }),
      ),
    ),
  ];
}

/** The one message of a case that is edited in place. */
export function briefPart({ text, choices = [] }: Content): Extract<Part, { kind: "text" }> {
  return { kind: "text", html: withBoldHead(fitText(text)), keyboard: keyboardOf(choices) };
}

/** Buttons in rows; one whose id Telegram cannot carry is left out rather than losing the message. */
export function keyboardOf(choices: readonly Choice[]): readonly (readonly InlineKeyboardButton[])[] {
  const buttons = choices
    .filter(({ id, label }) => id !== "" && fitsChoice(id) && label.trim() !== "")
    .slice(0, MOST_BUTTONS)
    .map(({ id, label }) => ({ text: label, callback_data: id }));
  const longest = Math.max(0, ...buttons.map(({ text }) => text.length));
  const wide = longest <= TRIPLE_CHARACTERS ? 3 : longest <= PAIR_CHARACTERS ? 2 : 1;
  return inRows(buttons, wide);
}

const inAlbums = (files: readonly Attachment[]) => inRows(files, ALBUM_FILES);

function inRows<T>(things: readonly T[], size: number): readonly (readonly T[])[] {
  const rows: T[][] = [];
  for (let from = 0; from < things.length; from += size) rows.push(things.slice(from, from + size));
  return rows;
}
