import { contraction } from "./contractions.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Words that add nothing to what is stated; the steps after this one look at direct neighbours. */
const fillers = new Set(
  (
    "um uh uhh uhm erm hmm clearly definitely exactly plainly obviously literally basically honestly certainly surely truly " +
    "simply undoubtedly supposedly claramente exactamente definitivamente simplemente"
  ).split(" "),
);

const stating = new Set(["says", "reads", "shows", "is", "its", "are", "dice", "es", "marca", "said", "was"]);
const synonyms = new Map([
  ["states", "says"],
  ["displays", "says"],
  ["indicates", "says"],
  ["indica", "dice"],
  ["cannot", "cant"],
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
    const next = tokens[at + 1];
    const short =
      token.kind === "word" && next?.kind === "word" ? contraction(token.norm, next.norm) : undefined;
    let kept = token;
    if (short !== undefined && next && !next.glued) {
      kept = { ...token, norm: short, end: next.end } as Token;
      at += 1;
    } else if (token.kind === "word") {
      const norm = synonyms.get(token.norm);
      if (norm !== undefined) kept = { ...token, norm };
    }
    // What stood before a dropped token stands before this one now.
    if (dropped) kept = { ...kept, glued: dropped.glued, wide: dropped.wide };
    dropped = undefined;
    plain.push(kept);
  }
  return plain;
}

function isFiller(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
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
