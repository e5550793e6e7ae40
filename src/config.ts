import { fileURLToPath } from "node:url";
import { z } from "zod";

/** Settings of one installation, from the environment; nothing else reads `process.env`. */
export interface Config {
  /** SQLite file of threads, cases and stock. */
  readonly storeFile: string;
  readonly intentsFolder: string;
  readonly dataFolder: string;
  /** Null without a bot token: the desk runs in the terminal. */
  readonly telegram: TelegramConfig | null;
  readonly logLevel: (typeof logLevels)[number];
  /** File the log goes to; null: to stderr on Telegram, nowhere in the terminal. */
  readonly logFile: string | null;
  /** Threads without activity are erased after that many days; null: never. */
  readonly keepDays: number | null;
  /** Messages a minute that are answered at once; more wait and are read together. */
  readonly limits: { readonly perThread: number; readonly overall: number };
  /** Where health and metrics are shown; null: nowhere. */
  readonly http: { readonly host: string; readonly port: number } | null;
  /** Port of the page to try the desk in a browser; "free": any free one, while a person sits at the terminal. */
  readonly tryPort: number | "free" | "off";
}

export interface TelegramConfig {
  readonly token: string;
  readonly staffGroup: number | null;
  readonly onCall: number | null;
  /** Null: long polling. */
  readonly webhook: {
    readonly url: string;
    readonly secret: string;
    readonly host: string;
    readonly port: number;
  } | null;
  /** A Bot API server of one's own; undefined is Telegram's. */
  readonly apiRoot: string | undefined;
}

/** A setting cannot be used; the message names it and what it takes. */
export class ConfigError extends Error {
  override readonly name = "ConfigError";
}

const logLevels = ["silent", "error", "warn", "info"] as const;

const fromRoot = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const path = (fallback: string) => z.string().trim().min(1, "a path, or leave it unset").default(fallback);
/** An empty line in an environment file means the same as none. */
const optional = <T extends z.ZodType>(schema: T) =>
  z.preprocess(
    (value) => (typeof value === "string" && value.trim() === "" ? undefined : value),
    schema.optional(),
  );

const whole = (fallback: number, least: number, most: number, what: string) =>
  z.preprocess(
    (value) => (typeof value === "string" && value.trim() === "" ? undefined : value),
    z.coerce.number(what).int(what).min(least, what).max(most, what).default(fallback),
  );

const environmentSchema = z
  .object({
    NAMEPLATE_STORE: path(fromRoot(".local/desk.sqlite")),
    NAMEPLATE_INTENTS: path(fromRoot("intents")),
    NAMEPLATE_DATA: path(fromRoot("data")),
    NAMEPLATE_LOG_LEVEL: z.enum(logLevels).default("info"),
    NAMEPLATE_LOG: optional(z.string().trim()),
    NAMEPLATE_KEEP_DAYS: whole(365, 0, 36_500, "a whole number of days, 0 for never erasing by age"),
    NAMEPLATE_LIMIT_THREAD: whole(20, 3, 10_000, "messages a minute from one customer, 3 or more"),
    NAMEPLATE_LIMIT_ALL: whole(1200, 10, 1_000_000, "messages a minute from all customers, 10 or more"),
    NAMEPLATE_HTTP_HOST: z.string().trim().min(1, "an address to listen on").default("127.0.0.1"),
    NAMEPLATE_HTTP_PORT: optional(
      z.coerce
        .number("a port number")
        .int("a port number")
        .min(1, "a port number")
        .max(65_535, "a port number"),
    ),
    NAMEPLATE_TRY_PORT: optional(
      z.union([z.literal("off"), z.coerce.number().int().min(0).max(65_535)], "a port number, or off"),
    ),
    // The token itself never goes into a message.
    NAMEPLATE_TELEGRAM_TOKEN: optional(
      z
        .string()
        .trim()
        .regex(/^\d{1,15}:[\w-]{1,80}$/, "the bot token as BotFather shows it, <number>:<letters>"),
    ),
    NAMEPLATE_TELEGRAM_STAFF_GROUP: optional(
      z
        .string()
        .trim()
        .regex(
          /^-\d{1,15}$/,
          "the group's id, a negative number; add the bot to the group and it tells the id",
        )
        .transform(Number),
    ),
    NAMEPLATE_TELEGRAM_ON_CALL: optional(
      z
        .string()
        .trim()
        .regex(/^\d{1,15}$/, "the id of a person, a positive number")
        .transform(Number),
    ),
    NAMEPLATE_TELEGRAM_WEBHOOK_URL: optional(
      z.url({ protocol: /^https?$/, error: "the public https address Telegram sends to, or leave it unset" }),
    ),
    NAMEPLATE_TELEGRAM_WEBHOOK_SECRET: optional(
      z.string().regex(/^[A-Za-z0-9_-]{16,256}$/, "16 to 256 letters, digits, _ or -, made up at random"),
    ),
    NAMEPLATE_TELEGRAM_WEBHOOK_HOST: z.string().trim().min(1, "an address to listen on").default("127.0.0.1"),
    NAMEPLATE_TELEGRAM_WEBHOOK_PORT: z.coerce
      .number("a port number")
      .int("a port number")
      .min(1, "a port number")
      .max(65_535, "a port number")
      .default(8443),
    NAMEPLATE_TELEGRAM_API: optional(
      z.url({
        protocol: /^https?$/,
        error: "the address of a Bot API server of your own, or leave it unset",
      }),
    ),
  })
  .refine(
    (env) => env.NAMEPLATE_TELEGRAM_WEBHOOK_URL === undefined || env.NAMEPLATE_TELEGRAM_WEBHOOK_SECRET,
    {
      path: ["NAMEPLATE_TELEGRAM_WEBHOOK_SECRET"],
      error:
        "a webhook needs one, so that nobody else can write to the desk: 16 to 256 letters, digits, _ or -",
    },
  );

