import type { StockMotor } from "../../matching/types.ts";
import type { Speaker } from "../speaker.ts";

/** Stock number and description, as said to the customer. */
export function motorName({ sku, description }: StockMotor): string {
  return description === "" ? sku : `${sku} (${description})`;
}

export function priceText({ priceUsd }: StockMotor, speaker: Speaker): string {
  if (priceUsd === undefined) return speaker.say("replies", "price.none");
  return speaker.say("replies", "price", { price: priceUsd.toFixed(2) });
}

export function stockText({ inStock }: StockMotor, speaker: Speaker): string {
  return inStock > 0
    ? speaker.say("replies", "stock.yes", { count: inStock })
    : speaker.say("replies", "stock.no");
}
