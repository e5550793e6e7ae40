import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { parseFrame } from "./frames.ts";
import { isLabelWord } from "./naming.ts";
import type { Parsed } from "./parsed.ts";
import { goTogether, suits } from "./plausible.ts";
import { claim } from "./propose.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** Figures nobody in the trade doubts without a word: 115/230, 3450, 56Y. */
export function bare(tokens: readonly Token[]): Candidate[] {
  const candidates: Candidate[] = [];
  const offer = (rating: RatingName, at: number, parsed: Parsed, score: number) =>
    candidates.push({
      start: at,
      end: parsed.end,
      score,
      claims: [{ ...claim(rating, parsed, at, score), bare: true }],
    });
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token?.kind === "word") {
      for (const parsed of parseFrame(tokens, at)) offer("frame", at, parsed, 1.2);
      continue;
    }
    if (token?.kind === "code") for (const parsed of parseFrame(tokens, at)) offer("frame", at, parsed, 1.4);
    if (token?.kind !== "number") continue;
    // "56 something", "56 and a letter I can't read": the frame, but not all of it.
    const following = tokens.slice(at + 1, at + 5);
    const unread = following.some((next) => isWord(next, "something", "letter", "letra", "algo"));
    if (unread && (token.norm === "56" || token.norm === "48"))
      offer("frame", at, { end: at + 1, value: undefined, fit: 1, half: true }, 0.6);
    for (const parsed of parseFrame(tokens, at)) {
      const value = String(parsed.value);
      if (/^(?:42|48|56|66|14[35]|18[24])[A-Z]/.test(value)) offer("frame", at, parsed, 1.4);
    }
    for (const parsed of suits("volts", token.value) === 2 || token.pair
      ? parseValue("volts", tokens, at)
      : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      if (list.length > 1 && list.every((volts) => suits("volts", volts) === 2))
        offer("volts", at, parsed, 1 + 0.2 * list.length);
    }
    // "1.5 hp at 230"
    const atVolts =
      (isWord(tokens[at - 1], "at", "a") || isMark(tokens[at - 1], "@")) &&
      isWord(tokens[at - 2], "hp", "horse", "horsepower", "amps", "amp", "caballos", "amperes", "amperios");
    const onlyBeside =
      isWord(tokens[at - 1], "only", "just", "straight", "both") || isWord(tokens[at + 1], "only");
    if ((onlyBeside || atVolts) && [115, 208, 230].includes(token.value))
      offer("volts", at, { end: at + 1, value: [token.value] as RatingValue<RatingName>, fit: 2 }, 0.8);
    const speed =
      !isOtherNumber(tokens, at) &&
      !isCalled(tokens, at) &&
      (bareSpeeds.has(token.value) || bareSpeeds.has(token.thousands ?? 0));
    for (const parsed of speed ? parseValue("rpm", tokens, at) : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      if (list.every((rpm) => bareSpeeds.has(rpm))) offer("rpm", at, parsed, 0.8 + 0.2 * list.length);
    }
    for (const parsed of token.value >= 3 && token.value <= 40 ? parseValue("amps", tokens, at) : []) {
      const list = Array.isArray(parsed.value) ? (parsed.value as number[]) : [];
      const [first, second] = list;
      const dual =
        first !== undefined && second !== undefined && list.length === 2 && goTogether("amps", first, second);
      if (
        dual &&
        list.every((amps) => amps >= 3 && amps <= 40) &&
        list.some((amps) => !Number.isInteger(amps)) &&
        parsed.fit > 1.5
      )
        offer("amps", at, parsed, 0.7);
    }
  }
  return candidates;
}

/** Speeds of two- and four-pole motors as they are printed on pool labels (common practice, no source). */
export const bareSpeeds: ReadonlySet<number> = new Set([
  3450, 1725, 2850, 2900, 2875, 1425, 3440, 3430, 3400, 3480, 3500, 3490, 3420, 3460, 3470, 2880, 2840, 2860,
  2870, 1750, 1740, 1730, 3410,
]);

/** A telephone or house number is spoken of a few words before: "the phone number on it ends in 3450". */
function isCalled(tokens: readonly Token[], at: number): boolean {
  for (let back = at - 1; back >= Math.max(0, at - 7); back--) {
    const token = tokens[back];
    if (token?.kind === "break" || isMark(token, ".", "!", "?", ";")) return false;
    if (isWord(token, "phone", "telephone", "cell", "zip", "telefono", "address", "invoice", "order"))
      return true;
  }
  return false;
}

/** A house, telephone or room number: "1725 Heron Lane", "ext 3450". */
function isOtherNumber(tokens: readonly Token[], at: number): boolean {
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  if (
    isWord(
      before,
      "phone",
      "ext",
      "unit",
      "apt",
      "suite",
      "room",
      "lot",
      "gate",
      "zip",
      "order",
      "call",
      "code",
      "address",
    )
  )
    return true;
  const street = tokens
    .slice(at + 1, at + 4)
    .some((token) =>
      isWord(
        token,
        "street",
        "st",
        "road",
        "rd",
        "ave",
        "avenue",
        "lane",
        "ln",
        "court",
        "ct",
        "drive",
        "blvd",
      ),
    );
  if (street && after?.kind === "word" && !after.glued) return true;
  return (
    after?.kind === "word" &&
    !after.glued &&
    /^[A-Z][a-z]{2,}/.test(after.chunk.text) &&
    !isLabelWord(after.norm)
  );
}
