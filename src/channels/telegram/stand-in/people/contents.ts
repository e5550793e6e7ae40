import type { Contact, Location, Message } from "grammy/types";
import type { FileStore } from "../files.ts";
import { documentOf, photoSizes } from "../media.ts";
import { typedEntities } from "../text/typed-entities.ts";

/** A file a person sends; bytes and name are made up where they do not matter. */
export interface SentFile {
  readonly bytes?: Uint8Array;
  readonly fileName?: string;
  readonly mimeType?: string;
  readonly caption?: string;
}

type Words = Pick<Message, "caption" | "caption_entities">;

/** Text with the entities Telegram finds in it. */
export function textContent(text: string) {
  const entities = typedEntities(text);
  return { text, ...(entities.length === 0 ? {} : { entities }) };
}

export const photoContent = (files: FileStore, { bytes, fileName, caption }: SentFile) => ({
  photo: photoSizes(files.keep("photo", { bytes: bytes ?? anyBytes, fileName: fileName ?? "photo.jpg" })),
  ...words(caption),
});

export function documentContent(files: FileStore, { bytes, fileName, mimeType, caption }: SentFile) {
  const kept = files.keep("document", { bytes: bytes ?? anyBytes, fileName: fileName ?? "label.pdf" });
  return { document: documentOf(kept, mimeType ?? "application/pdf"), ...words(caption) };
}

export function voiceContent(files: FileStore, durationSeconds: number) {
  const { file } = files.keep("voice", { bytes: anyBytes, fileName: "voice.ogg" });
  const { file_id, file_unique_id, file_size } = file;
  return { voice: { file_id, file_unique_id, file_size, duration: durationSeconds, mime_type: "audio/ogg" } };
}

export function stickerContent(files: FileStore, emoji: string) {
  const { file } = files.keep("sticker", { bytes: anyBytes, fileName: "sticker.webp" });
  const { file_id, file_unique_id, file_size } = file;
  const flags = { type: "regular" as const, is_animated: false, is_video: false };
  return { sticker: { file_id, file_unique_id, file_size, ...flags, width: 512, height: 512, emoji } };
}

export const locationContent = (location: Location) => ({ location });
export const contactContent = (contact: Contact) => ({ contact });

function words(caption: string | undefined): Words {
  if (caption === undefined) return {};
  const entities = typedEntities(caption);
  return { caption, ...(entities.length === 0 ? {} : { caption_entities: entities }) };
}

const anyBytes = new TextEncoder().encode("bytes of a file");
