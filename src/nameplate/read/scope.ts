import { asksGenerally, plainNouns } from "./asking.ts";
import type { Clause } from "./clauses.ts";
import { type Context, cuesIn, cuesOf, isQuestion } from "./context.ts";
import type { Cue, CueKind } from "./findCues.ts";
import { Ordered } from "./ordered.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { motorsToldApart, sentencesOfWorkingMotors } from "./whichMotor.ts";

/**
 * Whose figure a token carries. `measured` covers only what an instrument measures, `part` a piece of the pump
 * that the shaft and the face are described by, `place` a fitting of the house that carries the same supply.
 */
export type Owner = "label" | "other" | "neighbour" | "measured" | "asked" | "part" | "place";

const foreign: Partial<Record<CueKind, Owner>> = {
  thing: "other",
  person: "neighbour",
  earlier: "other",
  wish: "other",
  measured: "measured",
};
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
/** What somebody said before: the rest of the sentence is not about it. */
const said =
  /^(?:i |id |had |thought |yo pense|pense |crei |dije|puse|yo dije|escribi|like i|first said|said|sent|told|would have)/;
const parts = /^(?:impell|impulsor|diffuser|volute|seal|wet ?end|housing)/;

/**
 * The owner of every token. A clause belongs to the last one named in it, else to the one the sentence was
 * about; a sentence starts with the label in question unless a heading above it says otherwise.
 */
export function ownersOf(context: Context): Owner[] {
  const owners = ownersBy(context, true);
  if (
    !owners.includes("other") ||
    context.stated.all.some(({ start, bare }) => !bare && owners[start] === "label")
  )
    return owners;
  // Every figure belongs to a pump of another kind, and no other motor is spoken of: then that one is meant.
  const only = cuesOf(context, "thing").some(({ phrase }) => pumps.test(phrase));
  const others = cuesOf(context, "alive", "earlier", "wish", "person", "general").length > 0;
  const motors = cuesOf(context, "home").filter(({ phrase }) => phrase !== "motor").length > 0;
  return only && !others && !motors ? ownersBy(context, false) : owners;
}

/** Pumps that may be the one asked about. */
const pumps =
  /^(?:spa|hot tub|jacuzzi|booster|waterfall|fountain|cleaner|well|sump|irrigation|sprinkler)(?: (?:motor|pump|one))?$/;

