import type { Config } from "../config.ts";
import type { Finding } from "./doctor.ts";

const SECONDS = 10;

/** Whether Telegram answers, knows the token and lets the bot into the staff group. Without a token there is no need. */
export async function reachTelegram({ telegram }: Config): Promise<readonly Finding[]> {
  const about = "Telegram";
  if (telegram === null)
    return [{ state: "note", about, text: "no bot token is set; the desk runs in the terminal" }];
  const { Api } = await import("grammy");
  const { describe } = await import("../channels/telegram/failures.ts");
  const { token, apiRoot, staffGroup, onCall, webhook } = telegram;
  const api = new Api(token, { timeoutSeconds: SECONDS, ...(apiRoot === undefined ? {} : { apiRoot }) });
  // What failed is told by what Telegram said: the error itself may hold the token.
  const asked = async (ask: () => Promise<string>): Promise<Finding> => {
    try {
      return { state: "good", about, text: await ask() };
    } catch (error) {
      return { state: "bad", about, text: describe(error) };
    }
  };
  const me = await asked(async () => `the bot is @${(await api.getMe()).username}`);
  if (me.state === "bad") return [me];
  const members = [
    ...(staffGroup === null ? [] : [["staff group", staffGroup] as const]),
    ...(onCall === null ? [] : [["person on call", onCall] as const]),
  ];
  return [
    me,
    ...(await Promise.all(
      members.map(([name, id]) =>
        asked(async () => `${name} ${(await api.getChat(id)).type} can be reached`),
      ),
    )),
    await asked(async () => {
      const { url = "", pending_update_count, last_error_message } = await api.getWebhookInfo();
      const wanted = webhook?.url ?? "";
      const way =
        url === wanted
          ? ""
          : `; a webhook is ${url === "" ? "not set" : "set"} now, the next start changes that`;
      const trouble = last_error_message === undefined ? "" : `; last trouble: ${last_error_message}`;
      return `${pending_update_count} messages wait there${way}${trouble}`;
    }),
  ];
}
