import type { RatingName } from "../vocabulary.ts";
import { parseFrame } from "./frames.ts";
import { parseList } from "./lists.ts";
import type { Parsed } from "./parsed.ts";
import { parseScalar } from "./scalars.ts";
import type { Token } from "./token.ts";

export const listRatings: ReadonlySet<RatingName> = new Set([
  "volts",
  "amps",
  "serviceFactorAmps",
  "rpm",
  "hz",
]);

const scalarRatings: ReadonlySet<RatingName> = new Set([
  "hp",
  "serviceFactor",
  "totalHp",
  "kw",
  "phase",
  "ambientC",
  "capacitorUf",
  "breakerAmps",
  "supplyVolts",
  "hoursPerDay",
]);

/** Every way to read a value of this rating that starts at this token; most explains most last. */
export function parseValue(rating: RatingName, tokens: readonly Token[], at: number): Parsed[] {
  if (listRatings.has(rating)) return parseList(rating, tokens, at);
  if (scalarRatings.has(rating)) return parseScalar(rating, tokens, at);
  if (rating === "frame") return parseFrame(tokens, at);
  return [];
}
