import type { Wording } from "../conversation/wording.ts";
import { faces } from "./mount/faces.ts";
import { shafts } from "./mount/shafts.ts";
import { type Picture, picture, stack } from "./picture.ts";
import { caution, remark, title } from "./writing.ts";

/** Square against round faces with their bolt pattern, and the through-bolt mount. */
export function facePicture(wording: Wording): Picture {
  const say = (key: string) => wording.say("pictures", key);
  return picture(
    stack([title(say("faces.title")), faces(wording), remark(say("faces.remark"))]),
    say("faces.alt"),
  );
}

/** Threaded against keyed shaft end. */
export function shaftPicture(wording: Wording): Picture {
  const say = (key: string) => wording.say("pictures", key);
  return picture(
    stack([
      title(say("shafts.title")),
      shafts(wording),
      caution(say("shafts.caution")),
      remark(say("shafts.remark")),
    ]),
    say("shafts.alt"),
  );
}
