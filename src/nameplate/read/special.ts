import type { RatingName, RatingValue } from "../vocabulary.ts";
import { isCopula } from "./connect.ts";
import { isLabelWord, type Name } from "./naming.ts";
import { isOrdinary } from "./ordinary.ts";
import type { Parsed } from "./parsed.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Values that are letters, minutes or identifiers. */
export function parseSpecial(
  rating: RatingName,
  tokens: readonly Token[],
  at: number,
  name: Name | undefined,
  cost: number,
): Parsed[] {
  if (rating === "insulationClass" || rating === "kvaCode") return parseLetter(rating, tokens, at, cost);
  if (rating === "shaft") return parseShaft(tokens, at);
  if (rating === "duty") return parseMinutes(tokens, at);
  if (rating === "modelNumbers" || rating === "serialNumber") return parseIdentifier(tokens, at, name, cost);
  return [];
}

const threads = /^(?:thread|threads|threading|threaded|screw|screws|screwed|rosca|roscado)$/;
const keys = /^(?:key|keys|keyed|keyway|slot|cuna|cunero|chaveta)$/;

/** "Shaft end: external thread". */
function parseShaft(tokens: readonly Token[], at: number): Parsed[] {
  const token = tokens[at];
  // "keyed shaft no threads"
  if (token?.kind !== "word" || isWord(tokens[at - 1], "no", "not", "without", "sin")) return [];
  if (threads.test(token.norm)) return [{ end: at + 1, value: "threaded", fit: 1.5 }];
  return keys.test(token.norm) ? [{ end: at + 1, value: "keyed", fit: 1.5 }] : [];
}

const insulationLetters = "ABFHEN";
const codeLetters = "ABCDEFGHJKLMNPRSTUV";

function parseLetter(rating: RatingName, tokens: readonly Token[], at: number, cost: number): Parsed[] {
  const token = tokens[at];
  if (token?.kind !== "word" || token.norm.length !== 1) return [];
  const letter = token.norm.toUpperCase();
  if (!/[A-Z]/.test(letter)) return [];
  // "a" and "i" in lower case are words; so is a letter that belongs to the next word.
  if (!token.upper && (letter === "A" || letter === "I") && cost > -0.1) return [];
  // "B's" and "A/C" are no letters of a label; the quotation mark after 'CL B' is none of it.
  const joined =
    (isMark(tokens[at + 1], "/") && (tokens[at + 2]?.norm.length ?? 0) <= 2) ||
    (isMark(tokens[at + 1], "'") && tokens[at + 2]?.glued && tokens[at + 2]?.kind === "word");
  if (joined && tokens[at + 1]?.glued) return [];
  // "class B insulation. I measured": the pronoun.
  const after = tokens[at + 1];
  if (letter === "I" && after?.kind === "word" && !after.upper) return [];
  const known = (rating === "kvaCode" ? codeLetters : insulationLetters).includes(letter);
  if (!known && cost > 0.5) return [];
  return [{ end: at + 1, value: letter, fit: (known ? 1.6 : -0.4) + (token.upper ? 0.4 : 0) }];
}

function parseMinutes(tokens: readonly Token[], at: number): Parsed[] {
  const token = tokens[at];
  if (isWord(token, "cont", "continuous", "continuo", "continua", "contin"))
    return [{ end: at + 1, value: "continuous", fit: 2 }];
  if (token?.kind !== "number") return [];
  const next = isMark(tokens[at + 1], "-") ? at + 2 : at + 1;
  const unit = tokens[next];
  const named = isMark(tokens[at - 1], "=", ":") && isWord(tokens[at - 2], "min", "mins", "minutes");
  if (named) return [{ end: at + 1, value: token.value, fit: 2 }];
  if (isWord(unit, "min", "mins", "minute", "minutes", "minutos"))
    return [{ end: next + 1, value: token.value, fit: 2 }];
  if (isWord(unit, "hr", "hour", "hrs", "hours", "hora"))
    return [{ end: next + 1, value: token.value * 60, fit: 1 }];
  return [];
}

const notIdentifiers = /^(?:19|20)\d\d$/;

const longestIdentifier = 60;

