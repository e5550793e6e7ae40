import type { ApiMethods, InputFile, Opts } from "grammy/types";
import type { Upload } from "./files.ts";

/** Methods the stand-in answers; every other name is a 404, as for a method Telegram does not have. */
export const methodNames = [
  "getMe",
  "getUpdates",
  "setWebhook",
  "deleteWebhook",
  "getWebhookInfo",
  "sendMessage",
  "sendPhoto",
  "sendDocument",
  "sendMediaGroup",
  "sendChatAction",
  "editMessageText",
  "editMessageMedia",
  "editMessageReplyMarkup",
  "deleteMessage",
  "pinChatMessage",
  "copyMessage",
  "forwardMessage",
  "answerCallbackQuery",
  "createForumTopic",
  "editForumTopic",
  "closeForumTopic",
  "reopenForumTopic",
  "deleteForumTopic",
  "getChat",
  "getChatMember",
  "leaveChat",
  "setMyCommands",
  "getFile",
] as const satisfies readonly (keyof ApiMethods)[];

export type MethodName = (typeof methodNames)[number];

/** A parameter as it arrives: uploads are replaced by text (`attach://…`, a file identifier or a URL). */
type Received<T> = T extends InputFile
  ? never
  : T extends readonly (infer Entry)[]
    ? readonly Received<Entry>[]
    : T extends object
      ? { [K in keyof T]: Received<T[K]> }
      : T;

/** Parameters of a method as a client may have sent them: any of them can be missing. */
export type Params<M extends MethodName> = {
  readonly [K in keyof Opts<M>]?: Received<Opts<M>[K]> | undefined;
};

export type Result<M extends MethodName> = ReturnType<ApiMethods[M]>;

/** What a method needs to know of the request besides its parameters. */
export interface Request {
  readonly uploads: ReadonlyMap<string, Upload>;
  /** Aborted when the client hangs up. */
  readonly gone: AbortSignal;
}

/** The answers of the stand-in, one for each method, typed by the Bot API's own types. */
export type Methods = {
  readonly [M in MethodName]: (params: Params<M>, request: Request) => Result<M> | Promise<Result<M>>;
};

/** Finds a method; names are case-insensitive (Bot API, "Making requests"). */
export function methodNamed(name: string): MethodName | undefined {
  const wanted = name.toLowerCase();
  return methodNames.find((known) => known.toLowerCase() === wanted);
}
