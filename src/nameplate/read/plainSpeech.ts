import { bareSpeeds } from "./bare.ts";
import { contraction, shortForms } from "./contractions.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Words that add nothing to what is stated; the steps after this one look at direct neighbours. */
const fillers = new Set(
  (
    "um uh uhh uhm erm hmm clearly definitely exactly plainly obviously literally basically honestly certainly surely truly " +
    "simply undoubtedly supposedly lol lmao haha hahaha jaja jajaja jajajaja smh claramente exactamente definitivamente simplemente"
  ).split(" "),
);

const stating = new Set(["says", "reads", "shows", "is", "its", "are", "dice", "es", "marca", "said", "was"]);
const synonyms = new Map([
  ["states", "says"],
  ["reads", "says"],
  ["displays", "says"],
  ["indicates", "says"],
  ["indica", "dice"],
  ...shortForms,
  ["muestra", "dice"],
]);

/** The longest figure in quotation marks: "115/208-230 V". */
const longestQuoted = 8;

/**
 * The tokens as a plain writer would have them: "it is" as "its", no "um" and "clearly", no quotation marks around a
 * figure. Offsets stay those of the message.
 */
export function plainSpeech(tokens: readonly Token[]): Token[] {
  const quotes = quotesOfFigures(tokens);
  const plain: Token[] = [];
  let dropped: Token | undefined;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (!token) break;
    if (quotes.has(at) || isFiller(tokens, at)) {
      dropped ??= token;
      continue;
    }
    if (isLongLeader(tokens, at)) continue;
    const next = tokens[at + 1];
    const wrapped = wrappedDecimal(tokens, at);
    const joined = wrapped ?? speedInTwo(tokens, at);
    const short =
      token.kind === "word" && next?.kind === "word" ? contraction(token.norm, next.norm) : undefined;
    let kept = joined ?? token;
    if (joined) at += wrapped ? 2 : 1;
    else if (short !== undefined && next && !next.glued) {
      kept = { ...token, norm: short, end: next.end } as Token;
      at += 1;
    } else if (token.kind === "word") {
      const norm = synonyms.get(token.norm);
      if (norm !== undefined) kept = { ...token, norm };
    }
    if (beginsAnew(plain.at(-1), token)) plain.push(fullStop(plain.at(-1) ?? token));
    // What stood before a dropped token stands before this one now.
    if (dropped) kept = { ...kept, glued: dropped.glued, wide: dropped.wide };
    dropped = undefined;
    plain.push(kept);
  }
  return plain;
}

/** Words that begin a sentence when they are written with a capital after a figure: "2 hp 230 Thanks so much". */
const openers = new Set(
  (
    "thanks thank thx let please what whats is does do can could would will my our the its this that these those i im we " +
    "you any how hope sorry also and but so runs it gracias por que cual mi el la los las es hay no yes ok okay"
  ).split(" "),
);

/** Nouns a sentence about a motor begins with. */
const subjects = new Set(
  (
    "motor plate label sticker tag nameplate pump breaker serial duty bolts price mine ours his hers her both old new " +
    "there when if then one bought same everything nothing older somebody placa motor etiqueta bomba"
  ).split(" "),
);

/** A sentence begins here though nothing ended the one before: a capital where the words before were small. */
function beginsAnew(before: Token | undefined, token: Token): boolean {
  if (token.kind !== "word" || token.glued || token.wide || token.upper || !/^\p{Lu}/u.test(token.chunk.text))
    return false;
  const opens = openers.has(token.norm);
  if (!opens && !subjects.has(token.norm)) return false;
  const figure = before?.kind === "number" || (before?.kind === "word" && unitEnds.has(before.norm));
  if (opens && figure) return true;
  if (/^(?:i|im)$/.test(token.norm)) return false;
  return before?.kind === "word" && /^\p{Ll}/u.test(before.chunk.text);
}

const unitEnds = new Set(
  "hp v volts volt vac a amps amp rpm hz hertz y j c ph phase horsepower cont".split(" "),
);

function fullStop({ end, chunk }: Token): Token {
  return { kind: "mark", norm: ".", start: end, end, glued: true, wide: false, chunk };
}

