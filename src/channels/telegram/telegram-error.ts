/** The channel cannot go on; the message tells the operator what to do. */
export class TelegramError extends Error {
  override readonly name = "TelegramError";
}
