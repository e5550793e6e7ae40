import { isNameplateRating, type RatingName, type RatingValue } from "../vocabulary.ts";
import type { Claim, Standing } from "./candidate.ts";
import { type Context, cuesOf } from "./context.ts";
import type { Name } from "./naming.ts";
import type { Owner } from "./owner.ts";
import type { Parsed } from "./parsed.ts";
import { pumpNamed } from "./pumpAnswer.ts";
import { parseSpecial } from "./special.ts";
import { isWord, type NumberToken, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** A rating that could not be read, and the tokens that say so. */
export type Missing = Pick<Name, "rating" | "start" | "end">;

/** An answer is short; a longer message is read for itself. */
const longestAnswer = 14;

/** Words that are a value only as the answer to a question for it. */
const short: Partial<Record<RatingName, Readonly<Record<string, string | number>>>> = {
  phase: { 1: 1, single: 1, monofasico: 1, 3: 3 },
  speedKind: {
    1: "single",
    single: "single",
    una: "single",
    2: "two",
    dual: "two",
    dos: "two",
    variable: "variable",
  },
  breakerPoles: { 1: 1, single: 1, sencillo: 1, 2: 2, double: 2, doble: 2, 3: 3, triple: 3 },
  shaft: {
    thread: "threaded",
    threads: "threaded",
    screw: "threaded",
    rosca: "threaded",
    key: "keyed",
    slot: "keyed",
  },
  flange: { cuadrado: "square", circle: "round", bolts: "through-bolt" },
  duty: { continuous: "continuous", cont: "continuous" },
};

/** A bare answer to what was just asked: "1.5", "square", "the second one says 9.6". */
export function answers(
  text: string,
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  expecting: readonly RatingName[],
  claims: readonly Claim[],
): Claim[] {
  const open = expecting.filter((rating) => !claims.some((claim) => claim.rating === rating));
  if (open.length === 0) return [];
  const tokens = context.tokens.map((token, at) =>
    asOne(token, context.tokens[at - 1], context.tokens[at + 1]),
  );
  const brief = tokens.length <= longestAnswer;
  const found: Claim[] = [];
  for (let at = 0; at < tokens.length && open.length > 0; at++) {
    const hours =
      open.includes("hoursPerDay") && isWord(tokens[at + 1], "hours", "hrs", "hour", "h", "horas");
    if ((explained[at] && !hours) || owners[at] === "asked" || (!brief && owners[at] !== "label")) continue;
    const options = open.flatMap((rating) =>
      readAs(rating, tokens, at, brief).map((parsed) => ({ rating, parsed })),
    );
    const best = options
      .filter(({ parsed }) => parsed.fit >= 0.8)
      .sort((a, b) => worth(b.parsed, at) - worth(a.parsed, at))[0];
    if (!best) continue;
    const { rating, parsed } = best;
    found.push({
      rating,
      value: parsed.half ? undefined : parsed.value,
      start: at,
      end: parsed.end,
      score: 1,
    });
    open.splice(open.indexOf(rating), 1);
    at = parsed.end - 1;
  }
  const asksName = open.includes("pumpModel") && found.length + claims.length === 0 && brief;
  const name = asksName ? pumpNamed(text) : undefined;
  if (name !== undefined) {
    const from = text.indexOf(name);
    const start = tokens.findIndex((token) => token.end > from);
    const end = tokens.findLastIndex((token) => token.start < from + name.length) + 1;
    found.push({ rating: "pumpModel", value: name, start, end, score: 1 });
  }
  return found;
}

/** Among readings that suit about as well, the one that explains more. */
const worth = (parsed: Parsed, at: number) => parsed.fit + 0.3 * (parsed.end - at);

/** "one" as a number, where it is not a pronoun ("the second one says"). */
function asOne(token: Token, before: Token | undefined, after: Token | undefined): Token {
  if (token.kind !== "word" || !/^(?:one|uno|una|un)$/.test(token.norm)) return token;
  const handle = isWord(after, "handle", "switch", "pole", "phase", "palanca", "fase");
  if (after?.kind === "word" && !handle) return token;
  if (!handle && before?.kind === "word" && !/^(?:just|only|its|is|solo|es)$/.test(before.norm)) return token;
  const { start, end, glued, wide, chunk } = token;
  return {
    kind: "number",
    form: "words",
    value: 1,
    norm: "1",
    lookalikes: 0,
    start,
    end,
    glued,
    wide,
    chunk,
  } satisfies NumberToken;
}

function readAs(rating: RatingName, tokens: readonly Token[], at: number, brief: boolean): Parsed[] {
  const token = tokens[at];
  const words = short[rating];
  const word = token && brief && words && Object.hasOwn(words, token.norm) ? words[token.norm] : undefined;
  if (word !== undefined) return [{ end: at + 1, value: word as RatingValue<RatingName>, fit: 2 }];
  if (rating === "pricePerKwh" && token?.kind === "number") {
    const price = token.value < 2 ? token.value : token.value / 100;
    return price < 1.5 && price > 0.02 ? [{ end: at + 1, value: Number(price.toFixed(4)), fit: 2 }] : [];
  }
  const parsed = parseValue(rating, tokens, at);
  if (parsed.length > 0 || !brief) return parsed;
  const named: Name = { rating, start: at, end: at, weak: false, upper: false };
  return parseSpecial(rating, tokens, at, named, 0);
}

/** The unit said with a bare answer is that of what was asked: "240 V" of the supply, "20 amp" of the breaker. */
const sameUnit: Partial<Record<RatingName, RatingName>> = {
  supplyVolts: "volts",
  breakerAmps: "amps",
  serviceFactorAmps: "amps",
  totalHp: "hp",
};

export function retitled(
  context: Context,
  expecting: readonly RatingName[],
  claims: readonly Standing[],
): Standing[] {
  if (context.tokens.length > longestAnswer || claims.length !== 1) return [...claims];
  return claims.map((claim) => {
    const asked = expecting.find((rating) => sameUnit[rating] === claim.rating);
    if (asked === undefined || expecting.includes(claim.rating)) return claim;
    // Somebody who says "volts" or "hp" first names the label's own.
    if (context.names[claim.from]?.some(({ rating }) => rating === claim.rating)) return claim;
    const [single, ...more] = Array.isArray(claim.value) ? (claim.value as number[]) : [];
    if (asked === "serviceFactorAmps" || asked === "totalHp") return { ...claim, rating: asked };
    return single === undefined || more.length > 0 ? claim : { ...claim, rating: asked, value: single };
  });
}

const modals = /^(?:cant|couldnt|cannot|can not|could not|unable to|no puedo|no pude|no logro)$/;

/** "Can't read it" after a question means what was asked. */
export function unanswered(
  context: Context,
  expecting: readonly RatingName[],
  claims: readonly Claim[],
  missing: readonly Missing[],
): Missing[] {
  const cue = cuesOf(context, "illegible").find(({ phrase }) => !modals.test(phrase));
  if (!cue || claims.length > 0 || missing.length > 0 || context.tokens.length > longestAnswer) return [];
  return expecting.filter(isNameplateRating).map((rating) => ({ rating, start: cue.start, end: cue.end }));
}
