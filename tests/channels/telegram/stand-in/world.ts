import { Api, GrammyError, HttpError } from "grammy";
import { afterEach } from "vitest";
import {
  openStandIn,
  type StandIn,
  type StandInOptions,
} from "../../../../src/channels/telegram/stand-in/stand-in.ts";

export const token = "424242:invented-token-of-nobody";

const opened: StandIn[] = [];
afterEach(async () => {
  await Promise.all(opened.splice(0).map((world) => world.close()));
});

/** A stand-in that closes after the test, and a client of it. */
export async function open(options: Partial<StandInOptions> = {}) {
  const world = await openStandIn({ token, now: () => "2031-03-04T20:15:00.000Z", ...options });
  opened.push(world);
  return { world, api: new Api(token, { apiRoot: world.apiRoot }) };
}

/** What a refused call was refused with: the code and Telegram's description. */
export async function refusal(call: Promise<unknown>): Promise<string> {
  return call.then(
    () => "accepted",
    (error: unknown) => {
      if (error instanceof GrammyError) return `${error.error_code} ${error.description}`;
      if (error instanceof HttpError) return "no answer";
      throw error;
    },
  );
}

/** A promise that a test settles when it wants to. */
export function gate(): { readonly opened: Promise<void>; readonly open: () => void } {
  let open = () => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { opened, open: () => open() };
}
