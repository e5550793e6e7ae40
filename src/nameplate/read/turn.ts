import { plainNouns } from "./asking.ts";
import type { Clause } from "./clauses.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Cue } from "./findCues.ts";
import { foreign, linking, type Owner } from "./owner.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { foreignUnits } from "./words/units.ts";

const newOnes = new Set([
  "new one",
  "the new",
  "a new",
  "new motor",
  "nuevo",
  "uno nuevo",
  "el nuevo",
  "get a",
  "buy a",
  "quote for a",
  "bigger",
]);
const parts = /^(?:impell|impulsor|diffuser|volute|seal|wet ?end|housing)/;

/** The owner from this cue on; undefined when it changes nothing. */
export function turn(
  context: Context,
  cue: Cue,
  owner: Owner,
  cued: boolean,
  clause: Clause,
  stays: boolean,
): Owner | undefined {
  const { tokens } = context;
  // "the neighbor's motor", "the heater's label": the noun goes with the owner before it.
  const placedOn = cued && isWord(tokens[cue.start - 1], "on", "en");
  if (cue.kind === "home" && placedOn && !stays) return "label";
  // "bigger than my brother's: the label says 2 hp": compared with, he is not spoken of.
  if (cue.kind === "person" && isCompared(tokens, cue) && !tellsOf(tokens[cue.end])) return "label";
  // "this motor was my brother's before I got it"
  const former = isWord(tokens[cue.end], "before", "until", "till") && owner === "label";
  if (cue.kind === "person" && cued && former) return undefined;
  // "bigger than my brother-in-law's 1 hp: the label says 2 hp"
  const announced = isMark(
    tokens[isWord(tokens[cue.start - 1], "the", "la", "el") ? cue.start - 2 : cue.start - 1],
    ":",
  );
  if (cue.kind === "home" && announced && isPaper.test(cue.phrase)) return "label";
  if (cue.kind === "home")
    return plainNouns.has(cue.phrase) && (cued || stays) && owner !== "label" ? undefined : "label";
  // "the breaker box says 20"
  if (cue.phrase === "box says" && isWord(tokens[cue.start - 1], ...boxes)) return undefined;
  // "the new panel feeds it 240" is about the house.
  const sized = tokens[cue.end]?.kind === "number" ? cue.end + 2 : cue.end;
  if (newOnes.has(cue.phrase) && isWord(tokens[sized], ...ofHouse)) return undefined;
  // "the new one they installed last week": it is the one there is.
  if (newOnes.has(cue.phrase) && isFitted(tokens.slice(cue.end, Math.min(clause.end, cue.end + 6))))
    return undefined;
  if (newOnes.has(cue.phrase) && needed(tokens, clause, cue)) return undefined;
  // "12 gauge wire": the unit of a figure, no thing.
  if (cue.kind === "thing" && isUnit(tokens, cue)) return undefined;
  if (cue.kind === "thing" && standsBeside(tokens, cue)) return undefined;
  // "in the box marked AMPS": a field of the label.
  if (/^(?:the box|la caja|box says)$/.test(cue.phrase) && isField(context, cue)) return undefined;
  // "here is what you want: 1 HP"
  if (cue.kind === "wish" && isWord(tokens[cue.start - 1], "you", "u", "ya")) return undefined;
  // "I put the glasses on: SF 1.55"
  if (cue.kind === "earlier" && /put$/.test(cue.phrase) && !figureAhead(tokens, cue.end)) return undefined;
  // "I wrote down 3450 rpm": copied from the label.
  if (cue.kind === "earlier" && /wrote$/.test(cue.phrase) && isWord(tokens[cue.end], "down"))
    return undefined;
  // "I had a look"
  if (cue.kind === "earlier" && /had an?$/.test(cue.phrase) && tokens[cue.end]?.kind !== "number")
    return undefined;
  // "the motor I pulled": taken out, not measured.
  if (
    cue.kind === "measured" &&
    /^(?:pulled|drew)$/.test(cue.phrase) &&
    isWord(tokens[cue.start - 1], "i", "we")
  )
    return undefined;
  // "I told you it's 56J" insists; "I said 1.5 earlier" takes back.
  const insists = /^(?:i said|i told|told you|like i said|dije|yo dije)$/.test(cue.phrase);
  if (insists && !tokens.slice(clause.start, clause.end + 6).some((token) => isWord(token, ...takingBack)))
    return undefined;
  // "painted over by the previous owner": who did it, not whose it is.
  const by = isWord(tokens[cue.start - 1], "by", "por") ? cue.start - 1 : cue.start - 2;
  const doer = isWord(tokens[by], "by", "por") && (cue.kind === "earlier" || cue.kind === "person");
  if (doer && cuesIn(context, by - 5, by, "illegible").length > 0) return undefined;
  // "call me if you need me" supposes no motor.
  const figures = tokens.slice(cue.end, clause.end).some(({ kind }) => kind === "number" || kind === "code");
  if (cue.kind === "wish" && /^if /.test(cue.phrase) && !figures) return undefined;
  // "it draws 8 amps per the plate"
  const perPlate = cuesIn(context, clause.start, clause.end, "home").some(
    (home) =>
      isPaper.test(home.phrase) && isWord(tokens[home.start - 2], "per", "to", "on", "from", "by", "segun"),
  );
  if (cue.kind === "measured" && perPlate) return undefined;
  // "I want to say it's a 56Y" guesses.
  const verb = isWord(tokens[cue.end], "to") ? tokens[cue.end + 1] : tokens[cue.end];
  if (cue.kind === "wish" && isWord(verb, "say", "decir", "guess")) return undefined;
  // "no puedo leer" asks for nothing.
  if (cue.kind === "wish" && isWord(tokens[cue.start - 1], "no", "not")) return undefined;
  // "The original motor on the pump is 1.5 HP": it is there still.
  const after = tokens.slice(cue.end, clause.end);
  const present =
    after.some((token) => isWord(token, "is", "says", "reads", "has")) &&
    !after.some((token) => isWord(token, "was", "had", "were"));
  if (cue.kind === "earlier" && /original (?:motor|one)$/.test(cue.phrase) && present) return undefined;
  const ordinal = cue.kind === "earlier" && /^(?:second|previous|2nd)$/.test(cue.phrase);
  if (ordinal && !isWord(tokens[cue.end], "was", "one", "had") && owner !== "other") return undefined;
  const vague = cue.kind === "wish" && /^(?:thinking|want|bigger|recommended|online)$/.test(cue.phrase);
  if (vague && cuesIn(context, cue.end, cue.end + 1, "home").length > 0) return undefined;
  if (cue.kind === "thing" && /^(?:timer|time clock)$/.test(cue.phrase)) return "place";
  if (cue.kind === "thing" && parts.test(cue.phrase)) return "part";
  return foreign[cue.kind];
}

