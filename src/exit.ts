import { TelegramError } from "./channels/telegram/telegram-error.ts";
import { ConfigError } from "./config.ts";
import { ContentError } from "./content.ts";
import { StoreError } from "./store/store.ts";

/** Mistakes of the surroundings that the operator can mend: told without a stack trace. */
const told = [ConfigError, ContentError, StoreError, TelegramError];

/** Runs a command; what goes wrong becomes one clear message and exit status 1. */
export async function endKindly(command: () => Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    const known = told.some((kind) => error instanceof kind);
    process.stderr.write(
      `${known ? (error as Error).message : `Unexpected: ${String((error as Error)?.stack ?? error)}`}\n`,
    );
    process.exitCode = 1;
  }
}
