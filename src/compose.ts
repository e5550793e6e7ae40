import { join } from "node:path";
import { z } from "zod";
import { numberFormatsSchema } from "./catalogue/number-search.ts";
import type { Config } from "./config.ts";
import { type Content, loadContent, readJson } from "./content.ts";
import { createIntentMatcher } from "./conversation/intents.ts";
import { createUnderstand } from "./conversation/understand.ts";
import { type DeskHours, deskHoursSchema } from "./desk/hours.ts";
import { createEngine, type Engine, type EngineParts } from "./engine.ts";
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
  readonly close: () => Promise<void>;
}

export interface DeskOptions {
  /** Instead of the configured store; `:memory:` keeps nothing. */
  readonly storeFile?: string | undefined;
  /** Take the motors from this CSV instead of the store's imported stock. */
  readonly catalogueFile?: string | undefined;
  readonly onTrouble: EngineParts["onTrouble"];
  /** Today, ISO date: written as the import date when a fresh store takes the demo stock. */
  readonly today: string;
}

/**
 * Builds the desk: config, content, store, catalogue, engine. A fresh store takes the demo stock. Throws
 * `ContentError` or `StoreError` with a message for the operator.
 */
export async function openDesk(config: Config, options: DeskOptions): Promise<Desk> {
  const content = loadContent(config.intentsFolder);
  const shop = readJson(join(config.dataFolder, "shop.json"), shopSchema);
  const hours = readJson(join(config.dataFolder, "desk-hours.json"), deskHoursSchema);
  const motors = options.catalogueFile === undefined ? undefined : readMotorsFile(options.catalogueFile);
  const store = openSqliteStore(options.storeFile ?? config.storeFile);
  try {
    const missing = motors === undefined ? stockKinds : stockKinds.filter((kind) => kind !== "motors");
    await takeDemoStock(store, config.dataFolder, `${options.today}T00:00:00.000Z`, missing);
    const numberFormats = readJson(join(config.dataFolder, "number-formats.json"), numberFormatsSchema);
    const catalogue = storedCatalogue({ store, numberFormats, motors, today: options.today });
    await catalogue();
    const understand = createUnderstand(createIntentMatcher(content.intents));
    const { wording } = content;
    const engine = createEngine({
      store,
      understand,
      wording,
      catalogue,
      shop,
      hours,
      onTrouble: options.onTrouble,
    });
    return { engine, store, content, shop, hours, close: store.close };
  } catch (error) {
    await store.close();
    throw error;
  }
}
