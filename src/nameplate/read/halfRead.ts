import type { RatingName } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cuesIn, cuesOf } from "./context.ts";
import { scars } from "./damage.ts";
import { lacksPart, offeredBefore, offersAnother, ofWhatMatters } from "./hedges.ts";
import { Ordered } from "./ordered.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { listRatings } from "./values.ts";

/** Phrases that stand before the value they cast doubt on; the others stand after it. */
const leading =
  /^(?:either|start|begin|end(?:s|ing) |empie|termin|looks like either|no se si|not sure (?:if|which)|dont know (?:if|which)|cant tell (?:if|which))/;

const supposing = /^(?:could be|might be|puede ser|may be)/;

/** Ratings written with a letter. */
const lettered = new Set<RatingName>(["frame", "insulationClass", "kvaCode", "modelNumbers", "serialNumber"]);

const lost =
  /^(?:letter|letra|digit|number|numero|character|symbol|something|somethin|line|curve|y|j|c|z|big|little|long|weird|funny|faint|half)$/;

/** What stands in the place of a character that cannot be read. */
function isLost(token: Token | undefined): boolean {
  return token === undefined || (token.kind === "word" && (lost.test(token.norm) || scars.test(token.norm)));
}

const exchanging = [
  "swapped",
  "switched",
  "reversed",
  "transposed",
  "flipped",
  "mixed",
  "exchanged",
  "inverti",
  "cambie",
];

/** At the end of a clause these stand after the value: "1.1 or 1.2, can't tell which". */
const trailing = /which$/;

/** Takes the value from claims that were only half read: "56 something", "either 48Y or 56Y". */
export function halved(context: Context, claims: readonly Standing[]): Standing[] {
  const { tokens, sentenceAt } = context;
  const ordered = new Ordered(claims);
  const half = new Set<Standing>();
  for (const cue of cuesOf(context, "partial")) {
    // "code letter is J" says which.
    const letter = tokens[cue.end];
    if (cue.phrase === "letter is" && letter?.kind === "word" && letter.norm.length === 1) continue;
    // "part 9920-4, something you can match"
    const talk = isWord(letter, "you", "i", "we", "that", "to", "else", "like", "similar", "que", "asi");
    if (/^(?:something|algo)$/.test(cue.phrase) && talk) continue;
    // "60 Hz, whatever that is": not known what it means, but read.
    if (cue.phrase === "whatever" && isWord(tokens[cue.end], "that", "thats", "it", "its", "those", "they"))
      continue;
    if (ordered.within(cue.start - 8, cue.start).some((claim) => claim.end >= cue.end)) continue;
    const near = ordered
      .within(cue.start - 40, cue.start + 60)
      .filter(
        (claim) =>
          sentenceAt[claim.start] === sentenceAt[cue.start] ||
          (cue.start >= claim.end && cue.start - claim.end < 2),
      );
    if (
      cue.phrase === "either" &&
      !tokens.slice(cue.end, cue.end + 12).some((token) => isWord(token, "or", "o"))
    )
      continue;
    if (ofWhatMatters(context, cue)) continue;
    // "34 y algo en RPM": said of the figure right before it, which is no reading.
    const figure = tokens[cue.start - 1];
    const free =
      figure?.kind === "number" && !claims.some(({ start, end }) => start < cue.start && cue.start <= end);
    if (free && /^(?:y )?algo$|^some/.test(cue.phrase)) continue;
    // "I swapped the digits" explains a correction.
    const verb = tokens[isWord(tokens[cue.start - 1], "the", "two", "los") ? cue.start - 2 : cue.start - 1];
    if (/^digits?$/.test(cue.phrase) && isWord(verb, ...exchanging)) continue;
    // "then a new row with 60 HZ", "and then A 12.4": what follows is no lost character.
    if (/then a$/.test(cue.phrase) && !isLost(tokens[cue.end])) continue;
    // "could be 1.25, could be 1.75"
    const again = cuesIn(context, cue.start - 7, cue.start, "partial").some(
      ({ phrase }) => phrase === cue.phrase,
    );
    const second = near.find((claim) => claim.start >= cue.end && claim.start - cue.end < 3);
    if (again && second && supposing.test(cue.phrase)) half.add(second);
    const closes = letter === undefined || letter.kind === "mark" || letter.kind === "break";
    if (leading.test(cue.phrase) && !(closes && trailing.test(cue.phrase))) {
      const following = near.filter((claim) => claim.end > cue.start);
      // "the phone number ends in 3450, … 1 HP": what ends so stands right there.
      const own = tokens[cue.end]?.kind === "number" && (following[0]?.from ?? 0) > cue.end;
      if (own && /^(?:start|begin|end|empie|termin)/.test(cue.phrase)) continue;
      for (const claim of following) if (claim.rating === following[0]?.rating) half.add(claim);
    } else {
      const last = near.filter((claim) => claim.start < cue.start && cue.start - claim.end < 6).at(-1);
      const next = near.find((claim) => claim.start >= cue.end && claim.start - cue.end < 8);
      if (last) half.add(last);
      else if (next && /digit/.test(cue.phrase)) half.add(next);
      else if (next && /letter/.test(cue.phrase) && lettered.has(next.rating)) half.add(next);
    }
  }
  for (const [index, claim] of claims.entries()) {
    const next = claims[index + 1];
    if (
      !next ||
      next.rating !== claim.rating ||
      JSON.stringify(next.value) === JSON.stringify(claim.value) ||
      listRatings.has(claim.rating) ||
      claim.rating === "modelNumbers"
    )
      continue;
    const between = tokens.slice(claim.to, next.from);
    if (
      between.length > 0 &&
      between.length < 4 &&
      between.every((token) => isWord(token, "or", "o", "u", "maybe", "a") || isMark(token, "?", ",")) &&
      between.some((token) => token.kind === "word")
    ) {
      half.add(claim);
      half.add(next);
    }
  }
  for (const claim of claims)
    if (
      offersAnother(context, claim) ||
      offeredBefore(context, claim) ||
      hesitates(context, claim) ||
      undecided(context, claim) ||
      trailsOff(context, claim) ||
      lacksPart(context, claim) ||
      lacksLetter(context, claim)
    )
      half.add(claim);
  return claims.map((claim) => (half.has(claim) ? { ...claim, value: undefined } : claim));
}

