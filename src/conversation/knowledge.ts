import type { Catalogue } from "../catalogue/types.ts";
import type { Presence } from "./presence.ts";
import type { Understand } from "./understand.ts";
import type { Wording } from "./wording.ts";

/** What the shop is and takes as given; from `data/shop.json`. */
export interface Shop {
  readonly name: string;
  readonly emergencyNumber: string;
  readonly pricePerKwh: number;
  readonly hoursPerDay: number;
}

/** Everything outside the thread that one step may look at. */
export interface Knowledge {
  readonly understand: Understand;
  readonly wording: Wording;
  readonly catalogue: Catalogue;
  readonly shop: Shop;
  /** When a person is there, as seen from the message's instant. */
  readonly presence: Presence;
  /** Local date of the message at the shop, ISO `YYYY-MM-DD`: the day the sale rule is judged on. */
  readonly on: string;
}
