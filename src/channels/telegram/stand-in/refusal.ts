import type { ResponseParameters } from "grammy/types";

/** An answer with `ok: false`. The descriptions are those of the Bot API, which clients match on. */
export class Refusal extends Error {
  override readonly name = "Refusal";

  constructor(
    readonly code: number,
    readonly description: string,
    readonly parameters?: ResponseParameters,
  ) {
    super(`${code} ${description}`);
  }
}

/** 400: the call itself is wrong. */
export const badRequest = (what: string, parameters?: ResponseParameters): Refusal =>
  new Refusal(400, `Bad Request: ${what}`, parameters);

/** 403: the bot may not do this here, and trying again will not help. */
export const forbidden = (what: string): Refusal => new Refusal(403, `Forbidden: ${what}`);

/** 409: two ways of getting updates are in each other's way. */
export const conflict = (what: string): Refusal => new Refusal(409, `Conflict: ${what}`);

/** 401: the token is not this bot's. */
export const unauthorized = (): Refusal => new Refusal(401, "Unauthorized");

/** 404: no such method, or no such path. */
export const notFound = (what?: string): Refusal =>
  new Refusal(404, what === undefined ? "Not Found" : `Not Found: ${what}`);

/** 429: wait `seconds` before trying again. */
export const tooManyRequests = (seconds: number): Refusal =>
  new Refusal(429, `Too Many Requests: retry after ${seconds}`, { retry_after: seconds });