/** "FR 56? can't see the letter": a frame of which only the number is there. */
function lacksLetter({ tokens }: Context, claim: Standing): boolean {
  if (claim.rating !== "frame" || !/^\d+$/.test(String(claim.value))) return false;
  const after = tokens.slice(claim.to, claim.to + 9);
  const letter = after.findIndex((token) => isWord(token, "letter", "letters", "letra"));
  const unseen = (token: (typeof tokens)[number]) =>
    isMark(token, "?") ||
    isWord(token, "cant", "cannot", "gone", "missing", "worn", "unreadable", "no", "dont", "faded");
  return letter >= 0 && after.slice(0, letter + 3).some(unseen);
}

/** "es 115 o 230, no distingo", "115 or 230 can't tell": two values, and the writer cannot say which. */
function undecided(context: Context, claim: Standing): boolean {
  const { tokens } = context;
  const offered = tokens.slice(claim.start, claim.end).some((token) => isWord(token, "or", "o"));
  if (!offered) return false;
  return cuesIn(context, claim.to, claim.to + 4, "illegible").some(({ start, end }) => {
    const after = tokens[end];
    const which = isWord(after, "which", "cual", "it", "what");
    const ends =
      after === undefined || after.kind === "break" || (after.kind === "mark" && !isMark(after, ":"));
    return (ends || which) && tokens.slice(claim.to, start).every((token) => token.kind !== "number");
  });
}

const wholes = [
  "everything",
  "rest",
  "all",
  "label",
  "plate",
  "sticker",
  "demas",
  "todo",
  "resto",
  "others",
  "other",
];

/** "74-2 then it's scraped", "1 y luego está borrado": after what is told the figure goes on, unread. */
function trailsOff(context: Context, claim: Standing): boolean {
  const { tokens } = context;
  let at = claim.to;
  while (isMark(tokens[at], ",", "-", ".", "…") || isWord(tokens[at], "and", "but", "y", "pero")) at += 1;
  if (at - claim.to > 4 || !isWord(tokens[at], "then", "luego", "despues")) return false;
  return cuesIn(context, at + 1, at + 5, "illegible", "partial").some(({ start }) =>
    tokens
      .slice(at + 1, start)
      .every(
        (token) =>
          token.kind === "word" &&
          !isWord(token, ...wholes) &&
          !context.names[tokens.indexOf(token, at)]?.length,
      ),
  );
}

/** "could be 7.2 or 7.7": two values joined by "or" that cannot both stand on one label. */
function hesitates({ tokens }: Context, claim: Standing): boolean {
  if (
    !Array.isArray(claim.value) ||
    claim.value.length !== 2 ||
    claim.rating === "volts" ||
    claim.rating === "hz"
  )
    return false;
  const [first, second] = claim.value as number[];
  const close =
    first !== undefined && second !== undefined && Math.max(first, second) / Math.min(first, second) < 1.3;
  // "could be 19.2 or 9.2"
  const doubted =
    isWord(tokens[claim.start - 1], "either") ||
    (isWord(tokens[claim.start - 1], "be") && isWord(tokens[claim.start - 2], "could", "might", "may"));
  return (close || doubted) && tokens.slice(claim.start, claim.end).some((token) => isWord(token, "or", "o"));
}
