import { isLabelWord } from "./naming.ts";
import {
  counted,
  counters,
  halves,
  horses,
  hundreds,
  joiners,
  parts,
  points,
  shy,
  tens,
  units,
} from "./numberWords.ts";
import { isOrdinary } from "./ordinary.ts";
import { partGlued } from "./runTogether.ts";
import { fraction, type Said, say, Words } from "./sayNumber.ts";
import { Slips, Spelling, swapped } from "./spelling.ts";
import { isMark, isWord, type NumberToken, type Token } from "./token.ts";
import { dictionaryNeighbours } from "./words/dictionary.ts";

/** "a horse and a half", "dos caballos y medio": the half comes after the unit. */
function lateHalf(words: Words, at: number): Said | undefined {
  if (!horses.has(words.word(at)) || !joiners.has(words.tokens[at + 1]?.norm ?? "")) return undefined;
  return fraction(words, at + 2);
}

/** Every word a spoken number can begin with. */
const openers = new Set([
  ...[units, tens, hundreds, halves, parts].flatMap(Object.keys),
  ...points,
  ...horses,
  ...["a", "hundred", "mil"],
]);

const said = new Slips(
  [...[units, tens, hundreds].flatMap(Object.keys), ...horses].filter(({ length }) => length >= 5),
);
const oneOff = new Spelling(
  [...[units, tens, hundreds].flatMap(Object.keys), "hundred", "point", "quarters", "quarter"].filter(
    ({ length }) => length >= 5,
  ),
);
/** "tow thirty": a short number with its letters exchanged, known by the tens after it. */
const exchanged = new Map(
  ["one", "two", "six", "dos"].flatMap((word) => [...swapped(word)].map((slip) => [slip, word] as const)),
);

/** A number word written by ear or with letters exchanged: `dosientos`, `thrity`. */
function asNumberWord(token: Token): Token {
  if (token.kind !== "word" || token.norm.length < 5 || openers.has(token.norm)) return token;
  if (isOrdinary(token.norm) || isLabelWord(token.norm)) return token;
  const single = token.norm.replace(/(.)\1+/g, "$1");
  const norm =
    said.of(token.norm) ??
    (dictionaryNeighbours.has(token.norm)
      ? undefined
      : (oneOff.likeliest(token.norm, 1) ?? oneOff.likeliest(single, 1)));
  return norm === undefined ? token : { ...token, norm };
}

const countWords = new Spelling(["one", "two", "three", "five", "seven", "tres", "tree"]);
const partWords = new Spelling([...Object.keys(parts), ...Object.keys(halves)]);

/** Misspelled words of a fraction, known by their place: `thre quarters`, `one and a haf`, `three qaurters`. */
function mendFractions(tokens: readonly Token[]): Token[] {
  return tokens.map((token, at) => {
    // "one an a half"
    const counting = tokens[at - 1]?.kind === "number" || units[wordAt(tokens, at - 1)] !== undefined;
    const half = wordAt(tokens, at + 1) === "a" && halves[wordAt(tokens, at + 2)] !== undefined;
    if (token.kind === "word" && /^a?n+d?$/.test(token.norm) && counting && half)
      return { ...token, norm: "and" };
    if (token.kind !== "word" || token.norm.length < 3 || openers.has(token.norm)) return token;
    if (isLabelWord(token.norm)) return token;
    const next = wordAt(tokens, isMark(tokens[at + 1], "-") ? at + 2 : at + 1);
    const short = exchanged.get(token.norm);
    if (short !== undefined && (tens[next] !== undefined || next === "hundred" || points.has(next)))
      return { ...token, norm: short };
    // "thre quater": the part may be misspelled or single too.
    const part1 =
      parts[next] === undefined && next.length >= 5 && !isOrdinary(next)
        ? partWords.likeliest(next, 1)
        : next;
    if ((parts[part1 ?? ""] ?? 0) > 2 && (/s$/.test(part1 ?? "") || /^thre/.test(token.norm))) {
      const count = token.norm === "tree" ? "three" : countWords.likeliest(token.norm, 1);
      return count === undefined ? token : { ...token, norm: count };
    }
    if (isOrdinary(token.norm)) return token;
    let before = isMark(tokens[at - 1], "-") ? at - 2 : at - 1;
    const joined =
      joiners.has(wordAt(tokens, before - 1)) && /^(?:a|an|un|una)$/.test(wordAt(tokens, before));
    if (joined) before -= 1;
    if (joiners.has(tokens[before]?.norm ?? "")) before -= 1;
    const lead = wordAt(tokens, before);
    const counted =
      tokens[before]?.kind === "number" ||
      units[lead] !== undefined ||
      (lead.length >= 4 && countWords.likeliest(lead, 1) === "three");
    const and = before < at - 1;
    const part = counted && (and || token.norm.length >= 6) ? partWords.likeliest(token.norm, 1) : undefined;
    return part === undefined ? token : { ...token, norm: part };
  });
}

