import { isNameplateRating, type RatingName, type RatingValue } from "../vocabulary.ts";
import type { Claim } from "./candidate.ts";
import type { Context } from "./context.ts";
import { insideFigure } from "./judge.ts";
import type { Name } from "./naming.ts";
import type { Owner } from "./owner.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/**
 * Figures that stand alone between others of a label, which a person in the trade reads by their place and
 * size: `3/4 115/230 48Y` begins with horsepower. Only what nothing else explained is looked at.
 */
export function selfEvident(
  { tokens }: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  claims: readonly Claim[],
): Claim[] {
  const found: Claim[] = [];
  // "el motor es de 3/4" needs nothing else of the label.
  const ofMotor = tokens.some(
    (token, at) =>
      isWord(token, "motor", "mine") &&
      ((isWord(tokens[at + 1], "is", "es") && isWord(tokens[at + 2], "de", "a")) ||
        isMark(tokens[at + 2], "/") ||
        isMark(tokens[at + 3], "/")),
  );
  if (!ofMotor && !claims.some(({ rating }) => isNameplateRating(rating))) return found;
  const has = (rating: RatingName) =>
    claims.some((claim) => claim.rating === rating) || found.some((claim) => claim.rating === rating);
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token?.kind !== "number" || explained[at] || owners[at] !== "label") continue;
    // "Two voltages are listed" counts.
    if (token.form === "words" && tokens[at + 1]?.kind === "word") continue;
    const take = (rating: RatingName, accept: (value: number) => boolean): boolean => {
      if (has(rating)) return false;
      for (const parsed of parseValue(rating, tokens, at).reverse()) {
        const value = Array.isArray(parsed.value) ? Number(parsed.value[0]) : Number(parsed.value);
        if (parsed.half || !accept(value) || (Array.isArray(parsed.value) && parsed.value.length > 1))
          continue;
        if (
          !standsAlone(tokens, explained, at, parsed.end - 1) &&
          !(rating === "hp" && isHorseFraction(tokens, at, parsed.end))
        )
          continue;
        found.push({
          rating,
          value: parsed.value as RatingValue<RatingName>,
          start: at,
          end: parsed.end,
          score: 0.5,
          bare: true,
        });
        at = parsed.end - 1;
        return true;
      }
      return false;
    };
    const leads = !claims.some((claim) => claim.end <= at && claim.rating !== "modelNumbers");
    // "… 1PH SF1.25 40C"
    const scale = tokens[isMark(tokens[at + 1], "°", "º") ? at + 2 : at + 1];
    const celsius = scale?.kind === "word" && scale.norm === "c" && scale.upper && scale.glued;
    if (celsius && take("ambientC", (value) => [40, 45, 50, 55, 60, 65].includes(value))) continue;
    if (take("volts", (value) => [115, 208, 230, 220, 240].includes(value))) continue;
    if (
      take(
        "hp",
        (value) =>
          suits("hp", value) === 2 && value <= 3 && (leads || !Number.isInteger(value)) && !has("totalHp"),
      )
    )
      continue;
    const amps = claims.find(({ rating, end }) => rating === "amps" && end <= at && at - end < 5);
    if (amps && isWord(tokens[at - 1], "max") && !has("serviceFactorAmps")) {
      const [most] = parseValue("serviceFactorAmps", tokens, at).filter(
        ({ fit, half }) => fit >= 1.4 && !half,
      );
      const rated = Number([amps.value].flat()[0]);
      if (most && token.value >= rated && token.value < 1.5 * rated && !isWord(tokens[most.end], "breaker")) {
        found.push({ rating: "serviceFactorAmps", value: most.value, start: at, end: most.end, score: 1 });
        at = most.end - 1;
        continue;
      }
    }
    const afterHp = [...claims, ...found].some((claim) => claim.rating === "hp" && claim.end <= at);
    if (afterHp && token.value < 2)
      take("serviceFactor", (value) => value > 1 && value < 2 && !Number.isInteger(value));
  }
  return found;
}

