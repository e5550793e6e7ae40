import { asksGenerally } from "./asking.ts";
import type { Clause } from "./clauses.ts";
import { type Context, cuesIn, cuesOf, isQuestion } from "./context.ts";
import { handBack } from "./handBack.ts";
import { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { statesInAsking } from "./statedInAsking.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { linksBack, turn } from "./turn.ts";
import { sentencesOfWorkingMotors } from "./whichMotor.ts";

/** What somebody said before: the rest of the sentence is not about it. */
const said =
  /^(?:i |id |had |thought |yo pense|pense |crei |dije|puse|yo dije|escribi|like i|first said|said|sent|told|would have)/;

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
  const toldApart = new Ordered(context.toldApart);
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
    if (clause.opener && statesInAsking(context, clause)) {
      inherited = "label";
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
    if (inherited === "other" && turnsToPump(context, clause, before)) inherited = "label";
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
    // "I would love a variable speed, maybe 1.65 hp": what is wished for goes on.
    const wishes =
      cuesIn(context, clause.start, clause.end, "wish").length > 0 &&
      context.stated.within(clause.start, clause.end).length > 0;
    const announces = isMark(tokens[clause.end - 1], ":");
    const quoting = cuesIn(context, clause.start, clause.end, "earlier").at(-1)?.phrase ?? "";
    if (cued && said.test(quoting)) inherited = "label";
    else if (cued && figures && (isReference(context, clause) || isCompared(context, clause)))
      inherited = opening;
    else if (cued || entity)
      inherited =
        figures ||
        wishes ||
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

/** "The dryer is on a 30, the pump's on a 20": from another thing to the pump. */
function turnsToPump(context: Context, clause: Clause, before: Clause | undefined): boolean {
  const { tokens } = context;
  if (!before || before.sentence !== clause.sentence) return false;
  let at = clause.start;
  while (isWord(tokens[at], "and", "but", "y", "pero", "the", "my", "our", "la", "el", "mi", "pool")) at += 1;
  if (at === clause.start || !isWord(tokens[at], "pump", "pumps", "bomba")) return false;
  const verb = isWord(tokens[at + 1], "is", "on", "has", "es", "esta", "tiene", "breaker", "gets");
  return verb && cuesIn(context, before.start, before.end, "thing").length > 0;
}

/** "Ticket 55120, about …": the number of an order or a house is no owner of what comes after it. */
function isReference(context: Context, clause: Clause): boolean {
  const phrase = cuesIn(context, clause.start, clause.end, "thing").at(-1)?.phrase ?? "";
  return /^(?:ticket|order|account|my order|the order|address|house number|zip|gate code|tracking)/.test(
    phrase,
  );
}

/** "It's not 1725 like the website says, it's 3450.": what is only compared with owns nothing that follows. */
function isCompared({ tokens, cues }: Context, clause: Clause): boolean {
  const thing = cues.within(clause.start, clause.end).filter(({ kind }) => kind === "thing")[0];
  if (!thing) return false;
  const at = isWord(tokens[thing.start - 1], "the", "el", "la", "your") ? thing.start - 2 : thing.start - 1;
  return (
    isWord(tokens[at], "like", "as", "unlike", "como") &&
    cues.within(clause.start, at).some(({ kind }) => kind === "negator")
  );
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
