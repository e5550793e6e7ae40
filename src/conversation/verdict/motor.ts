import type { Catalogue } from "../../catalogue/types.ts";
import type { StockMotor } from "../../matching/types.ts";
import type { Speaker } from "../speaker.ts";

/** Stock number and description, as said to the customer. */
export function motorName({ sku, description }: StockMotor): string {
  return description === "" ? sku : `${sku} (${description})`;
}

/** The price of a motor or a part, in words. */
export function priceText({ priceUsd }: Pick<StockMotor, "priceUsd">, speaker: Speaker): string {
  if (priceUsd === undefined) return speaker.say("replies", "price.none");
  return speaker.say("replies", "price", { price: priceUsd.toFixed(2) });
}

/** How many there are of a motor or a part, in words. */
export function stockText({ inStock }: Pick<StockMotor, "inStock">, speaker: Speaker): string {
  return inStock > 0
    ? speaker.say("replies", "stock.yes", { count: inStock })
    : speaker.say("replies", "stock.no");
}

/** Of which day prices and stock are; the parts' own day where they were imported on another one. */
export function asOfText({ importedOn, sparesImportedOn = importedOn }: Catalogue, speaker: Speaker): string {
  return importedOn === sparesImportedOn
    ? speaker.say("replies", "asOf", { date: importedOn })
    : speaker.say("replies", "asOf.parts", { date: importedOn, partsDate: sparesImportedOn });
}
