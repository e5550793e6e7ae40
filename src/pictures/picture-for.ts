import type { Pictured } from "../conversation/pictured.ts";
import type { Wording } from "../conversation/wording.ts";
import { isNameplateRating, type RatingName } from "../nameplate/vocabulary.ts";
import { breakersPicture } from "./breakers.ts";
import { briefCard } from "./brief-card.ts";
import { type DrawnRating, isDrawn, readFrom } from "./label/sample.ts";
import { labelPicture } from "./label.ts";
import { facePicture, shaftPicture } from "./mount.ts";
import type { Picture } from "./picture.ts";
import { placesPicture } from "./places.ts";
import { runningCostPicture } from "./running-cost.ts";

/** Draws what a message names; nothing where no picture helps, or where it is one that this version does not know. */
export function picturesOf(pictured: Pictured, wording: Wording): readonly Picture[] {
  switch (pictured.kind) {
    case "label":
      return [placesPicture("motor", wording)];
    case "ratings":
      return picturesForAll(pictured.ratings, wording);
    case "running-cost":
      return [runningCostPicture(pictured.costs, wording)];
    case "brief":
      return [briefCard(pictured.text, pictured.urgency, wording)];
    default:
      return [];
  }
}

/**
 * Of several questions the one hardest to put in words is drawn; entries of the label are marked together. Face and
 * shaft, which are asked together, are one picture each: in one they would be too tall to read on a phone.
 */
function picturesForAll(asked: readonly RatingName[], wording: Wording): readonly Picture[] {
  const asks = (rating: RatingName) => asked.includes(rating);
  const mount = [
    ...(asks("flange") ? [facePicture(wording)] : []),
    ...(asks("shaft") ? [shaftPicture(wording)] : []),
  ];
  if (mount.length > 0) return mount;
  if (asks("breakerPoles") || asks("supplyVolts")) return [breakersPicture("poles", wording)];
  if (asks("breakerAmps")) return [breakersPicture("amps", wording)];
  if (asks("pumpModel")) return [placesPicture("pump", wording)];
  const drawn = [...new Set(asked.flatMap(drawnAs))];
  return drawn.length > 0 ? [labelPicture(drawn, wording)] : [];
}

function drawnAs(rating: RatingName): readonly DrawnRating[] {
  if (isDrawn(rating)) return [rating];
  const from = isNameplateRating(rating) ? readFrom[rating as keyof typeof readFrom] : undefined;
  return from === undefined ? [] : [from];
}
