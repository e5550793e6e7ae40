import { type NumberOnRecord, withNumbers } from "../catalogue/numbers-on-record.ts";
import type { Catalogue } from "../catalogue/types.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { localDate, presenceAt } from "../desk/hours.ts";
import type { EngineParts } from "./types.ts";

/** What one message or act may look at. */
export interface Known {
  readonly knowledge: Knowledge;
  /** Numbers on record that are used. */
  readonly numbers: readonly NumberOnRecord[];
}

/** Knowledge as of an instant; numbers on record are read again only when they have changed. */
export function knowing(parts: EngineParts): (at: string) => Promise<Known> {
  const { store, understand, wording } = parts;
  let kept: {
    stock: Catalogue;
    version: number;
    numbers: readonly NumberOnRecord[];
    catalogue: Catalogue;
  } | null = null;

  return async (at) => {
    const stock = await parts.catalogue();
    const version = await store.numbersVersion();
    if (kept === null || kept.stock !== stock || kept.version !== version) {
      const numbers = (await store.numbers()).filter(({ standing }) => standing === "used");
      kept = { stock, version, numbers, catalogue: withNumbers(stock, numbers) };
    }
    const { numbers, catalogue } = kept;
    // Read at each message: they may have been loaded anew.
    const { shop, hours } = parts;
    const presence = presenceAt(hours, at);
    return {
      knowledge: { understand, wording, catalogue, shop, presence, on: localDate(hours, at) },
      numbers,
    };
  };
}
