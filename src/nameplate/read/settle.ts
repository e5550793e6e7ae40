import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cueBetween } from "./context.ts";
import { goTogether, suits } from "./plausible.ts";
import { isMark, isWord } from "./token.ts";
import { listRatings } from "./values.ts";

/** One value from all that was said of one rating: the last word wins; the two values of a list join. */
export function settle(context: Context, rating: RatingName, all: readonly Standing[]): Standing | undefined {
  const claims = ofMotor(context, all);
  const named = claims.filter((claim) => !claim.bare);
  const alone = claims.filter((claim) => claim.bare);
  const belongs = (claim: Standing) => named.every((other) => pairs(rating, claim.value, other.value));
  const keepBare =
    named.length === 0 ||
    alone.length === 0 ||
    corrects(context, claims) ||
    (listRatings.has(rating) && alone.every(belongs));
  const said = keepBare ? [...claims] : named;
  // "frame 56 … it's a 56J"
  const fuller =
    rating === "frame" &&
    alone.find(({ value }) =>
      named.some(
        (other) => /^\d+$/.test(String(other.value)) && String(value).startsWith(String(other.value)),
      ),
    );
  if (fuller) return fuller;
  if (rating === "modelNumbers") return allNumbers(context, said);
  const last = said.at(-1);
  if (!last || said.length === 1) return last;
  const read = said.filter(({ value }) => value !== undefined);
  if (last.value === undefined && read.length > 0 && !corrects(context, said)) return read.at(-1);
  if (listRatings.has(rating)) return joined(context, rating, read) ?? last;
  // "1 hp/.12 hp": of a dual horsepower the first counts.
  const [high, low] = said.slice(-2);
  const dual = rating === "hp" || rating === "totalHp";
  if (dual && high && low && low.from - high.to === 1 && isMark(context.tokens[high.to], "/")) return high;
  const differ = said.some((claim) => !same(claim.value, last.value));
  // "3 hp? 8 hp?"
  if (differ && said.every((claim) => isMark(context.tokens[claim.to], "?")))
    return { ...last, value: undefined };
  return last;
}

/** "motor 1.5 HP, pump 2.0 HP": where the two are told apart, the motor's figure counts. */
function ofMotor({ tokens, clauses, clauseAt }: Context, claims: readonly Standing[]): readonly Standing[] {
  if (claims.length < 2 || claims.every((claim) => same(claim.value, claims[0]?.value))) return claims;
  const says = (claim: Standing, word: string) => {
    const clause = clauses[clauseAt[claim.start] ?? 0];
    return tokens.slice(clause?.start, clause?.end).some((token) => isWord(token, word));
  };
  const motors = claims.filter((claim) => says(claim, "motor"));
  const others = claims.filter((claim) => !says(claim, "motor") && says(claim, "pump"));
  return motors.length > 0 && motors.length + others.length === claims.length ? motors : claims;
}

/** "19.2 A at 115 V, 9.6 A at 230 V": single values of one rating make one list, in the order written. */
function joined(context: Context, rating: RatingName, claims: readonly Standing[]): Standing | undefined {
  let whole = claims[0];
  for (const claim of claims.slice(1)) {
    if (!whole) break;
    const list = whole.value as number[];
    const more = claim.value as number[];
    const only = isWord(context.tokens[claim.to], "only");
    const turned =
      only || claim.instead || cueBetween(context, whole.end, claim.start, "correction", "retraction");
    if (turned || (rating === "volts" && ofTwoMotors(context, whole, claim))) whole = claim;
    else if (more.every((value) => list.includes(value))) continue;
    else if (list.every((value) => more.includes(value))) whole = claim;
    else if (
      more.length === 1 &&
      claim.start - whole.end <= 14 &&
      suits(rating, more[0] ?? 0) > 0 &&
      list.every((value) => goTogether(rating, value, more[0] ?? 0) && apart(rating, value, more[0] ?? 0))
    )
      whole = { ...whole, value: [...list, ...more] as RatingValue<RatingName>, to: claim.to };
    else whole = claim;
  }
  return whole;
}

/** "one says 1 hp 115 V, the other 1.5 hp 230 V": each stands beside a horsepower or frame of its own. */
function ofTwoMotors({ stated }: Context, first: Standing, second: Standing): boolean {
  const beside = stated.within(first.start - besideReach, second.end + besideReach);
  return (["hp", "totalHp", "frame"] as const).some((rating) => {
    const [one, ...others] = beside.filter((claim) => claim.rating === rating && claim.value !== undefined);
    const other = others.at(-1);
    if (!one || !other || same(one.value, other.value)) return false;
    return one.start < second.start && other.start > first.end;
  });
}

const besideReach = 10;

/** Two voltages a few percent apart, said one by one, are two opinions, but for 200 or 208 with 230. */
function apart(rating: RatingName, first: number, second: number): boolean {
  const [low, high] = [Math.min(first, second), Math.max(first, second)];
  // Two currents of one voltage are written as one range (9.8-9.6); told one by one they are two opinions.
  if (rating === "amps" || rating === "serviceFactorAmps") return high / low > 1.5;
  return rating !== "volts" || high / low > 1.5 || ((low === 200 || low === 208) && high === 230);
}

function pairs(rating: RatingName, one: unknown, other: unknown): boolean {
  if (!Array.isArray(one) || !Array.isArray(other)) return false;
  return one.every((a) => other.every((b) => a === b || goTogether(rating, Number(a), Number(b))));
}

function corrects(context: Context, claims: readonly Standing[]): boolean {
  return cueBetween(
    context,
    claims[0]?.end ?? 0,
    claims.at(-1)?.start ?? 0,
    "correction",
    "retraction",
    "negator",
  );
}

/** Model, part, catalogue and type numbers in text order, upper case, each once. */
function allNumbers(context: Context, claims: readonly Standing[]): Standing | undefined {
  const [first] = claims;
  if (!first) return undefined;
  const kept: string[] = [];
  let before = first;
  for (const claim of claims) {
    if (claim.value === undefined) continue;
    const text = String(claim.value).toUpperCase();
    if (claim !== first && cueBetween(context, before.end, claim.start, "correction", "retraction"))
      kept.pop();
    if (!kept.includes(text)) kept.push(text);
    before = claim;
  }
  return { ...first, value: kept.length > 0 ? (kept as RatingValue<RatingName>) : undefined, to: before.to };
}

function same(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