/** "WR-C", without a figure but nothing else either. */
const hyphened = /^[A-Z]{1,5}-[A-Z]{1,5}\b/;

/** Makers number their motors in Latin letters; a word in another script is talk. */
const otherScript = /[^\p{Script=Latin}\p{N}\p{P}\p{S}\s]/u;

/** A model, part or serial number: the whole unbroken run of characters, as typed. */
function parseIdentifier(
  tokens: readonly Token[],
  at: number,
  name: Name | undefined,
  cost: number,
): Parsed[] {
  const token = tokens[at];
  if (!token || token.kind === "mark" || token.kind === "break") return [];
  if (token.chunk.text.length > longestIdentifier || otherScript.test(token.chunk.text)) return [];
  if (token.kind === "number" && token.form !== "digits") return [];
  if (/^\d{1,2}-(?:poles?|speed|phase|wire|handle)$/i.test(token.chunk.text)) return [];
  // The name's own "NO.:" is no part of the number.
  if (token.kind === "word" && !isNoSmallWord(token) && isMark(tokens[at + 1], ".", ":", "=", "#")) return [];
  // "a type 56Y frame": the frame, not a type number.
  if (name?.weak && /^(?:48|56)-?[YJCZ]$/i.test(token.chunk.text)) return [];
  const previous = tokens[at - 1];
  // A run is taken from its beginning, unless the name itself is glued to it ("MODEL:AB12", "model#AB12").
  if (previous && previous.chunk.start === token.chunk.start && at > (name?.end ?? 0)) {
    if (!isMark(previous, "#", ":", "=", "(", '"', ".")) return [];
  }
  let end = at;
  while (end < tokens.length && tokens[end]?.kind !== "break") {
    const next = tokens[end];
    if (!next || (next.chunk.start !== token.chunk.start && !(end > at && next.start < token.chunk.end)))
      break;
    end += 1;
  }
  if (name?.rating === "serialNumber") end = withMiddleRun(tokens, token, end);
  end = withSecondRun(tokens, token, end);
  while (end > at + 1 && isMark(tokens[end - 1], ",", ".", ";", ")", "!", "?", '"', ":")) end -= 1;
  const last = tokens[end - 1];
  if (!last) return [];
  const digits = tokens
    .slice(at, end)
    .some((part) => part.kind === "number" || part.kind === "code" || part.kind === "partial");
  // "TYPE CPS" alone on its line: letters that are a word of the label elsewhere.
  const follows = tokens[at + 1];
  const wholeLine =
    at === name?.end &&
    token.kind === "word" &&
    token.upper &&
    /^[A-Z]{2,4}$/.test(token.chunk.text) &&
    isWord(tokens[name.start], "type", "tipo") &&
    !isOrdinary(token.norm) &&
    (tokens[name.start - 1] === undefined || tokens[name.start - 1]?.kind === "break") &&
    (follows === undefined || follows.kind === "break");
  if (wholeLine) return [{ end: at + 1, value: token.chunk.text as RatingValue<RatingName>, fit: 2.9 }];
  const capitals =
    hyphened.test(token.chunk.text) ||
    tokens.slice(at, end).every((part) => part.kind === "mark" || isLettering(part));
  // "the type is EHL": capitals stand out where the rest is written small.
  const standsOut =
    name?.upper === false && isWord(previous, "is", "es", "says", "dice", "as") && cost <= 1.3;
  if (
    !digits &&
    !((capitals || noVowels(tokens, at, name)) && (cost <= 0.05 || standsOut) && last.end - token.start >= 2)
  )
    return [];
  if (token.kind === "partial") return [{ end, value: undefined, fit: 1, half: true }];
  if (end === at + 1 && notIdentifiers.test(token.norm) && cost > 0.3) return [];
  const text = identifierText(tokens.slice(at, end), token, last);
  const figure = end === at + 1 && token.kind === "number" && !/^\d{4,}$/.test(token.norm);
  // "56Y-230-3450-15": many pieces joined by hyphens are no list of ratings.
  const joined = (token.chunk.text.match(/-/g)?.length ?? 0) >= 3 && end - at >= 5;
  if (joined && name !== undefined && cost < 1.5)
    return [{ end, value: text as RatingValue<RatingName>, fit: 3 + (end - at) }];
  const direct = name !== undefined && cost <= 0.3 && !figure ? 2.5 : 0;
  if (token.kind === "number" && end === at + 1 && name?.weak && cost > 0.3) return [];
  const single = figure
    ? -0.6
    : digits
      ? 1.4 + direct + (direct > 0 ? 1.6 * (end - at - 1) : 0)
      : 0.4 + direct;
  return [{ end, value: text as RatingValue<RatingName>, fit: single }];
}

