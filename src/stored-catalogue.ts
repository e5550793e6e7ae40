import type { NumberFormat } from "./catalogue/number-search.ts";
import type { Catalogue } from "./catalogue/types.ts";
import type { StockMotor } from "./matching/types.ts";
import { storedItems } from "./stock-files.ts";
import type { Store } from "./store/store.ts";

export interface CatalogueParts {
  readonly store: Store;
  readonly numberFormats: readonly NumberFormat[];
  /** Instead of the store's motors. */
  readonly motors?: readonly StockMotor[] | undefined;
  /** ISO day the tables count as imported on where the store does not know one. */
  readonly today: string;
}

/**
 * The catalogue as it now stands in the store. Another program's import is seen at the next call; until one comes
 * the same object is given, so that whatever was prepared for it stays good.
 */
export function storedCatalogue(parts: CatalogueParts): () => Promise<Catalogue> {
  const { store } = parts;
  let kept: { readonly version: number; readonly catalogue: Promise<Catalogue> } | null = null;
  return async () => {
    const version = await store.stock.version();
    if (kept === null || kept.version !== version) {
      const catalogue = load(parts);
      const loading = { version, catalogue };
      kept = loading;
      // What failed is tried again at the next message.
      catalogue.catch(() => {
        if (kept === loading) kept = null;
      });
    }
    return kept.catalogue;
  };
}

/** Reads until nothing was imported or taken back meanwhile: half of one stock and half of another is none. */
async function load(parts: CatalogueParts): Promise<Catalogue> {
  for (;;) {
    const version = await parts.store.stock.version();
    const catalogue = await read(parts);
    if ((await parts.store.stock.version()) === version) return catalogue;
  }
}

async function read({ store, numberFormats, motors, today }: CatalogueParts): Promise<Catalogue> {
  const dateOf = async (kind: "motors" | "spares") => (await store.stock.current(kind))?.importedOn ?? today;
  return {
    motors: motors ?? (await storedItems(store, "motors")),
    pumps: await storedItems(store, "pumps"),
    spares: await storedItems(store, "spares"),
    numberFormats,
    importedOn: motors === undefined ? await dateOf("motors") : today,
    sparesImportedOn: await dateOf("spares"),
  };
}