/** The names of all settings. */
export const settingNames: readonly string[] = Object.keys(environmentSchema.shape);

/** Reads the settings. Throws {@link ConfigError} naming the first one that cannot be used. */
export function readConfig(environment: NodeJS.ProcessEnv = process.env): Config {
  const checked = environmentSchema.safeParse(environment);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    throw new ConfigError(`Setting ${issue?.path.join(".")}: ${issue?.message}.`);
  }
  const env = checked.data;
  return {
    storeFile: env.NAMEPLATE_STORE,
    intentsFolder: env.NAMEPLATE_INTENTS,
    dataFolder: env.NAMEPLATE_DATA,
    logLevel: env.NAMEPLATE_LOG_LEVEL,
    logFile: env.NAMEPLATE_LOG ?? null,
    keepDays: env.NAMEPLATE_KEEP_DAYS === 0 ? null : env.NAMEPLATE_KEEP_DAYS,
    limits: { perThread: env.NAMEPLATE_LIMIT_THREAD, overall: env.NAMEPLATE_LIMIT_ALL },
    http:
      env.NAMEPLATE_HTTP_PORT === undefined
        ? null
        : { host: env.NAMEPLATE_HTTP_HOST, port: env.NAMEPLATE_HTTP_PORT },
    tryPort: env.NAMEPLATE_TRY_PORT === 0 ? "off" : (env.NAMEPLATE_TRY_PORT ?? "free"),
    telegram: telegramOf(env),
  };
}

function telegramOf(env: z.infer<typeof environmentSchema>): TelegramConfig | null {
  const token = env.NAMEPLATE_TELEGRAM_TOKEN;
  if (token === undefined) return null;
  const url = env.NAMEPLATE_TELEGRAM_WEBHOOK_URL;
  const secret = env.NAMEPLATE_TELEGRAM_WEBHOOK_SECRET;
  return {
    token,
    staffGroup: env.NAMEPLATE_TELEGRAM_STAFF_GROUP ?? null,
    onCall: env.NAMEPLATE_TELEGRAM_ON_CALL ?? null,
    webhook:
      url === undefined || secret === undefined
        ? null
        : {
            url,
            secret,
            host: env.NAMEPLATE_TELEGRAM_WEBHOOK_HOST,
            port: env.NAMEPLATE_TELEGRAM_WEBHOOK_PORT,
          },
    apiRoot: env.NAMEPLATE_TELEGRAM_API?.replace(/\/+$/, ""),
  };
}
