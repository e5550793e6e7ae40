import { type RatingName, ratings } from "../vocabulary.ts";
import { isOrdinary, isTradeWord, knownWords, placeWords, tradeWords } from "./ordinary.ts";
import { PhraseBook } from "./phrases.ts";
import { suits } from "./plausible.ts";
import { Slips, Spelling } from "./spelling.ts";
import { fold, isWord, type Token } from "./token.ts";
import { dictionaryNeighbours } from "./words/dictionary.ts";
import { names, weakNames } from "./words/names.ts";

/** A label word or phrase found in the text, for one rating. */
export interface Name {
  readonly rating: RatingName;
  readonly start: number;
  readonly end: number;
  /** An ordinary word too: needs its value right beside it. */
  readonly weak: boolean;
  /** Written in capitals, or set off like a label. */
  readonly upper: boolean;
}

const book = new PhraseBook<{ rating: RatingName; phrase: string }>({ columns: true });
const longWords = new Set<string>();
const ratingOfWord = new Map<string, RatingName>();
{
  const seen = new Set<string>();
  for (const rating of Object.keys(names) as RatingName[]) {
    const listed = [...(names[rating] ?? []), ...shared(rating)];
    for (const phrase of listed) {
      const key = `${rating}:${phrase}`;
      if (seen.has(key)) continue;
      seen.add(key);
      book.add(phrase, { rating, phrase });
      if (!phrase.includes(" ") && !ratingOfWord.has(phrase)) ratingOfWord.set(phrase, rating);
      for (const word of phrase.split(" "))
        if (word.length >= 4 && /[aeiou]/.test(word) && (!weakNames.has(word) || phrase.includes(" ")))
          longWords.add(word);
    }
  }
  for (const word of [
    "model",
    "serial",
    "class",
    "code",
    "type",
    "capacitor",
    "phase",
    "speed",
    "square",
    "threaded",
  ])
    longWords.add(word);
}

/** Two words for the same rating: `volteo`, `voltios`. */
const sameRating = (word: string, other: string) =>
  ratingOfWord.has(word) && ratingOfWord.get(word) === ratingOfWord.get(other);
/** Long words that are a value by themselves. */
const valueWords = ["monofasico", "monofasica", "trifasico", "trifasica", "continuo", "continuous"];
const labels = new Spelling([...longWords, ...valueWords], sameRating);
/** Short words of the label with a letter left out, next to a figure: `aps 10.6`, `vlt 230`, `cod L`. */
const clipped = new Map(
  ["amps", "volt", "code"].flatMap((word) =>
    [1, 2, 3].map((at) => [word.slice(0, at) + word.slice(at + 1), word] as const),
  ),
);
const trade = new Spelling(tradeWords);
const guarded = new Set(["type", "code", "class", "time", "part"]);
/** Everyday words that name a rating are not guessed by ear: "tipe 20 things". */
const slips = new Slips([
  "rpm",
  "phase",
  ...valueWords,
  ...[...longWords, ...tradeWords, ...placeWords].filter((word) => word.length >= 4 && !guarded.has(word)),
]);

/** The vocabulary's own words, where they name the rating and are not its value. */
function shared(rating: RatingName): string[] {
  if (rating === "duty" || rating === "flange" || rating === "shaft" || rating === "speedKind") return [];
  return ratings[rating].words.map((phrase) =>
    fold(phrase).replace(/\./g, "").replaceAll("/", " / ").replace(/ {2}/g, " "),
  );
}

/** True for a word that begins a name of some rating, or is part of one. */
export function isLabelWord(word: string): boolean {
  return book.has(word) || longWords.has(word) || word === "no";
}

const modals = ["puede", "pueden", "podria", "podrian", "debe", "deberia"];
const presentOnes = ["one", "ones", "motor", "pump", "unit", "label", "setup", "dead"];

