import { followsOne, namelyAfter, sharesFate } from "./alike.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cuesIn, cuesOf } from "./context.ts";
import type { Cue } from "./findCues.ts";
import { ofWhatMatters } from "./hedges.ts";
import type { Name } from "./naming.ts";
import { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { joins, joints, saidOf, takesObject } from "./spokenOf.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** How many tokens away a rating may be named that cannot be read. */
const reach = 40;

/** Names without a value that somebody says cannot be read, or are not there. */
export function illegible(context: Context, owners: readonly Owner[], claims: Ordered<Standing>): Name[] {
  const { sentenceAt } = context;
  const named = freeNames(context, owners, claims.all);
  const free = named.filter(({ start }) => owners[start] === "label");
  const spoken = new Ordered(named);
  const ordered = new Ordered(free);
  const found = new Set<Name>();
  const claimed = (from: number, to: number) => claims.within(from, to).length > 0;
  for (const cue of cuesOf(context, "illegible", "partial", "negator")) {
    if (ofHalfRead(context, cue, claims) || ofWhatMatters(context, cue)) continue;
    const near = ordered
      .within(cue.start - reach, cue.end + reach)
      .filter((name) => sentenceAt[name.start] === sentenceAt[cue.start]);
    const after = near.filter((name) => name.start >= cue.end && !claimed(cue.end, name.start));
    // In "el modelo no se ve" the "no" belongs to what is said of it.
    const precedes = ({ start, end }: Name) =>
      end <= cue.start || (end === cue.start + 1 && start < cue.start);
    const before = near.filter((name) => precedes(name) && !claimed(name.end, cue.start));
    if (cue.kind === "negator") {
      // "amps, not volts" tells two ratings apart; "but not the volts" says they cannot be read.
      const told = isWord(context.tokens[cue.start - 1], "thats", "its", "is", "was");
      if (cue.phrase === "not" && (told || !isWord(context.tokens[cue.end], "the", "a", "any"))) continue;
      for (const name of after)
        if (!isPart(context.tokens, name) && reaches(context, cue.end, name, after, /no$/.test(cue.phrase)))
          found.add(name);
      continue;
    }
    const asked = justAsked(context, cue, spoken);
    if (near.length === 0 && asked) found.add(asked);
    else if (near.length === 0 && meansLastNamed(context, cue)) {
      const last = spoken.before(cue.start, 1)[0];
      if (last && (sentenceAt[cue.start] ?? 0) - (sentenceAt[last.start] ?? 0) === 1) found.add(last);
    } else if (near.length === 0) for (const name of namelyAfter(context, cue, ordered)) found.add(name);
    for (const name of saidOf(context, cue, before, after)) found.add(name);
  }
  for (const name of free) if (leftBlank(context.tokens, name)) found.add(name);
  for (const name of free)
    if (!found.has(name) && sharesFate(context, name) && followsOne(context, name, ordered, found, claims))
      found.add(name);
  return [...found];
}

/** "1.1 or 1.2 can't tell which, volts 230": said of the value that was read in half, not of the name after it. */
function ofHalfRead({ tokens }: Context, cue: Cue, claims: Ordered<Standing>): boolean {
  const half = claims.before(cue.end, 1)[0];
  if (half === undefined || half.value !== undefined || cue.start - half.to > 2) return false;
  const next = tokens[isWord(tokens[cue.end], "which", "it", "cual", "if") ? cue.end + 1 : cue.end];
  return cue.end <= half.to || next === undefined || next.kind === "mark" || next.kind === "break";
}

/** Names nothing was claimed for, the longest at each place. */
function freeNames(context: Context, owners: readonly Owner[], claims: readonly Standing[]): Name[] {
  const { tokens, names } = context;
  const taken = new Set<number>();
  for (const claim of claims) for (let at = claim.from; at < claim.to; at++) taken.add(at);
  const free: Name[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const longest = names[at]?.toSorted((a, b) => b.end - a.end)[0];
    if (!longest || isPiece(tokens, longest)) continue;
    const last = free.at(-1);
    if (
      !taken.has(at) &&
      !isPortion(tokens, longest) &&
      (owners[at] === "label" || owners[at] === "asked") &&
      (namesRating(tokens, longest) ||
        isObject(context, longest) ||
        (!isLetter(tokens, longest) &&
          cuesIn(context, longest.end, longest.end + 2, "illegible").length > 0) ||
        (last && !isLetter(tokens, longest) && joins(tokens, last, longest)))
    )
      free.push(longest);
    at = longest.end - 1;
  }
  return free;
}

/** "the decimal part is corroded": a portion of something, no part number. */
function isPortion(tokens: readonly Token[], { start, end }: Name): boolean {
  return end === start + 1 && isWord(tokens[start], "part", "parte") && !isMark(tokens[end], "#", ":");
}

/** "Sticker doesn't list one", "I don't see it": the rating named in the sentence before. */
function meansLastNamed({ tokens }: Context, cue: Cue): boolean {
  if (cue.kind !== "illegible") return false;
  const object = tokens[cue.end];
  return isWord(object, "one", "it", "any", "that") || /such/.test(cue.phrase);
}

/** "Volts? No idea": the name that was asked right before. */
function justAsked({ tokens, sentenceAt }: Context, cue: Cue, spoken: Ordered<Name>): Name | undefined {
  const name = spoken.before(cue.start, 1)[0];
  if (cue.kind !== "illegible" || !name || !isMark(tokens[name.end], "?") || cue.start - name.end > 4)
    return undefined;
  return (sentenceAt[cue.start] ?? 0) - (sentenceAt[name.start] ?? 0) === 1 ? name : undefined;
}

/** "the part that tore off", "la parte de abajo": a piece of the label. */
const isPiece = (tokens: readonly Token[], { start, end }: Name) =>
  end === start + 1 &&
  isWord(tokens[start], "part", "parte") &&
  isWord(tokens[end], "that", "of", "with", "where", "which", "under", "below", "que", "de", "donde", "con");

/** An everyday word names a rating here only with an article, in capitals, or before a colon. */
function namesRating(tokens: readonly Token[], name: Name): boolean {
  if (!name.weak) return true;
  // "the part of the label that is left"
  const everyday = name.end === name.start + 1 && isWord(tokens[name.start], "part", "parte", "time", "cap");
  const [before, after, next] = [tokens[name.start - 1], tokens[name.end], tokens[name.end + 1]];
  const labelled =
    isMark(after, ":", "=", "(") || (isMark(after, "?", "-", "_") && isMark(next, "?", "-", "_"));
  const opensItem = name.start === 0 || before?.kind === "break" || isMark(before, ",", ";", "/", "|");
  if (isLetter(tokens, name)) return labelled && (name.upper || (opensItem && !isMark(after, "(")));
  return (
    labelled ||
    name.upper ||
    (!everyday && isWord(tokens[name.start - 1], "the", "el", "la", "my", "lo", "los"))
  );
}

/** "no capacitor" says there is none, not that it cannot be read. */
const isPart = (tokens: readonly Token[], { rating, start }: Name) =>
  rating === "flange" ||
  rating === "shaft" ||
  (rating === "capacitorUf" && isWord(tokens[start], "cap", "capacitor", "condensador", "run", "start"));

const isLetter = (tokens: readonly Token[], name: Name) =>
  name.end === name.start + 1 && tokens[name.start]?.norm.length === 1;

/** "couldn't find phase", "nothing on it says a code": what cannot be read stands right after. */
function isObject(context: Context, name: Name): boolean {
  const { tokens } = context;
  if (isLetter(tokens, name)) return false;
  const at = isWord(tokens[name.start - 1], "a", "an", "any", "un", "una") ? name.start - 1 : name.start;
  return cuesIn(context, at - 5, at, "illegible", "negator").some(
    ({ end, phrase }) =>
      end === at &&
      phrase !== "not" &&
      (at < name.start || /^(?:nothing on it says|says nothing)$/.test(phrase) || takesObject.test(phrase)),
  );
}

/** "no SF or amps on it": the denial reaches over the names it lists. */
function reaches(
  { tokens }: Context,
  from: number,
  name: Name,
  listed: readonly Name[],
  loose: boolean,
): boolean {
  let at = from;
  let odd = 0;
  while (at < name.start) {
    const other = listed.find((one) => one.start === at);
    if (other) at = other.end;
    else if (isWord(tokens[at], ...joints) || isMark(tokens[at], ",", "/")) at += 1;
    else if (tokens[at]?.kind === "word" && loose && odd === 0 && at - from < 1) {
      odd += 1;
      at += 1;
    } else return false;
  }
  return at - from < 12;
}

/** "SF ???", "AMPS: --", "HP ____": a place left empty. */
function leftBlank(tokens: readonly Token[], name: Name): boolean {
  let at = name.end;
  if (isMark(tokens[at], ":", "=")) at += 1;
  const from = at;
  while (isMark(tokens[at], "?", "-", "_", "*", "…") || (isMark(tokens[at], ".") && at > from)) at += 1;
  // "AMPS xx.x"
  while (/^x{1,4}$/.test(tokens[at]?.norm ?? "") || (at > from && isMark(tokens[at], "."))) at += 1;
  const marks = at - from;
  const after = tokens[at];
  if (isWord(after, "none", "nada", "ninguno", "ninguna") && !isWord(tokens[at + 1], "of", "de")) return true;
  if (marks >= 2) return true;
  const ends = after === undefined || after.kind === "break" || isMark(after, ",", ";", "|", ")");
  // "8.4, sf ?, 230": an item of a list.
  const [before, mark] = [tokens[name.start - 1], tokens[from]];
  const item =
    (before === undefined || before.kind === "break" || isMark(before, ",", ";")) &&
    isMark(after, ",", ";") &&
    isMark(mark, "?") &&
    !mark?.glued;
  if (!ends || marks !== 1) return false;
  // "sf=?, a=?"
  if (from > name.end && isMark(mark, "?")) return true;
  return !name.weak && (item || (name.upper && isMark(mark, "?", "-")));
}