/** A figure stands a few words on, before any mark. */
function figureAhead(tokens: readonly Token[], from: number): boolean {
  for (let at = from; at < from + 8; at++) {
    const token = tokens[at];
    if (token?.kind === "number" || token?.kind === "code") return true;
    if (token === undefined || token.kind === "mark" || token.kind === "break") return false;
  }
  return false;
}

const unitWords = new Set(foreignUnits);

function isUnit(tokens: readonly Token[], cue: Cue): boolean {
  return unitWords.has(cue.phrase) && tokens[cue.start - 1]?.kind === "number";
}

/** "I climbed behind the heater and it says …": a place where somebody stood, not the owner of a figure. */
function standsBeside(tokens: readonly Token[], cue: Cue): boolean {
  let at = cue.start - 1;
  while (isWord(tokens[at], ...articles)) at -= 1;
  return (
    isWord(tokens[at], "behind", "near", "beside", "past", "around", "between", "detras") ||
    (isWord(tokens[at], "to") && isWord(tokens[at - 1], "next", "close"))
  );
}

/** The box of the label that holds the value of a rating: "the box marked AMPS", "the box next to HP". */
function isField({ tokens, names }: Context, cue: Cue): boolean {
  if (
    !isWord(
      tokens[cue.end],
      "marked",
      "labeled",
      "labelled",
      "for",
      "called",
      "next",
      "beside",
      "under",
      "with",
      "says",
      "that",
    )
  )
    return false;
  for (let at = cue.end + 1; at < cue.end + 5; at++) if (names[at]?.some(({ weak }) => !weak)) return true;
  return false;
}

