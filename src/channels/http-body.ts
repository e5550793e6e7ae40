import type { IncomingMessage } from "node:http";

/** The body of a request as text, or undefined when it is longer than `most` bytes: the rest is not waited for. */
export async function bodyOf(request: IncomingMessage, most: number): Promise<string | undefined> {
  if (Number(request.headers["content-length"] ?? 0) > most) return undefined;
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    bytes += chunk.length;
    if (bytes > most) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString("utf8");
}