/** Every name in the text, by the token it starts at; overlapping ones side by side for the judge. */
export function findNames(tokens: readonly Token[]): Name[][] {
  const found: Name[][] = tokens.map(() => []);
  const endings = new Set<number>();
  for (let at = 0; at < tokens.length; at++) {
    for (const match of book.matchesAt(tokens, at)) {
      for (const { rating, phrase } of match.found) {
        // "variable speed" names no rpm.
        if (phrase === "speed" && isWord(tokens[match.start - 1], "variable")) continue;
        // "the current one", "my current motor"
        if (phrase === "current" && isWord(tokens[match.end], ...presentOnes)) continue;
        // "the service factor part": a portion of the label.
        const portion = match.end === match.start + 1 && isWord(tokens[match.start], "part", "line", "field");
        if (portion && endings.has(match.start)) continue;
        // "puede ser 46Y"
        if (phrase === "ser" && isWord(tokens[match.start - 1], ...modals)) continue;
        const words = tokens.slice(match.start, match.end);
        endings.add(match.end);
        const upper = words.every((token) => token.kind !== "word" || token.upper);
        found[at]?.push({ rating, start: match.start, end: match.end, weak: weakNames.has(phrase), upper });
      }
    }
  }
  return found;
}

/**
 * Mends misspelled words of the trade: label words next to a figure (`volst 230`, `frme: 56Y`), and long words
 * anywhere (`insulaton`, `canot`). Words of ordinary language and short words are left alone.
 */
export function mendSpelling(tokens: readonly Token[]): Token[] {
  const mended = new Map<string, string | undefined>();
  return tokens.map((token, at) => {
    // Spanish "115 bolts", heard for volts.
    const before = tokens[at - 1];
    if (isWord(token, "bolt", "bolts") && before?.kind === "number" && suits("volts", before.value) === 2)
      return { ...token, norm: "volts" };
    if (token.kind !== "word" || token.norm.length < 3 || book.has(token.norm) || isOrdinary(token.norm))
      return token;
    const near = nearFigure(tokens, at);
    const key = near ? token.norm : `${token.norm} alone`;
    if (!mended.has(key)) mended.set(key, slipOf(token.norm, near));
    const norm = mended.get(key);
    return norm === undefined ? token : { ...token, norm };
  });
}

const known = new Spelling(knownWords);

/** The one word the reader knows that lies a letter away from a word of no dictionary: `varaible`, `scrtach`. */
function oneLetterOff(word: string): string | undefined {
  return dictionaryNeighbours.has(word) ? undefined : known.likeliest(word, 1);
}

function slipOf(word: string, nearAFigure: boolean): string | undefined {
  // A letter typed twice: "pumpp", "ampss".
  const single = word.replace(/(.)\1+/g, "$1");
  if (single !== word && (longWords.has(single) || book.has(single) || isTradeWord(single))) return single;
  const slip = slips.of(word);
  if (slip !== undefined && (nearAFigure || word.length >= 4)) return slip;
  const vowels = labels.byConsonants(word, nearAFigure && word.length >= 6 ? 4 : 5);
  if (vowels !== undefined) return vowels;
  if (nearAFigure)
    return (
      clipped.get(word) ??
      labels.likeliest(word) ??
      (word.length >= 5 ? (trade.likeliest(word, 1) ?? oneLetterOff(word)) : undefined)
    );
  if (word.length < 5) return undefined;
  return (
    oneLetterOff(word) ??
    (word.length >= 6 ? labels.likeliest(word, word.length >= 9 ? 2 : 1) : undefined) ??
    trade.likeliest(word, 1)
  );
}

function nearFigure(tokens: readonly Token[], at: number): boolean {
  for (let near = at - 2; near <= at + 3; near++) {
    const token = tokens[near];
    if (
      token &&
      near !== at &&
      (token.kind === "number" || token.kind === "code" || token.kind === "partial")
    )
      return true;
    if (near > at && near <= at + 2 && token?.kind === "word" && token.norm.length === 1 && token.upper)
      return true;
    if (near === at + 1 && token?.kind === "mark" && (token.norm === ":" || token.norm === "=")) return true;
  }
  return false;
}