function ownersBy(context: Context, apart: boolean): Owner[] {
  const { tokens, clauses } = context;
  const owners: Owner[] = new Array(tokens.length).fill("label");
  const working = sentencesOfWorkingMotors(context);
  const toldApart = new Ordered(motorsToldApart(context));
  let inherited: Owner = "label";
  let outer: Owner = "label";
  let heading: Owner | undefined;
  let sentence = -1;
  let quoted = false;
  for (const [index, clause] of clauses.entries()) {
    const before = clauses[index - 1];
    const newLine = before === undefined || before.lines > 0;
    if (clause.sentence !== sentence) {
      if (before?.lines === 2) heading = undefined;
      const opened = before?.lines === 1 ? heading : undefined;
      inherited = opened ?? (isWord(tokens[clause.start], "his", "hers", "theirs") ? inherited : "label");
      sentence = clause.sentence;
    }
    quoted = newLine ? isMark(tokens[clause.start], ">") : quoted;
    if (quoted) {
      owners.fill("other", clause.start, clause.end);
      continue;
    }
    if (asksGenerally(context, clause)) {
      owners.fill("asked", clause.start, clause.end);
      // "Got anything in 56Y, under 10 amps?" goes on asking; so did "a 115/230 motor," just before.
      if (isQuestion(context, sentence)) inherited = "asked";
      const joined =
        before?.sentence === sentence && isWord(tokens[before.start], "a", "an", "un", "una", "any");
      if (before && joined) owners.fill("asked", before.start, before.end);
      continue;
    }
    // "…, but the one on it now says 1.5 hp": the turn leads back to the label.
    const turned = before?.sentence === sentence && isWord(tokens[clause.start], "but", "pero", "however");
    if (turned && inherited !== "asked" && !working.has(sentence)) inherited = "label";
    const entity = toldApart.before(clause.start + 1, 1)[0]?.owner;
    const opening: Owner = entity ?? inherited;
    const first = working.has(sentence) && opening === "label" ? "other" : opening;
    const { owner, cued } = ownClause(
      context,
      clause,
      first,
      owners,
      apart,
      working.has(sentence) || entity === "other",
    );
    // "The spare (works) is 1 hp": what stands in brackets parts nobody from his figure.
    const abbreviated = clause.closing === "." && clauses[index + 1]?.sentence === clause.sentence;
    const bracketed = clause.closing === "(";
    if (bracketed) outer = cued ? owner : opening;
    const figures = tokens
      .slice(clause.start, clause.end)
      .some(({ kind, norm }) => kind === "number" || (kind === "code" && /^\d/.test(norm)));
    const announces = isMark(tokens[clause.end - 1], ":");
    const quoting = cuesIn(context, clause.start, clause.end, "earlier").at(-1)?.phrase ?? "";
    if (cued && said.test(quoting)) inherited = "label";
    else if (cued || entity)
      inherited =
        figures ||
        announces ||
        bracketed ||
        abbreviated ||
        owner === "label" ||
        owner === "neighbour" ||
        saysNext(tokens, clause, clauses[index + 1])
          ? owner
          : "label";
    if (clause.closing === ")") inherited = outer;
    const alone = tokens[clause.end]?.kind === "break" && newLine;
    if (!figures) handBack(context, index, owners);
    if (cued && (announces || (!figures && clause.end - clause.start <= 4)) && alone) heading = owner;
    else if (cued && owner === "label") heading = undefined;
  }
  return owners;
}

/**
 * A clause without a figure of its own that tells afterwards whose the figure before was: "… but its on the timer",
 * "… so leave that one alone", "… that ain't the one".
 */
function handBack(context: Context, index: number, owners: Owner[]): void {
  const { clauses, stated } = context;
  const clause = clauses[index];
  if (!clause) return;
  const dismissed = cuesIn(context, clause.start, clause.end, "dismissal").length > 0;
  const owner = dismissed ? "other" : pointsAt(context, clause);
  if (!owner) return;
  const opens = (at: number) => clauses[at]?.sentence === clause.sentence;
  let first = index;
  if (dismissed) {
    const own = opens(index - 1) && stated.within(sentenceStart(context, clause), clause.start).length > 0;
    const farthest = Math.max(0, index - mostHandedBack);
    while (
      first > farthest &&
      (opens(first - 1) || (!own && clauses[first - 1]?.sentence === clause.sentence - 1))
    )
      first -= 1;
  } else if (opens(index - 1)) first = index - 1;
  for (let at = clauses[first]?.start ?? clause.start; at < clause.start; at++)
    if (owners[at] === "label") owners[at] = owner;
}

/** How many clauses a dismissal reaches back. */
const mostHandedBack = 12;

const sentenceStart = ({ sentences }: Context, { sentence, start }: Clause) =>
  sentences[sentence]?.[0]?.start ?? start;

/** "but its on the timer", "that was on the old one": a pronoun for the figure, and the thing it stands on. */
function pointsAt(context: Context, clause: Clause): Owner | undefined {
  const { tokens } = context;
  let at = clause.start;
  while (isWord(tokens[at], "but", "and", "though", "pero", "y")) at += 1;
  if (
    !isWord(tokens[at], "its", "it", "thats", "that", "which", "this", "those", "they", "eso", "ese", "esta")
  )
    return undefined;
  const cue = cuesIn(context, at, clause.end, "thing", "person", "earlier")[0];
  const owner = cue && foreign[cue.kind];
  if (!cue || !owner || cue.start - at > 5) return undefined;
  const linked = tokens
    .slice(at, cue.start)
    .some((token) => isWord(token, ...linking, "is", "was", "es", "era"));
  return linked || isWord(tokens[at], "thats", "its") ? owner : undefined;
}

