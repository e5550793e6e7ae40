import { MovableClock } from "./channels/browser/clock.ts";
import type { Place } from "./channels/browser/place.ts";
import { serveTryPage, type TryPage } from "./channels/browser/server.ts";
import { silentLog } from "./channels/telegram/log.ts";
import { type DeskConfig, openDesk } from "./compose.ts";
import { type Config, ConfigError } from "./config.ts";

/** Where a free port is looked for, and how many are tried. */
const FIRST_PORT = 8123;
const PORTS_TRIED = 40;

/** Serves the page to try the desk on loopback. Throws {@link ConfigError} when a port that was asked for is taken. */
export async function startInBrowser(
  config: DeskConfig & { readonly tryPort: Exclude<Config["tryPort"], "off"> },
  start = new Date().toISOString(),
): Promise<TryPage> {
  const open = () => openTryPlace(config, start);
  const { tryPort } = config;
  if (tryPort !== "free") {
    return serveTryPage(tryPort, open).catch((error: unknown) => {
      throw new ConfigError(
        `Setting NAMEPLATE_TRY_PORT: port ${tryPort} cannot be had (${codeOf(error)}). Name another, or off.`,
      );
    });
  }
  for (let port = FIRST_PORT; ; port++) {
    try {
      return await serveTryPage(port, open);
    } catch (error) {
      if (codeOf(error) !== "EADDRINUSE" || port >= FIRST_PORT + PORTS_TRIED) throw error;
    }
  }
}

const codeOf = (error: unknown): string =>
  error instanceof Error && "code" in error ? String(error.code) : String(error);

/** A shop of its own beside the terminal's: kept in memory, with the demo stock and a clock that can be moved. */
async function openTryPlace(config: DeskConfig, start: string): Promise<Place> {
  // The channel brings its client library: loaded at the first visit.
  const { openPlace } = await import("./channels/browser/place.ts");
  const clock = new MovableClock(start);
  const desk = await openDesk(config, { storeFile: ":memory:", today: start.slice(0, 10) });
  const { engine, store, content, shop, hours } = desk;
  return openPlace({
    engine,
    store,
    wording: content.wording,
    shopName: shop.name,
    hours,
    clock,
    log: silentLog,
  });
}
