import type { Document, PhotoSize } from "grammy/types";
import type { FileStore, KeptFile, Upload } from "./files.ts";
import { badRequest } from "./refusal.ts";

/** "photos must be at most 10 MB in size", other files 50 MB (Bot API, "Sending files"). */
const photoLimitBytes = 10 * 1024 * 1024;

/**
 * The file a parameter stands for: an upload under its own name or as `attach://name`, or a file sent before.
 * URLs are refused, because the stand-in fetches nothing.
 */
export function fileFor(
  files: FileStore,
  kind: "photo" | "document",
  field: string,
  value: string | undefined,
  uploads: ReadonlyMap<string, Upload>,
): KeptFile {
  const name = value?.startsWith("attach://") === true ? value.slice("attach://".length) : field;
  const upload = uploads.get(name);
  if (upload !== undefined) {
    if (upload.bytes.length === 0) throw badRequest("file must be non-empty");
    if (kind === "photo" && upload.bytes.length > photoLimitBytes)
      throw badRequest("PHOTO_INVALID_DIMENSIONS");
    return files.keep(kind, upload);
  }
  if (value === undefined || value === "") throw badRequest(`there is no ${kind} in the request`);
  return files.reuse(kind, value);
}

/** A photo as two sizes, small one first, as Telegram lists them. Both are the same bytes. */
export function photoSizes({ file }: KeptFile): PhotoSize[] {
  const { file_id, file_unique_id, file_size } = file;
  return [
    { file_id, file_unique_id: `${file_unique_id}-s`, width: 90, height: 68, file_size },
    { file_id, file_unique_id, width: 1280, height: 960, file_size },
  ];
}

export function documentOf({ file, fileName }: KeptFile, mimeType?: string): Document {
  const { file_id, file_unique_id, file_size } = file;
  return {
    file_id,
    file_unique_id,
    file_name: fileName,
    file_size,
    ...(mimeType === undefined ? {} : { mime_type: mimeType }),
  };
}
