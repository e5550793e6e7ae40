import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { PhraseBook } from "./phrases.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";
import { valuePhrases } from "./words/values.ts";

const values = new PhraseBook<{ rating: RatingName; value: string | number; phrase: string }>({
  colons: true,
});
for (const [rating, value, phrases] of valuePhrases)
  for (const phrase of phrases) values.add(phrase, { rating, value, phrase });

/** One-word values that are everyday words too: not with a word of these before or after. */
const everyday = new Set(
  list(`
  square, squared, round, threads, continuous, circular, cont, continua, continuo, variable
`),
);
const notAfter = new Set(
  list(`
  feet, foot, ft, inch, inches, pool, d, year, trip, here, up, off, about, noise, noisy, sound, hum, pools,
  spa, table, box, shape, tub
`),
);
const notBefore = new Set(
  list(`
  year, all, other, first, second, next, way, go, turn, per
`),
);

/** What else of a pool and its place is round or square. */
const surroundings = list(`
  pool, pools, spa, tub, tubs, jacuzzi, pad, pads, slab, patio, deck, yard, house, shed, table, box, lid, cover, basket,
  strainer, filter, tank, light, grate, skimmer, vault, hole, pipe, tile, tiles, window, room, alberca, piscina, losa,
  patio, caja, tapa, filtro, tanque
`);
/** What of a motor is round or square. */
const faces = list(`
  flange, face, mount, mounting, plate, brida, cara, pattern, end
`);

/** "square flange", "single phase", "threaded", "CONT": values that name themselves. */
export function selfNaming(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++)
    for (const match of values.matchesAt(tokens, at))
      for (const { rating, value, phrase } of match.found) {
        if (isEveryday(tokens, match.start, match.end, phrase)) continue;
        if (
          value === "through-bolt" &&
          !/bolt|tornillo|perno/.test(phrase) &&
          !boltsNear(tokens, match.start)
        )
          continue;
        const score = 2.4 + 0.3 * (match.end - match.start);
        const claim = {
          rating,
          value: value as RatingValue<RatingName>,
          start: match.start,
          end: match.end,
          score,
        };
        candidates.push({ start: match.start, end: match.end, score, claims: [claim] });
      }
  return candidates;
}

/** A value word that means something else here: "square feet", "all year round", a key "3/16 square". */
function isEveryday(tokens: readonly Token[], start: number, end: number, phrase: string): boolean {
  if (!everyday.has(phrase)) return false;
  const [previous, next] = [tokens[start - 1], tokens[end]];
  const before = tokens.slice(Math.max(0, start - 5), start);
  const size =
    isMark(tokens[start - 2], "/") && before.some((token) => isWord(token, "key", "inches", "inch"));
  if (phrase === "square" && size) return true;
  // "round two" counts rounds.
  if (phrase === "round" && next?.kind === "number" && next.value <= 3) return true;
  // "the flange is square about 6.5 inches"
  const ofFace = tokens.slice(Math.max(0, start - 4), start).some((token) => isWord(token, ...faces));
  if (ofFace && !tokens.slice(end, end + 3).some((token) => isWord(token, ...surroundings))) return false;
  // "a square concrete pad", "the round hot tub"
  const around = tokens.slice(end, end + 3);
  const stop = around.findIndex((token) => token.kind !== "word" || isWord(token, ...faces));
  if (around.slice(0, stop < 0 ? 3 : stop).some((token) => isWord(token, ...surroundings))) return true;
  return (
    (next?.kind === "word" && notAfter.has(next.norm)) ||
    (previous?.kind === "word" && notBefore.has(previous.norm))
  );
}

/** "four bolts that go all the way through": what goes through must be bolts. */
function boltsNear(tokens: readonly Token[], at: number): boolean {
  return tokens
    .slice(Math.max(0, at - 12), at + 8)
    .some((token) => isWord(token, "bolt", "bolts", "screws", "rods", "tornillos", "pernos"));
}