const wordAt = (tokens: readonly Token[], at: number) => {
  const token = tokens[at];
  return token?.kind === "word" ? token.norm : "";
};

/** Replaces numbers said in words by number tokens, so that the grammar sees one kind of number. */
export function hearNumbers(written: readonly Token[]): Token[] {
  const tokens = mendFractions(partGlued(written).map(asNumberWord));
  const words = new Words(tokens);
  const heard: Token[] = [];
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at];
    if (!token) break;
    if (token.kind === "word" && !openers.has(token.norm)) {
      heard.push(token);
      at += 1;
      continue;
    }
    const half = lateHalf(words, at);
    const until = half ? tokens[half.end - 1] : undefined;
    if (half && until) {
      const before = heard.at(-1);
      const counted = before?.kind === "number" ? before : undefined;
      const article = before?.kind === "word" && (before.norm === "a" || before.norm === "un");
      if (counted || article) heard.pop();
      const value = (counted?.value ?? 1) + half.value;
      const first = counted ?? (article ? before : token);
      heard.push({
        ...token,
        kind: "number",
        form: "fraction",
        value,
        norm: String(value),
        lookalikes: 0,
        start: first?.start ?? token.start,
        glued: first?.glued ?? token.glued,
      });
      heard.push({ ...token, kind: "word", upper: false, end: until.end });
      at = half.end;
      continue;
    }
    // "1 point something"
    const [point, rest] = [tokens[at + 1], tokens[at + 2]];
    if (token.kind === "number" && point?.kind === "word" && points.has(point.norm) && isLost(rest)) {
      heard.push({ ...token, kind: "partial", end: point.end });
      at += 2;
      continue;
    }
    const said = token.kind === "word" || token.kind === "number" ? say(words, at) : undefined;
    const last = said ? tokens[said.end - 1] : undefined;
    if (!said || !last || (said.end === at + 1 && shy.has(token.norm) && !counts(tokens, at))) {
      heard.push(token);
      at += 1;
      continue;
    }
    const number: NumberToken = {
      kind: "number",
      form: said.fraction ? "fraction" : "words",
      value: said.value,
      norm: Number.isInteger(said.value) ? String(said.value) : said.value.toFixed(4),
      lookalikes: 0,
      start: token.start,
      end: last.end,
      glued: token.glued,
      wide: token.wide,
      chunk: token.chunk,
    };
    heard.push(number);
    at = said.end;
  }
  return heard;
}

/** What stands here cannot be read. */
function isLost(token: Token | undefined): boolean {
  return (
    token?.kind === "word" &&
    /^(?:something|somethin|blank|rust|rusted|unreadable|illegible|gone|nothing|question|algo|nada|whatever|faded|scratched)$/.test(
      token.norm,
    )
  );
}

/** Names of ratings that may be a plain one. */
const countedNames = /^(?:hp|ph|horse|horsepower|power|phases?|fases?|caballos?|caballaje)$/;

/** "one", "un" and the like count only before something that is counted. */
function counts(tokens: readonly Token[], at: number): boolean {
  let next = tokens[at + 1];
  if (next?.kind === "mark" && next.norm === "-") next = tokens[at + 2];
  let before = at - 1;
  while (tokens[before]?.kind === "mark" && /[.:=]/.test(tokens[before]?.norm ?? "")) before -= 1;
  const previous = tokens[before];
  if (isWord(previous, "digo", "mean") && next?.kind !== "word") return true;
  // "h p one", "hp one sf 1.65", "one slash two"
  const spelled = previous?.norm === "p" && tokens[before - 1]?.norm === "h";
  const named = spelled || (previous?.kind === "word" && countedNames.test(previous.norm));
  if (named && (next === undefined || next.kind !== "word" || isLabelWord(next.norm))) return true;
  // "horsepower is one service factor is …"
  const ofName = isWord(previous, "is", "es") && countedNames.test(tokens[before - 1]?.norm ?? "");
  if (ofName && (next?.kind !== "word" || isLabelWord(next.norm))) return true;
  if (next?.kind === "word" && next.norm === "slash") return true;
  if (next?.kind === "word" && counted.has(next.norm)) return true;
  const further = tokens[at + 2];
  if (next?.kind === "word" && joiners.has(next.norm) && further?.kind === "number" && further.norm === "1")
    return true;
  return (
    previous?.kind === "word" && counters.has(previous.norm) && (next === undefined || next.kind !== "word")
  );
}
