import type { RatingValue } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import type { Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** The figure here as a new value of the same rating, when it suits. */
export function revalue(tokens: readonly Token[], at: number, claim: Standing): Standing | undefined {
  const token = tokens[at];
  if (claim.rating === "modelNumbers" || claim.rating === "serialNumber") {
    if (token?.kind !== "code") return undefined;
    return {
      ...claim,
      value: token.chunk.text as RatingValue<"serialNumber">,
      start: at,
      end: at + 1,
      from: at,
      to: at + 1,
    };
  }
  const best = parseValue(claim.rating, tokens, at)
    .filter(({ half }) => !half)
    .sort((a, b) => b.fit - a.fit)[0];
  if (!best || best.fit < 0.8) return undefined;
  return { ...claim, value: best.value, start: at, end: best.end, from: at, to: best.end, bare: false };
}
