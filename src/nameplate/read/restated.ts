import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Claim, Standing } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** Ratings of one unit: said again with its unit only, a figure is of the kind spoken of before. */
const kin: Partial<Record<RatingName, readonly RatingName[]>> = {
  amps: ["breakerAmps", "serviceFactorAmps"],
  volts: ["supplyVolts"],
  hp: ["totalHp"],
};

const ownWords = ["label", "plate", "motor", "nameplate", "tag", "sticker", "placa", "etiqueta"];

/** "breaker is a 15, no sorry a 20 amp": the second figure corrects the breaker, not the motor. */
export function restated(context: Context, claims: readonly Standing[]): Standing[] {
  return claims.map((claim, index) => {
    const before = claims[index - 1];
    // "thp is 1.65, that's not the hp, the hp is 1.5": it has its own name.
    if (claim.from < claim.start && claim.rating === "hp") return claim;
    if (!before || !kin[claim.rating]?.includes(before.rating) || claim.start - before.end > 9) return claim;
    const turns = cuesIn(context, before.end, claim.start, "correction", "retraction", "negator");
    const between = context.tokens.slice(before.end, claim.start);
    if (turns.length === 0 || between.some((token) => isWord(token, ...ownWords))) return claim;
    const value = Array.isArray(before.value) ? claim.value : ([claim.value].flat()[0] as number);
    return { ...claim, rating: before.rating, value: value as RatingValue<RatingName> };
  });
}

/** "3/4 not 1/2 for the horsepower": what stands before a denied value is of the same kind. */
export function ratherThan({ tokens, cues }: Context, denied: readonly Standing[]): Claim[] {
  return denied.flatMap((claim): Claim[] => {
    const cue = cues.before(claim.start, 4).find(({ kind }) => kind === "negator");
    if (!cue || claim.value === undefined) return [];
    let last = cue.start;
    while (last > 0 && isMark(tokens[last - 1], ",", "-", "(")) last -= 1;
    for (let start = Math.max(0, last - 6); start < last; start++) {
      if (partOfFigure(tokens, start)) continue;
      const whole = parseValue(claim.rating, tokens, start)
        .filter(({ end, half, fit }) => end === last && !half && fit > 0)
        .sort((a, b) => b.fit - a.fit)[0];
      if (whole) return [{ rating: claim.rating, value: whole.value, start, end: last, score: 1 }];
    }
    return [];
  });
}

/** "hp 1.5… wait that's the service factor": the figure just given was of another rating. */
export function renamed({ tokens, names }: Context, claims: readonly Standing[]): Standing[] {
  return claims.map((claim) => {
    for (let at = claim.to; at < claim.to + pronounReach; at++) {
      const token = tokens[at];
      if (token?.kind === "number" || token?.kind === "code") return claim;
      if (!isWord(token, "thats", "that", "which")) continue;
      let start = isWord(token, "thats") ? at + 1 : at + 2;
      if (start === at + 2 && !isWord(tokens[at + 1], "is", "was")) continue;
      while (isWord(tokens[start], "the", "my", "actually", "really")) start += 1;
      const name = names[start]?.toSorted((a, b) => b.end - a.end)[0];
      const next = name ? tokens[name.end] : undefined;
      const ends = next === undefined || next.kind === "break" || isMark(next, ".", ",", "!", ";", ")", "-");
      if (!name || !ends || name.rating === claim.rating) return claim;
      const value = parseValue(name.rating, tokens, claim.start).find(
        ({ end, half, fit }) => end === claim.end && !half && fit >= 0.8,
      );
      return value ? { ...claim, rating: name.rating, value: value.value } : claim;
    }
    return claim;
  });
}

const pronounReach = 7;

const partOfFigure = (tokens: readonly Token[], at: number) =>
  isMark(tokens[at - 1], "/", "-") && tokens[at - 2]?.kind === "number";
