import { join } from "node:path";
import { z } from "zod";
import { numberFormatsSchema } from "./catalogue/number-search.ts";
import type { Config } from "./config.ts";
import { type Content, ContentError, loadContent, readJson } from "./content.ts";
import { createIntentMatcher } from "./conversation/intents.ts";
import { createUnderstand, type Understand } from "./conversation/understand.ts";
import type { Wording } from "./conversation/wording.ts";
import { type DeskHours, deskHoursSchema } from "./desk/hours.ts";
import { createEngine, type Engine, type EngineParts } from "./engine.ts";
import { type Log, logging, namesWith, whereabouts } from "./ops/log.ts";
import { observed, type Watch } from "./ops/observed.ts";
import { lossIn, type Reloaded } from "./ops/reload.ts";
import { readMotorsFile, takeDemoStock } from "./stock-files.ts";
import { openSqliteStore } from "./store/sqlite.ts";
import { stockKinds } from "./store/stock.ts";
import type { Store } from "./store/store.ts";
import { storedCatalogue } from "./stored-catalogue.ts";

/** `data/shop.json`: who the shop is and what it takes as given. */
export const shopSchema = z.strictObject({
  name: z.string().min(1),
  town: z.string().min(1),
  mainsHz: z.union([z.literal(50), z.literal(60)]),
  emergencyNumber: z.string().min(2),
  currency: z.literal("USD"),
  pricePerKwh: z.number().positive(),
  priceYear: z.number().int(),
  priceSource: z.string().min(1),
  hoursPerDay: z.number().positive().max(24),
});
export type ShopFile = z.infer<typeof shopSchema>;

/** A desk ready to take messages, and what it was built from. */
export interface Desk {
  readonly engine: Engine;
  readonly store: Store;
  readonly content: Content;
  readonly shop: ShopFile;
  readonly hours: DeskHours;
  /**
   * Reads texts, intents, shop and opening hours again while the desk works; what cannot be used changes nothing. The
   * stock needs none: an import is seen at once.
   */
  readonly reload: () => Reloaded;
  readonly close: () => Promise<void>;
}

export interface DeskOptions {
  /** Instead of the configured store; `:memory:` keeps nothing. */
  readonly storeFile?: string | undefined;
  /** Take the motors from this CSV instead of the store's imported stock. */
  readonly catalogueFile?: string | undefined;
  /** Told of what the code could not handle, beside the log. */
  readonly onTrouble?: EngineParts["onTrouble"];
  readonly limits?: EngineParts["limits"];
  readonly log?: Log | null;
  readonly watches?: readonly Watch[];
  /** Today, ISO date: written as the import date when a fresh store takes the demo stock. */
  readonly today: string;
}

/** The settings a desk needs. */
export type DeskConfig = Pick<Config, "storeFile" | "intentsFolder" | "dataFolder"> & Partial<Config>;

/** All that comes from files people edit, but the stock. */
interface Surroundings {
  readonly content: Content;
  readonly understand: Understand;
  readonly shop: ShopFile;
  readonly hours: DeskHours;
}

function readSurroundings({ intentsFolder, dataFolder }: DeskConfig): Surroundings {
  const content = loadContent(intentsFolder);
  return {
    content,
    understand: createUnderstand(createIntentMatcher(content.intents)),
    shop: readJson(join(dataFolder, "shop.json"), shopSchema),
    hours: readJson(join(dataFolder, "desk-hours.json"), deskHoursSchema),
  };
}

/**
 * Builds the desk: config, content, store, catalogue, engine. A fresh store takes the demo stock. Throws
 * `ContentError` or `StoreError` with a message for the operator.
 */
export async function openDesk(config: DeskConfig, options: DeskOptions): Promise<Desk> {
  let now = readSurroundings(config);
  const motors = options.catalogueFile === undefined ? undefined : readMotorsFile(options.catalogueFile);
  const store = openSqliteStore(options.storeFile ?? config.storeFile);
  try {
    const missing = motors === undefined ? stockKinds : stockKinds.filter((kind) => kind !== "motors");
    await takeDemoStock(store, config.dataFolder, `${options.today}T00:00:00.000Z`, missing);
    const numberFormats = readJson(join(config.dataFolder, "number-formats.json"), numberFormatsSchema);
    const catalogue = storedCatalogue({ store, numberFormats, motors, today: options.today });
    await catalogue();
    const wording = current(() => now.content.wording);
    const { log = null, watches = [] } = options;
    const nameOf = namesWith(await store.upkeep.installationKey());
    const parts: EngineParts = {
      store,
      understand: (text, expecting) => now.understand(text, expecting),
      wording,
      catalogue,
      get shop() {
        return now.shop;
      },
      get hours() {
        return now.hours;
      },
      ...(options.limits === undefined ? {} : { limits: options.limits }),
      keepDays: config.keepDays ?? null,
      onTrouble: (item, error) => {
        const about = { id: item.id, thread: nameOf(item.threadId), ...whereabouts(error) };
        log?.error(about, "a message could not be handled");
        options.onTrouble?.(item, error);
      },
    };
    return {
      engine: observed(createEngine(parts), [...(log === null ? [] : [logging(log, nameOf)]), ...watches]),
      store,
      content: { ...now.content, wording },
      shop: now.shop,
      hours: now.hours,
      reload: () => {
        try {
          const next = readSurroundings(config);
          const loss = lossIn(now.content.texts, next.content.texts);
          if (loss !== null) return { kind: "refused", problem: loss };
          now = next;
          return { kind: "taken" };
        } catch (error) {
          const problem = error instanceof ContentError ? error.message : whereabouts(error).error;
          return { kind: "refused", problem };
        }
      },
      close: store.close,
    };
  } catch (error) {
    await store.close();
    throw error;
  }
}

/** The wording as it is at each look. */
function current(wording: () => Wording): Wording {
  return {
    has: (group, key) => wording().has(group, key),
    text: (group, key) => wording().text(group, key),
    say: (group, key, values) => wording().say(group, key, values),
  };
}
