import type { Context } from "./context.ts";
import type { Cue } from "./findCues.ts";
import type { Name } from "./naming.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";

/** Cues whose object follows them: "can't read the SF"; of the others the subject stands before. */
export const takesObject =
  /^(?!.*(?:unread|readab|readib|legib|to read|visible))(?=.*(?:read|see|find|make|tell|know|sure|have|say|list|show|get|ve|veo|lee|leer|idea|clue|tiene|trae|dice|encuentro|missing|falta|aparece|viene|hay|stain|cover|borr|lost|nothing))/;

/** The names a cue speaks of: the list beside it in its own clause, on the side where its subject or object stands. */
export function saidOf(context: Context, cue: Cue, before: readonly Name[], after: readonly Name[]): Name[] {
  const { tokens, clauseAt } = context;
  const behind = before.filter((name) => !isLegible(tokens, name));
  const ahead = after.filter((name) => !isLegible(tokens, name) && !isWanted(tokens, name));
  const here = (name: Name | undefined, at: number) => name && clauseAt[name.start] === clauseAt[at];
  const [left, right] = [behind.at(-1), ahead[0]];
  const beside = left && isBeside(tokens, left.end, cue.start);
  const listed = { left: listEnding(tokens, behind), right: listStarting(tokens, ahead) };
  if (beside && left) return listed.left;
  if (takesObject.test(cue.phrase) && here(right, cue.end - 1)) return listed.right;
  if (here(left, cue.start)) return listed.left;
  if (here(right, cue.end - 1)) return listed.right;
  const object = takesObject.test(cue.phrase);
  if (object && right) return listed.right;
  return left ? listed.left : listed.right;
}

/** "hp I can't read", "las rpm ya no se ven": nothing but such words stands between a name and what is said of it. */
function isBeside(tokens: readonly Token[], from: number, to: number): boolean {
  return (
    to - from <= 2 &&
    tokens
      .slice(from, to)
      .every(
        (token) =>
          isMark(token, "(", ":", "-", "=") ||
          isWord(token, "i", "is", "are", "ya", "yo", "esta", "estan", "se"),
      )
  );
}

/** The names written as one list that ends with the last of these. */
function listEnding(tokens: readonly Token[], names: readonly Name[]): Name[] {
  let first = names.length - 1;
  while (first > 0 && names[first] && listsOn(tokens, names[first - 1], names[first])) first -= 1;
  return names.slice(Math.max(0, first));
}

/** The names written as one list that begins with the first of these. */
function listStarting(tokens: readonly Token[], names: readonly Name[]): Name[] {
  let last = 0;
  while (last + 1 < names.length && listsOn(tokens, names[last], names[last + 1])) last += 1;
  return names.slice(0, last + 1);
}

/** Words that may stand between two names of one list: "the hp and the amps", "ni el modelo ni la serie". */
export const joints = list(`
  and, or, nor, also, plus, both, the, a, an, any, that, its, my, what, plain, y, o, ni, e, el, la, los, las, de, del,
  lo, tampoco, tambien, anything, about, nada, sobre
`);

/** "hertz and phase": written as one list. */
export function joins(tokens: readonly Token[], first: Name, second: Name): boolean {
  const between = tokens.slice(first.end, second.start);
  return (
    between.length > 0 &&
    between.length <= 3 &&
    between.every((token) => isMark(token, ",", "/", "&") || isWord(token, ...joints))
  );
}

/** Nouns that go with a rating's name and say no more than it: "the hp number and the amps line". */
export const fields = list(`
  number, numbers, line, lines, rating, value, box, spot, part, section, figure, field, marking, markings, mark, info, information, reading, entry, numero, linea, parte, dato
`);

/** Two names of one list: "hp number, volts and the amps". */
export function listsOn(
  tokens: readonly Token[],
  first: Name | undefined,
  second: Name | undefined,
): boolean {
  if (!first || !second) return false;
  const end = isWord(tokens[first.end], ...fields) ? first.end + 1 : first.end;
  if (end === second.start) return true;
  const between = tokens.slice(end, second.start);
  return (
    between.length <= 5 &&
    between.every((token) => isMark(token, ",", "/", "&", "+") || isWord(token, ...joints))
  );
}

const fine = list(`
  fine, ok, okay, good, clear, readable, legible, visible, there, intact, clean, bien, claro, clara, legibles, visibles
`);

/** "hp is fine", "volts ok": it can be read. */
function isLegible(tokens: readonly Token[], name: Name): boolean {
  if (isWord(tokens[name.start - 1], "no", "ni", "neither", "nor")) return false;
  // "Everything except the serial number is legible"
  const article = isWord(tokens[name.start - 1], "the", "el", "la", "los") ? name.start - 2 : name.start - 1;
  if (isWord(tokens[article], "except", "but", "besides", "excepto", "menos", "salvo", "for")) return false;
  let at = isWord(tokens[name.end], ...fields) ? name.end + 1 : name.end;
  while (isWord(tokens[at], "is", "are", "looks", "si", "esta", "estan", "all", "still", "se", "ve")) at += 1;
  return isWord(tokens[at], ...fine) && at - name.end < 5;
}

/** "I need the volts", "where do I find the frame": asked for, not told of. */
function isWanted(tokens: readonly Token[], name: Name): boolean {
  const start = isWord(tokens[name.start - 1], ...joints) ? name.start - 2 : name.start - 1;
  return isWord(
    tokens[start],
    "need",
    "needs",
    "want",
    "which",
    "where",
    "necesito",
    "ocupo",
    "busco",
    "cual",
  );
}
