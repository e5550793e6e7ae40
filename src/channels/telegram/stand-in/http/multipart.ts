import type { Upload } from "../files.ts";
import { badRequest } from "../refusal.ts";

export interface Form {
  readonly fields: Readonly<Record<string, string>>;
  readonly uploads: ReadonlyMap<string, Upload>;
}

const headerEnd = Buffer.from("\r\n\r\n");

/**
 * Reads a multipart/form-data body (RFC 7578). Lenient where clients differ: file names may stand without quotes.
 * Throws a 400 when the body does not keep to its boundary.
 */
export function readMultipart(body: Buffer, contentType: string): Form {
  const boundary = /boundary=(?:"([^"]{1,70})"|([^\s;]{1,70}))/i.exec(contentType);
  if (boundary === null) throw badRequest("multipart body has no boundary");
  const delimiter = Buffer.from(`--${boundary[1] ?? boundary[2] ?? ""}`);
  const fields: Record<string, string> = {};
  const uploads = new Map<string, Upload>();

  let begin = body.indexOf(delimiter);
  for (;;) {
    const partBegin = begin + delimiter.length;
    if (begin < 0) throw badRequest("multipart body breaks off");
    if (body.toString("latin1", partBegin, partBegin + 2) === "--") return { fields, uploads };
    const end = body.indexOf(delimiter, partBegin);
    const headersEnd = body.indexOf(headerEnd, partBegin);
    if (end < 0 || headersEnd < 0 || headersEnd > end) throw badRequest("multipart body breaks off");
    const headers = body.toString("utf8", partBegin, headersEnd);
    // The line break before the next delimiter belongs to the delimiter.
    const content = body.subarray(headersEnd + headerEnd.length, end - 2);
    const name = /;\s*name="([^"\r\n]*)"/i.exec(headers)?.[1];
    const fileName = /;\s*filename=(?:"([^"\r\n]*)"|([^;\r\n]*))/i.exec(headers);
    if (name === undefined) throw badRequest("multipart part has no name");
    if (fileName === null) fields[name] = content.toString("utf8");
    else uploads.set(name, { bytes: Uint8Array.from(content), fileName: fileName[1] ?? fileName[2] ?? name });
    begin = end;
  }
}