/** "type fbx, 1 hp": letters that make no word. */
function noVowels(tokens: readonly Token[], at: number, name: Name | undefined): boolean {
  const token = tokens[at];
  const typed = name !== undefined && isWord(tokens[name.start], "type", "tipo") && at === name.end;
  return (
    typed &&
    token?.kind === "word" &&
    /^[bcdfghjklmnpqrstvwxz]{2,4}$/.test(token.norm) &&
    !isOrdinary(token.norm)
  );
}

/** Capitals that are no word: "KD", "SCF"; not "MISSING" in a message that shouts. */
function isLettering(token: Token): boolean {
  if (token.kind !== "word" || !token.upper || !isNoSmallWord(token)) return false;
  return token.norm.length <= 5 && !isOrdinary(token.norm) && !smallWords.has(token.norm);
}

const smallWords = new Set(
  "se ya por esta estan been has have had one anywhere it on the and is are was i you we he she they to of in at que y no si su mi".split(
    " ",
  ),
);

const isNoSmallWord = ({ norm }: Token) => !isLabelWord(norm) && !isCopula(norm);

/** "SERIAL PX 44 1093": of three runs the first is letters and the last too long for a rating. */
function withMiddleRun(tokens: readonly Token[], first: Token, end: number): number {
  const [middle, last] = [tokens[end], tokens[end + 1]];
  const lettered =
    first.kind === "word" && first.upper && isNoSmallWord(first) && first.chunk.text.length <= 3;
  const figures = middle?.kind === "number" && /^\d{2}$/.test(middle.norm) && !middle.glued && !middle.wide;
  const long = last?.kind === "number" && /^\d{4,}$/.test(last.norm) && last.end === last.chunk.end;
  return lettered && figures && long && !last.glued && !last.wide ? end + 2 : end;
}

/** A short first run may be followed by a second one: "S/N 99 1123", "MODEL QX 4410". */
function withSecondRun(tokens: readonly Token[], first: Token, end: number): number {
  const second = tokens[end];
  if (
    first.chunk.text.length > 4 ||
    (first.kind === "word" && !isNoSmallWord(first)) ||
    !/^[A-Z0-9]+$/.test(first.chunk.text) ||
    second?.glued ||
    second?.wide
  )
    return end;
  const number = second?.kind === "number" && /^\d{3,}$/.test(second.norm) && second.end === second.chunk.end;
  const code = second?.kind === "code" && /^[A-Z0-9-]+$/.test(second.chunk.text);
  if (!number && !code) return end;
  const after = tokens[end + 1];
  const measured =
    number &&
    (second.norm === "3450" ||
      second.norm === "1725" ||
      (after?.glued && after.kind === "word") ||
      (after?.kind === "word" && !after.glued && isLabelWord(after.norm) && !after.upper));
  const unit =
    after?.kind === "word" &&
    /^(?:rpm|v|volts|hz|vac|a|amps|hp|mfd|uf)$/.test(after.norm) &&
    tokens[end + 2]?.kind !== "number";
  return measured || unit ? end : end + 1;
}

/** The runs as typed, from the first piece on; of one run alone no further than the last piece. */
function identifierText(pieces: readonly Token[], first: Token, last: Token): string {
  const from = first.start - first.chunk.start;
  if (last.chunk.start === first.chunk.start)
    return first.chunk.text.slice(from, last.end - first.chunk.start);
  const runs = new Map(pieces.map(({ chunk }) => [chunk.start, chunk.text]));
  runs.set(first.chunk.start, first.chunk.text.slice(from));
  return [...runs.values()].join(" ");
}
