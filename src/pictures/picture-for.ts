import type { Pending } from "../conversation/thread.ts";
import type { Wording } from "../conversation/wording.ts";
import { isNameplateRating, type RatingName } from "../nameplate/vocabulary.ts";
import { breakersPicture } from "./breakers.ts";
import { type DrawnRating, isDrawn, readFrom } from "./label/sample.ts";
import { labelPicture } from "./label.ts";
import { facePicture, mountPicture, shaftPicture } from "./mount.ts";
import type { Picture } from "./picture.ts";
import { placesPicture } from "./places.ts";

/** What a picture can help with: reading one rating, or finding the motor's label at all. */
export type PictureSubject = RatingName | "label";

/** The picture that helps to read one rating, or to find the label; null where none helps. */
export function pictureFor(subject: PictureSubject, wording: Wording): Picture | null {
  return subject === "label" ? placesPicture("motor", wording) : pictureForAll([subject], wording);
}

/** The picture that belongs to what the bot has just asked; null where none helps. */
export function pictureOf(pending: Pending, wording: Wording): Picture | null {
  switch (pending.kind) {
    case "ratings":
      return pictureForAll(pending.ratings, wording);
    case "doubt": {
      const { also } = pending.proposal;
      return pictureForAll(also ? [pending.rating, also.rating] : [pending.rating], wording);
    }
    case "number":
      return pictureForAll(["modelNumbers"], wording);
    case "nothing":
    case "power-off":
    case "erase":
      return null;
  }
}

/** Of several questions the one hardest to put in words is drawn; entries of the label are marked together. */
function pictureForAll(asked: readonly RatingName[], wording: Wording): Picture | null {
  const asks = (rating: RatingName) => asked.includes(rating);
  if (asks("flange") && asks("shaft")) return mountPicture(wording);
  if (asks("flange")) return facePicture(wording);
  if (asks("shaft")) return shaftPicture(wording);
  if (asks("breakerPoles") || asks("supplyVolts")) return breakersPicture("poles", wording);
  if (asks("breakerAmps")) return breakersPicture("amps", wording);
  if (asks("pumpModel")) return placesPicture("pump", wording);
  const drawn = [...new Set(asked.flatMap(drawnAs))];
  return drawn.length > 0 ? labelPicture(drawn, wording) : null;
}

function drawnAs(rating: RatingName): readonly DrawnRating[] {
  if (isDrawn(rating)) return [rating];
  const from = isNameplateRating(rating) ? readFrom[rating as keyof typeof readFrom] : undefined;
  return from === undefined ? [] : [from];
}
