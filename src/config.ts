import { fileURLToPath } from "node:url";
import { z } from "zod";

/** Settings of one installation, from the environment; nothing else reads `process.env`. */
export interface Config {
  /** SQLite file of threads, cases and stock. */
  readonly storeFile: string;
  readonly intentsFolder: string;
  readonly dataFolder: string;
}

/** A setting cannot be used; the message names it and what it takes. */
export class ConfigError extends Error {
  override readonly name = "ConfigError";
}

const fromRoot = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));
const path = (fallback: string) => z.string().trim().min(1, "a path, or leave it unset").default(fallback);

const environmentSchema = z.object({
  NAMEPLATE_STORE: path(fromRoot(".local/desk.sqlite")),
  NAMEPLATE_INTENTS: path(fromRoot("intents")),
  NAMEPLATE_DATA: path(fromRoot("data")),
});

/** Reads the settings. Throws {@link ConfigError} naming the first one that cannot be used. */
export function readConfig(environment: NodeJS.ProcessEnv = process.env): Config {
  const checked = environmentSchema.safeParse(environment);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    throw new ConfigError(`Setting ${issue?.path.join(".")}: ${issue?.message}.`);
  }
  const { NAMEPLATE_STORE, NAMEPLATE_INTENTS, NAMEPLATE_DATA } = checked.data;
  return { storeFile: NAMEPLATE_STORE, intentsFolder: NAMEPLATE_INTENTS, dataFolder: NAMEPLATE_DATA };
}