/** Fills in one clause: each cue changes the owner of what follows it. */
function ownClause(
  context: Context,
  clause: Clause,
  opening: Owner,
  owners: Owner[],
  apart: boolean,
  stays: boolean,
): { owner: Owner; cued: boolean } {
  let owner = opening;
  let from = clause.start;
  let cued = false;
  let composed = 0;
  for (const cue of cuesIn(
    context,
    clause.start,
    clause.end,
    "home",
    "thing",
    "person",
    "earlier",
    "wish",
    "measured",
  )) {
    if (cue.start < composed) continue;
    if (cue.phrase === "one before") composed = cue.end;
    if (!apart && cue.kind === "thing" && pumps.test(cue.phrase)) continue;
    const next = turn(context, cue, owner, cued, clause, stays);
    if (next === undefined) continue;
    // "…, 3/4 hp motor": the noun the figure stands before says whose it is.
    const unit = context.tokens[cue.start - 1];
    const counted =
      next === "label" &&
      owner === "other" &&
      !cued &&
      isWord(unit, "hp", "horse", "horsepower", "v", "volt", "volts");
    if (counted) owner = "label";
    owners.fill(linksBack(context.tokens, cue, next) ? next : owner, from, cue.start);
    // "1 HP on the wet end and .95 THP on the motor": the second figure goes with the second place.
    const joint = context.tokens.slice(from, cue.start).findIndex((token) => isWord(token, "and", "y"));
    const onMotor = cued && next === "label" && isWord(context.tokens[cue.start - 1], "on", "en", "off");
    if (onMotor && joint >= 0) owners.fill("label", from + joint, cue.start);
    from = cue.start;
    owner = next;
    cued = true;
  }
  owners.fill(owner, from, clause.end);
  return { owner, cued };
}

/** The owner from this cue on; undefined when it changes nothing. */
function turn(
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
  if (cue.kind === "home")
    return plainNouns.has(cue.phrase) && (cued || stays) && owner !== "label" ? undefined : "label";
  // "the new panel feeds it 240" is about the house.
  if (newOnes.has(cue.phrase) && isWord(tokens[cue.end], ...ofHouse)) return undefined;
  if (newOnes.has(cue.phrase) && needed(tokens, clause, cue)) return undefined;
  // "I told you it's 56J" insists; "I said 1.5 earlier" takes back.
  const insists = /^(?:i said|i told|told you|like i said|dije|yo dije)$/.test(cue.phrase);
  if (insists && !tokens.slice(clause.start, clause.end + 6).some((token) => isWord(token, ...takingBack)))
    return undefined;
  // "call me if you need me" supposes no motor.
  const figures = tokens.slice(cue.end, clause.end).some(({ kind }) => kind === "number" || kind === "code");
  if (cue.kind === "wish" && /^if /.test(cue.phrase) && !figures) return undefined;
  // "it draws 8 amps per the plate"
  const perPlate = cuesIn(context, cue.end, clause.end, "home").some(
    (home) => isPaper.test(home.phrase) && isWord(tokens[home.start - 2], "per", "to", "on", "from", "by"),
  );
  if (cue.kind === "measured" && perPlate) return undefined;
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

const linking = ["on", "of", "from", "off", "in", "by", "for", "del", "de", "en"];
const articles = ["the", "my", "a", "an", "his", "her", "our", "el", "la", "mi", "its", "their"];

/** "1.5 HP stamped on the impeller": a thing named after the figure takes it back. */
function linksBack(tokens: readonly Token[], cue: Cue, owner: Owner): boolean {
  if (owner === "label") return false;
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

/** The clause ends with words that announce a figure, or the next one tells what "it was". */
function saysNext(tokens: readonly Token[], clause: Clause, next: Clause | undefined): boolean {
  if (isWord(tokens[clause.end - 1], "says", "said", "reads", "is", "was", "shows", "showed", "dice", "es"))
    return true;
  return (
    next?.sentence === clause.sentence &&
    isWord(tokens[next.start], "it", "which", "they") &&
    isWord(tokens[next.start + 1], "was", "were", "had", "said")
  );
}
