import type { RatingName } from "../nameplate/vocabulary.ts";
import type { CostComparison } from "./money.ts";
import type { Pending, Urgency } from "./thread.ts";

/**
 * What a drawn picture shows, as plain data that is kept with the message: the talk and the desk name it, a channel
 * that can show pictures draws it.
 */
export type Pictured =
  /** Where the motor's label is. */
  | { readonly kind: "label" }
  /** Where ratings stand or how they look. */
  | { readonly kind: "ratings"; readonly ratings: readonly RatingName[] }
  | { readonly kind: "running-cost"; readonly costs: CostComparison }
  /** For staff only. */
  | { readonly kind: "brief"; readonly text: string; readonly urgency: Urgency };

/** The picture that helps to answer what is asked; undefined where none does. */
export function pictureOfQuestion(pending: Pending): Pictured | undefined {
  const ratings = ratingsAsked(pending);
  return ratings.length > 0 ? { kind: "ratings", ratings } : undefined;
}

function ratingsAsked(pending: Pending): readonly RatingName[] {
  switch (pending.kind) {
    case "ratings":
      return pending.ratings;
    case "doubt": {
      const { also } = pending.proposal;
      return also ? [pending.rating, also.rating] : [pending.rating];
    }
    case "number":
      return ["modelNumbers"];
    case "nothing":
    case "power-off":
    case "erase":
      return [];
  }
}