/** "a 3/4 motor", "es de 1 1/2": halves, quarters and thirds are said of horsepower. */
function isHorseFraction(tokens: readonly Token[], first: number, end: number): boolean {
  const last = tokens[end - 1];
  const written =
    end - first >= 3 ||
    tokens
      .slice(first, end)
      .some((token) => token.kind === "number" && token.form === "fraction" && token.value !== 0.5);
  return (
    written &&
    last?.kind === "number" &&
    isWord(tokens[first - 1], "motor", "mine", "a", "de", "es", "is", "its", "un", "una", "says", "dice")
  );
}

const reading = [
  "out",
  "see",
  "read",
  "get",
  "got",
  "says",
  "reads",
  "shows",
  "has",
  "veo",
  "leo",
  "ve",
  "lee",
  "dice",
];

/** Between separators, line ends or other figures of the label; not inside a sentence. */
function standsAlone(
  tokens: readonly Token[],
  explained: readonly boolean[],
  first: number,
  last: number,
): boolean {
  const [before, after] = [tokens[first - 1], tokens[last + 1]];
  // "3450 and 230"
  const joined = isWord(before, "and", "y") && explained[first - 2] === true;
  // "I can make out 230 and 3450"
  const listed = isWord(after, "and", "y") && explained[last + 2] === true;
  const open = (token: Token | undefined, at: number) =>
    token === undefined ||
    (listed && (token === after || isWord(token, ...reading))) ||
    (joined && token === before) ||
    token.kind === "break" ||
    isMark(token, ",", ";", "|", "/", "+", "*", "•") ||
    (isMark(token, "-", "–") && !token?.glued && !tokens[at + 1]?.glued) ||
    explained[at] === true ||
    (token.kind === "number" && !(at < first ? tokens[first] : token)?.glued);
  // "1.5 hp 230 with 8.4 amps"
  const goesOn =
    isWord(after, "with", "and", "con", "y") &&
    explained[first - 1] === true &&
    tokens[last + 2]?.kind === "number";
  if (insideFigure(tokens, last + 1)) return false;
  const ending =
    goesOn || (isMark(after, ".", "!") && (tokens[last + 2] === undefined || !tokens[last + 2]?.glued));
  return (
    (open(before, first - 1) || isMark(before, ":", ".", "!", "?") || opensSpeech(tokens, first - 1)) &&
    (open(after, last + 1) || ending) &&
    !isWord(before, "a")
  );
}

/** "ok so 1.5 115/230 …": words that lead into a list. */
function opensSpeech(tokens: readonly Token[], at: number): boolean {
  const leads = isWord(tokens[at], "so", "ok", "okay", "well", "hi", "hey", "hola", "bueno");
  const before = tokens[isWord(tokens[at - 1], "ok", "okay", "well") ? at - 2 : at - 1];
  return leads && (before === undefined || before.kind === "break" || before.kind === "mark");
}

/** A figure that is a whole sentence or line answers the last name left open: "Service factor? … 1.65." */
export function openQuestions(
  { tokens, names }: Context,
  explained: readonly boolean[],
  claims: readonly Claim[],
): Claim[] {
  const found: Claim[] = [];
  let open: Name | undefined;
  for (let at = 0; at < tokens.length; at++) {
    const name = [...(names[at] ?? [])].sort((a, b) => b.end - a.end)[0];
    if (name && !explained[at] && !(name.weak && !name.upper)) {
      const asked = isMark(tokens[name.end], "?", ":") || tokens[name.end]?.kind === "break";
      open = asked && !claims.some(({ rating }) => rating === name.rating) ? name : open;
      at = name.end - 1;
      continue;
    }
    if (tokens[at]?.kind !== "number" || explained[at] || !open) continue;
    const before = tokens[at - 1];
    const starts = before === undefined || before.kind === "break" || isMark(before, ".", "!", "?", ",", ":");
    if (!starts) continue;
    const parsed = parseValue(open.rating, tokens, at)
      .filter(({ fit, half }) => fit >= 1 && !half)
      .at(-1);
    const after = parsed ? tokens[parsed.end] : undefined;
    const ends =
      parsed && (after === undefined || after.kind === "break" || isMark(after, ".", "!", ",", "?"));
    if (!parsed || !ends) continue;
    found.push({ rating: open.rating, value: parsed.value, start: at, end: parsed.end, score: 1 });
    at = parsed.end - 1;
    open = undefined;
  }
  return found;
}