/** "3 450": a speed with a blank for its thousands mark, unless the first figure has a name of its own. */
function speedInTwo(tokens: readonly Token[], at: number): Token | undefined {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first?.kind !== "number" || second?.kind !== "number" || second.glued || second.wide) return undefined;
  const thousands = /^[123]$/.test(first.norm) && /^\d{3}$/.test(second.norm);
  // "34 50 rpm"
  const halves =
    /^\d\d$/.test(first.norm) && /^\d\d$/.test(second.norm) && isWord(tokens[at + 2], "rpm", "rpms");
  if (!thousands && !halves) return undefined;
  const value = Number(first.norm + second.norm);
  const before = tokens[isMark(tokens[at - 1], ":", "=", "-", ".") ? at - 2 : at - 1];
  const named =
    before?.kind === "word" && /^(?:hp|horsepower|ph|phase|thp|caballos|code|class)$/.test(before.norm);
  if (!bareSpeeds.has(value) || named) return undefined;
  return { ...first, value, norm: String(value), end: second.end };
}

/** "SF 1" at the end of a line, ".4" at the head of the next. */
function wrappedDecimal(tokens: readonly Token[], at: number): Token | undefined {
  const [first, broken, rest] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  // "RPM 34" at the end of a line, "50" at the head of the next.
  if (first?.kind === "number" && broken?.kind === "break" && !broken.blank && rest?.kind === "number") {
    const value = Number(first.norm + rest.norm);
    const speed = /^\d\d$/.test(first.norm) && /^\d\d$/.test(rest.norm) && bareSpeeds.has(value);
    if (speed && isWord(tokens[at - 1], "rpm", "rpms", "speed"))
      return { ...first, value, norm: first.norm + rest.norm, end: rest.end };
  }
  if (first?.kind !== "number" || broken?.kind !== "break" || broken.blank || rest?.kind !== "number")
    return undefined;
  if (!/^\d{1,2}$/.test(first.norm) || !/^\.\d{1,2}$/.test(rest.norm)) return undefined;
  if (tokens[at - 1] === undefined || tokens[at - 1]?.kind === "break") return undefined;
  return { ...first, value: Number(first.norm + rest.norm), norm: first.norm + rest.norm, end: rest.end };
}

const shownLeaders = 3;

/** "HP.............1.0": of a row of dots that leads to a figure the first few are enough. */
function isLongLeader(tokens: readonly Token[], at: number): boolean {
  const mark = tokens[at];
  if (!isMark(mark, ".", "_", "-", "…", "·")) return false;
  for (let back = 1; back <= shownLeaders; back++)
    if (!isMark(tokens[at - back], mark?.norm ?? "")) return false;
  let end = at;
  while (isMark(tokens[end], mark?.norm ?? "") && end - at < longestLeader) end += 1;
  const figure = tokens[end];
  return figure?.kind === "number" || figure?.kind === "code" || (figure?.kind === "word" && figure.glued);
}

const longestLeader = 60;

function isFiller(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (token?.kind === "mark")
    return (
      !/[→➡⇒]/u.test(token.norm) &&
      /^\p{Extended_Pictographic}|^[\u200d\ufe0f\u{1f3fb}-\u{1f3ff}\ud800-\udfff]/u.test(token.norm)
    );
  if (token?.kind !== "word") return false;
  if (fillers.has(token.norm)) return true;
  // "says like 9.6", "is just 2": before a figure they are fillers too.
  const before = tokens[at - 1];
  const beforeFigure =
    tokens[at + 1]?.kind === "number" && before?.kind === "word" && stating.has(before.norm);
  return beforeFigure && isWord(token, "like", "just", "really");
}

/** The quotation marks that hold one figure and its unit. */
function quotesOfFigures(tokens: readonly Token[]): ReadonlySet<number> {
  const quotes = new Set<number>();
  for (let at = 0; at + 2 < tokens.length; at++) {
    const first = tokens[at + 1];
    if (!isMark(tokens[at], '"', "“", "”", "'", "‘", "’") || tokens[at]?.glued) continue;
    if (first?.kind !== "number" || !first.glued) continue;
    for (let end = at + 2; end < at + longestQuoted; end++) {
      const token = tokens[end];
      if (isMark(token, '"', "”", "'", "’") && token?.glued) {
        quotes.add(at).add(end);
        break;
      }
      if (token?.kind !== "number" && token?.kind !== "word" && !isMark(token, "/", "-", ".")) break;
    }
  }
  return quotes;
}
