import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { PhraseBook } from "./phrases.ts";
import { tellsOfFace } from "./roundOrSquare.ts";
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
  square, squared, squarish, round, threads, continuous, circular, cont, continua, continuo, variable, cuadrada,
  cuadrado, redonda, redondo
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

/** "square flange", "single phase", "threaded", "CONT": values that name themselves. */
export function selfNaming(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const screwed = screwsOn(tokens, at);
    if (screwed) candidates.push(screwed);
    for (const match of values.matchesAt(tokens, at))
      for (const { rating, value, phrase } of match.found) {
        // "Do the variable speed motors save money?": many motors are no motor in question.
        if (rating === "speedKind" && isKind(tokens, match.start, match.end)) continue;
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
  }
  return candidates;
}

const screwing =
  /^(?:screws?|screwed|screwing|threads?|threaded|spins?|twists?|enrosca|enroscado|atornilla|rosca)$/;
const onto = ["on", "onto", "into", "to", "off", "en", "al", "a"];

/** "the impeller screws right onto the shaft", "el impulsor se enrosca en el eje". */
function screwsOn(tokens: readonly Token[], at: number): Candidate | undefined {
  const verb = tokens[at];
  if (verb?.kind !== "word" || !screwing.test(verb.norm)) return undefined;
  let end = at + 1;
  while (end < at + 3 && isWord(tokens[end], "right", "straight", "just", "directly", "itself", "directo"))
    end += 1;
  if (!isWord(tokens[end], ...onto)) return undefined;
  const impeller = tokens
    .slice(Math.max(0, at - 6), at)
    .some((token) => isWord(token, "impeller", "impulsor", "propela", "turbina"));
  const shaft = tokens.slice(end, end + 5).some((token) => isWord(token, "shaft", "eje", "flecha"));
  if (!impeller && !shaft) return undefined;
  const claims = [
    { rating: "shaft" as const, value: "threaded" as const, start: at, end: end + 1, score: 3 },
  ];
  return { start: at, end: end + 1, score: 3, claims };
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
  const ofFace = tellsOfFace(tokens, start, end);
  if (ofFace !== undefined) return !ofFace;
  return (
    (next?.kind === "word" && notAfter.has(next.norm)) ||
    (previous?.kind === "word" && notBefore.has(previous.norm))
  );
}

function isKind(tokens: readonly Token[], start: number, end: number): boolean {
  if (!isWord(tokens[end], "motors", "pumps", "ones", "motores", "bombas")) return false;
  const before = tokens.slice(Math.max(0, start - 4), start);
  return !before.some((token) => isWord(token, "have", "our", "my", "both", "got", "tengo", "mis"));
}

/** "four bolts that go all the way through": what goes through must be bolts. */
function boltsNear(tokens: readonly Token[], at: number): boolean {
  return tokens
    .slice(Math.max(0, at - 12), at + 8)
    .some((token) => isWord(token, "bolt", "bolts", "screws", "rods", "tornillos", "pernos"));
}
