/** Telegram's limit on the text of one message, in UTF-16 code units after markup is read (Bot API, sendMessage). */
export const MESSAGE_CHARACTERS = 4096;

/**
 * Cuts a text into messages of at most `limit` characters: at line ends if it can, else at spaces, else anywhere but
 * inside a character. Nothing is lost but the blank the cut falls on.
 */
export function splitText(text: string, limit: number = MESSAGE_CHARACTERS): readonly string[] {
  const parts: string[] = [];
  let rest = text;
  while (rest.length > limit) {
    const cut = cutBefore(rest, limit);
    const part = rest.slice(0, cut).trimEnd();
    if (part !== "") parts.push(part);
    rest = rest.slice(cut).replace(/^[ \n]/, "");
  }
  if (rest.trim() !== "") parts.push(rest);
  return parts;
}

/** The text in one message; what is over is left out and marked. */
export function fitText(text: string, limit: number = MESSAGE_CHARACTERS): string {
  if (text.length <= limit) return text;
  return `${text.slice(0, cutBefore(text, limit - 2)).trimEnd()}\n…`;
}

function cutBefore(text: string, limit: number): number {
  const line = text.lastIndexOf("\n", limit);
  if (line > 0) return line;
  const space = text.lastIndexOf(" ", limit);
  // A space near the start would leave crumbs.
  if (space > limit / 2) return space;
  const code = text.charCodeAt(limit - 1);
  const splitsPair = code >= 0xd800 && code <= 0xdbff;
  return splitsPair ? limit - 1 : limit;
}

/** Text as Telegram's HTML: nothing in it is read as markup (Bot API, "HTML style"). */
export function escapeHtml(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** The first line stands out; the rest is plain. */
export function withBoldHead(text: string): string {
  const end = text.indexOf("\n");
  if (end < 0) return escapeHtml(text);
  return `<b>${escapeHtml(text.slice(0, end))}</b>${escapeHtml(text.slice(end))}`;
}
