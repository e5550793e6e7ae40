import { frameParts, isKnownFrame } from "../../../engineering/frames.ts";
import { blanks, type Check } from "../check.ts";

/** Letters met behind a small motor's frame number. Source: NEMA MG 1 Part 4; in part from memory. */
const letters = /^(?:|[CHJTYZ]|HC|TC|TCZ?|[CHJY]Z|HCZ|JM|JP|CY|TZ)$/;

/** A body number that motors are built in, and letters that frames carry: 65Y and 56V are neither. */
export const knownFrame: Check = {
  name: "known-frame",
  source: "NEMA MG 1 Part 4; IEC 60072-1",
  reasons: ["frame-unknown"],
  find: (subject) => {
    const { frame } = subject.nameplate;
    if (frame === undefined) return [];
    if (isKnownFrame(frame) && letters.test(frameParts(frame)?.letters ?? "")) return [];
    return [
      {
        ratings: ["frame"],
        reason: "frame-unknown",
        values: blanks(subject, "frame"),
        severity: "doubtful",
      },
    ];
  },
};