const boxes = ["breaker", "fuse", "panel", "terminal", "wiring", "junction", "electrical"];
const isPaper = /^(?:label|plate|tag|sticker|nameplate|name plate|data plate|placa|etiqueta)$/;
const ofHouse = [
  "panel",
  "breaker",
  "electrician",
  "house",
  "outlet",
  "wire",
  "wiring",
  "subpanel",
  "circuit",
  "owner",
  "line",
];

function isFitted(words: readonly Token[]): boolean {
  const verb = words.findIndex((token) =>
    isWord(token, "installed", "put", "fitted", "pusieron", "instalaron", "puso"),
  );
  return (
    verb > 0 && words.slice(0, verb).some((token) => isWord(token, "they", "he", "we", "i", "who", "que"))
  );
}

/** "need a new motor, 1.5 hp": what is needed is what the label says. */
function needed(tokens: readonly Token[], clause: Clause, cue: Cue): boolean {
  return tokens
    .slice(Math.max(clause.start, cue.start - 8), cue.start)
    .some((token) => isWord(token, "need", "needs", "necesito", "needing", "ocupo", "needed"));
}

const takingBack = [
  "before",
  "earlier",
  "first",
  "originally",
  "wrong",
  "antes",
  "actually",
  "ignore",
  "sorry",
  "would",
  "olvide",
  "olvida",
  "forget",
  "ignora",
  "disregard",
];

const articles = ["the", "my", "a", "an", "his", "her", "our", "el", "la", "mi", "its", "their"];

/** "than my sister's", "like the neighbor's" */
function isCompared(tokens: readonly Token[], cue: Cue): boolean {
  let at = cue.start - 1;
  while (isWord(tokens[at], ...articles)) at -= 1;
  return isWord(tokens[at], "than", "then", "as", "like", "unlike", "que", "como");
}

const tellsOf = (next: Token | undefined) => next?.kind === "word" || next?.kind === "number";

/** "12 amps is what it was pulling" */
function saidOfIt(tokens: readonly Token[], cue: Cue): boolean {
  let what = false;
  for (let at = cue.start - 1; at > cue.start - 7; at--) {
    if (isWord(tokens[at], "what")) what = true;
    else if (!isWord(tokens[at], "is", "was", "it", "its", "thats", "that", "i", "we", "they")) break;
  }
  return what;
}

/** "1.5 HP stamped on the impeller": a thing named after the figure takes it back. */
export function linksBack(tokens: readonly Token[], cue: Cue, owner: Owner): boolean {
  // "somebody put in a 1.5 HP later and that's the one that died"
  if (cue.kind === "home" && /^(?:dead|bad|burnt|broken|broke)? ?one/.test(cue.phrase))
    return (
      isWord(tokens[cue.start - 1], "the") && isWord(tokens[cue.start - 2], "thats", "is", "which", "was")
    );
  if (owner === "label") return false;
  if (cue.kind === "earlier" && /(?:ago|back)$/.test(cue.phrase)) return true;
  if (cue.kind === "measured" && saidOfIt(tokens, cue)) return true;
  if (cue.kind === "measured" && /^(?:this morning|last night)$/.test(cue.phrase)) return true;
  if (cue.kind === "wish")
    return /^(?:on sale|online|for sale|for \$|too much|too big|too small|overkill|enough|good deal|craigslist|giving away|en oferta|offering)$/.test(
      cue.phrase,
    );
  for (let at = cue.start - 1; at >= Math.max(0, cue.start - 3); at--) {
    if (isWord(tokens[at], ...linking)) return true;
    if (!isWord(tokens[at], ...articles)) return false;
  }
  return false;
}
