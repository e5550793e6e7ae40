/** A frame designation taken apart: the body number and the letters behind it. */
export interface FrameParts {
  readonly body: number;
  readonly letters: string;
}

export type Face = "square" | "round";
export type ShaftEnd = "threaded" | "keyed";

/** Mount that frame letters imply; a missing key is not implied. */
export interface ImpliedMount {
  readonly face?: Face;
  readonly shaft?: ShaftEnd;
}

/**
 * `56Y` -> body 56, letters Y; undefined when the text is no frame designation. A letter before the number (`S56Y`) is
 * the maker's own and says nothing of the mount (NEMA MG 1 Part 4, from memory).
 */
export function frameParts(frame: string): FrameParts | undefined {
  const match = /^(?:[A-Z](?=\d+[A-Z]))?(\d{2,3})([A-Z]{0,3})$/.exec(frame);
  if (!match?.[1]) return undefined;
  return { body: Number(match[1]), letters: match[2] ?? "" };
}

/**
 * Height of the shaft centre above the foot in inches (dimension D): two-digit frame number / 16, or the
 * first two digits of a three-digit number / 4. It says how fat the body is even where there is no foot.
 * Source: NEMA MG 1 Part 4.
 */
export function shaftHeightIn(body: number): number {
  return body < 100 ? body / 16 : Math.floor(body / 10) / 4;
}

const mountByLetters: Readonly<Record<string, ImpliedMount>> = {
  // MG 1 Part 4 only says that Y is a mount outside the standard; "square, threaded" is common practice, and
  // some Y motors are held by long bolts through the body instead.
  Y: { face: "square", shaft: "threaded" },
  J: { face: "round", shaft: "threaded" },
  C: { face: "round", shaft: "keyed" },
  TC: { face: "round", shaft: "keyed" },
  // Z marks a shaft outside the standard, so only the face is implied.
  YZ: { face: "square" },
  JZ: { face: "round" },
  CZ: { face: "round" },
};

/**
 * Face and shaft implied by the frame letters: Y square and threaded, J round and threaded, C round and
 * keyed (J and C: NEMA MG 1 Parts 4 and 18; as a rule for pool motors: common practice, no source).
 */
export function impliedMount(frame: string): ImpliedMount {
  return mountByLetters[frameParts(frame)?.letters ?? ""] ?? {};
}

/** Body numbers of small motors: NEMA MG 1 Part 4 (42 to 215) and IEC 60072-1 shaft heights in mm (63 to 112). */
const bodies: ReadonlySet<number> = new Set([
  42, 48, 56, 66, 143, 145, 182, 184, 213, 215, 63, 71, 80, 90, 100, 112,
]);

/** True for a frame designation whose body number is one that small motors are built in. */
export function isKnownFrame(frame: string): boolean {
  const parts = frameParts(frame);
  return parts !== undefined && bodies.has(parts.body);
}
