import { GrammyError, HttpError } from "grammy";
import { StoreError } from "../../store/store.ts";
import { TelegramError } from "./telegram-error.ts";

/** What a failed call means for what was to be done. */
export type Failure =
  /** Telegram said how long to wait. */
  | { readonly kind: "wait"; readonly seconds: number }
  /** The line, or the other end of it; trying again helps. Telegram may have acted on the call all the same. */
  | { readonly kind: "line" }
  /** The token is not accepted any more: nothing can be done for anybody. */
  | { readonly kind: "token" }
  /** Somebody else fetches updates with this token, or a webhook is set. */
  | { readonly kind: "conflict"; readonly webhook: boolean }
  /** The group has become a supergroup with another id. */
  | { readonly kind: "moved"; readonly to: number }
  /** 403: this person or group does not let the bot write. */
  | { readonly kind: "shut-out" }
  /** 400: the call is wrong as it is, and stays wrong. */
  | { readonly kind: "refused"; readonly description: string }
  /** Nothing Telegram said: a mistake of ours. */
  | { readonly kind: "ours" };

/** Reads a failed call. */
export function failureOf(error: unknown): Failure {
  if (error instanceof HttpError) return { kind: "line" };
  if (!(error instanceof GrammyError)) return { kind: "ours" };
  const { error_code: code, description, parameters } = error;
  if (code === 429) return { kind: "wait", seconds: Math.max(parameters.retry_after ?? 1, 1) };
  // A token that never was one is "not found", one that was withdrawn "unauthorized".
  if (code === 401 || (code === 404 && /^not found$/i.test(description))) return { kind: "token" };
  if (code === 409) return { kind: "conflict", webhook: /webhook/i.test(description) };
  if (parameters.migrate_to_chat_id !== undefined)
    return { kind: "moved", to: parameters.migrate_to_chat_id };
  if (code === 403) return { kind: "shut-out" };
  if (code >= 500 || code < 400) return { kind: "line" };
  return { kind: "refused", description };
}

/**
 * A failure in words for logs and staff. Never the error itself: it carries what was sent, and with it what
 * people wrote.
 */
export function describe(error: unknown): string {
  if (error instanceof GrammyError) return `${error.method}: ${error.error_code} ${error.description}`;
  if (error instanceof HttpError) return error.message;
  // Written for the operator; names the file and what to do, never what was to be stored.
  if (error instanceof StoreError) return error.message;
  return error instanceof Error ? error.name : "unknown error";
}

export const TOKEN_REFUSED =
  "Telegram refuses the bot token. Check NAMEPLATE_TELEGRAM_TOKEN against what BotFather shows; if the token was revoked there, set the new one and start again. Nothing was lost: what came in is stored.";
export const ANOTHER_POLLER =
  "Another program fetches messages with the same bot token, so this one has stopped. Stop the other one (or give it its own bot), then start again. Nothing was lost: what came in is stored.";
export const WEBHOOK_IN_THE_WAY =
  "A webhook is set for this bot, so messages cannot be fetched. Stop the program that set it, or set NAMEPLATE_TELEGRAM_WEBHOOK_URL to use it here, then start again.";

/** The message for the operator when a failure ends the channel; undefined when it does not. */
export function fatal(failure: Failure): TelegramError | undefined {
  if (failure.kind === "token") return new TelegramError(TOKEN_REFUSED);
  if (failure.kind === "conflict")
    return new TelegramError(failure.webhook ? WEBHOOK_IN_THE_WAY : ANOTHER_POLLER);
  return undefined;
}
