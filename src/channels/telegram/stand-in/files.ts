import type { File } from "grammy/types";
import { badRequest } from "./refusal.ts";

/** A file as a client handed it in. */
export interface Upload {
  readonly bytes: Uint8Array;
  readonly fileName: string;
}

export interface KeptFile extends Upload {
  readonly kind: FileKind;
  readonly file: Required<File>;
}

export type FileKind = "photo" | "document" | "voice" | "sticker";

const folders: Record<FileKind, string> = {
  photo: "photos",
  document: "documents",
  voice: "voice",
  sticker: "stickers",
};
/** The Bot API gives out files of up to 20 MB through getFile. */
const downloadLimitBytes = 20 * 1024 * 1024;

/** Files by their identifier and by their download path. */
export class FileStore {
  private readonly byId = new Map<string, KeptFile>();
  private readonly byPath = new Map<string, KeptFile>();

  keep(kind: FileKind, upload: Upload): KeptFile {
    const number = this.byId.size + 1;
    const extension = /\.[a-z0-9]{1,8}$/i.exec(upload.fileName)?.[0] ?? "";
    const kept: KeptFile = {
      ...upload,
      kind,
      file: {
        file_id: `${kind}-file-${number}`,
        file_unique_id: `unique-${number}`,
        file_size: upload.bytes.length,
        file_path: `${folders[kind]}/file_${number}${extension}`,
      },
    };
    this.byId.set(kept.file.file_id, kept);
    this.byPath.set(kept.file.file_path, kept);
    return kept;
  }

  /** The file behind an identifier a bot sends again. Throws a 400 when there is none, or when it is of another kind. */
  reuse(kind: FileKind, fileId: string): KeptFile {
    const kept = this.byId.get(fileId);
    if (kept?.kind !== kind) throw badRequest("wrong file identifier/HTTP URL specified");
    return kept;
  }

  /** What getFile answers. Throws a 400 for unknown identifiers and for files over the download limit. */
  describe(fileId: string): File {
    const kept = this.byId.get(fileId);
    if (kept === undefined) throw badRequest("wrong file_id or the file is temporarily unavailable");
    if (kept.bytes.length > downloadLimitBytes) throw badRequest("file is too big");
    return kept.file;
  }

  atPath(path: string): KeptFile | undefined {
    return this.byPath.get(path);
  }
}
