import type { Standing } from "./candidate.ts";
import type { Clause } from "./clauses.ts";
import { type Context, cuesIn, isQuestion } from "./context.ts";
import type { Owner } from "./owner.ts";
import { denying, saidOf } from "./referringWords.ts";
import { relativeIn, type Said, saysWho } from "./relativeClause.ts";
import { isMark, isWord } from "./token.ts";

/** So many sentences back the figures may stand. */
const SENTENCES = 2;

/**
 * Words behind figures that tell whose they were: "… That is what's on mine now", "copied straight off my label",
 * "… and so does mine", "… is what they tried to sell me". Gives the owner of those figures.
 */
export function backReferences(context: Context, owners: readonly Owner[]): ReadonlyMap<Standing, Said> {
  const found = new Map<Standing, Said>();
  for (const [index, clauses] of context.sentences.entries()) {
    const asks = isQuestion(context, index);
    for (const clause of clauses ?? []) {
      // "That's the one I have now, do I need anything else?" tells, then asks.
      if (asks && (clause.opener || clause.closing === "?")) continue;
      const claims = context.stated.within(clause.start, clause.end);
      const from = Math.max(clause.start, ...claims.map(({ to }) => to));
      const said = saidOf(context, from, clause.end, claims.length > 0);
      if (!said || announces(context, from, clause)) continue;
      for (const claim of figuresBefore(context, owners, clause, from))
        if (said !== "mine" || (owners[claim.start] !== "neighbour" && !isOfThing(context, claim)))
          found.set(claim, said);
    }
  }
  for (const clause of context.clauses)
    for (const claim of alikeNext(context, owners, clause)) found.set(claim, "mine");
  for (const claim of context.stated.all)
    if ((owners[claim.start] === "other" || owners[claim.start] === "asked") && isPointedAt(context, claim))
      found.set(claim, "mine");
  return found;
}

const alike = [
  "same",
  "igual",
  "identical",
  "identico",
  "identica",
  "like",
  "match",
  "matches",
  "mismo",
  "misma",
];

/** "I want the exact same as before: 1 HP, …", "uno igual al que traigo: …": the figures told next are the present ones. */
function alikeNext(context: Context, owners: readonly Owner[], clause: Clause): readonly Standing[] {
  const { tokens, stated, sentences } = context;
  const words = tokens.slice(clause.start, clause.end);
  const at = words.findIndex((token) => isWord(token, ...alike));
  const colon = words.findIndex((token) => isMark(token, ":"));
  if (at < 0 || colon <= at || words.slice(0, colon).some((token) => isWord(token, ...denying))) return [];
  const end = clause.start + colon;
  if (
    stated.within(clause.start, end).length > 0 ||
    cuesIn(context, clause.start, end, "person", "thing").length > 0
  )
    return [];
  const rest = words.slice(at + 1, colon);
  const relative = relativeIn(rest);
  const present =
    rest.some((token) =>
      isWord(token, "mine", "ours", "before", "mio", "mia", "now", "existing", "old", "current", "this"),
    ) ||
    (relative !== undefined && saysWho(rest.slice(relative)) === "mine") ||
    (isWord(rest[0], "al") && saysWho(rest) === "mine");
  if (!present) return [];
  const until = sentences[clause.sentence]?.at(-1)?.end ?? clause.end;
  return stated
    .within(end, until)
    .filter(({ start }) => owners[start] === "label" || owners[start] === "other");
}

/** Figures of a compressor stay its own, also when "that's the one that quit"; those of a listing may be the label's too. */
function isOfThing(context: Context, { from, start }: Standing): boolean {
  const clause = context.clauses[context.clauseAt[start] ?? 0];
  const sentence = context.sentences[clause?.sentence ?? 0];
  return cuesIn(context, sentence?.[0]?.start ?? from, start, "thing").some(
    ({ phrase }) => !offering.test(phrase),
  );
}

const offering = /site|listing|catalog|website|brochure|flyer|quote|estimate|ad\b|ad says/;

/** "rather 2 hp than the 1 hp I have now", "from the 115 V that's on there": an article, the figure, and whose it is. */
function isPointedAt({ tokens }: Context, { from, to }: Standing): boolean {
  const article = ["the", "my", "our", "this", "el", "la", "los", "mi"];
  if (!isWord(tokens[from - 1], ...article) && !isWord(tokens[from], ...article)) return false;
  const at = isWord(tokens[to], "that", "which", "que", "motor", "one") ? to + 1 : to;
  if (isWord(tokens[at], "tengo", "traigo", "tenemos", "traemos", "died", "quit", "failed")) return true;
  if (isWord(tokens[at], "i", "we") && isWord(tokens[at + 1], "have", "got", "own")) return true;
  if (isWord(tokens[at], "ive", "weve") && isWord(tokens[at + 1], "got")) return true;
  const now = tokens.slice(at + 1, at + 4).some((token) => isWord(token, "now", "there", "ahora", "puesto"));
  return now && isWord(tokens[at], "it", "thats", "is", "its", "tiene", "trae", "hay", "esta");
}

/** "This is what I have: 1.5 hp" tells of the figures to come. */
function announces({ tokens, stated, sentences }: Context, from: number, clause: Clause): boolean {
  if (tokens.slice(from, clause.end).some((token) => isMark(token, ":", "="))) return true;
  const opening = tokens
    .slice(from, from + 2)
    .some((token) => isWord(token, "this", "these", "esto", "este"));
  if (
    !opening &&
    tokens.slice(clause.end, clause.end + 3).some((token) => isWord(token, "along", "plus", "also", "with"))
  )
    return false;
  // "Mine says the same but 115/230"
  if (!opening && isWord(tokens[clause.end], "but", "pero", "except")) return false;
  const end = opening ? tokens.length : (sentences[clause.sentence]?.at(-1)?.end ?? clause.end);
  return stated.within(clause.end, end).length > 0;
}

/** The figures last told before a place, in its sentence or one shortly before, of one owner. */
function figuresBefore(
  context: Context,
  owners: readonly Owner[],
  clause: Clause,
  at: number,
): readonly Standing[] {
  const { stated, sentences, sentenceAt } = context;
  const first = sentences[Math.max(0, clause.sentence - SENTENCES)]?.[0]?.start ?? 0;
  const before = stated.within(first, at).filter(({ end }) => end <= at);
  const last = before.at(-1);
  if (!last) return [];
  const owner = owners[last.start];
  if (owner === "measured" || owner === "part" || owner === "place") return [];
  const behind = last.start >= clause.start;
  // "Would 1.5 hp, 230 volts be too much? Those are the numbers on my motor."
  const inQuestion = (at: number) => isQuestion(context, sentenceAt[at] ?? 0) && owners[at] !== "neighbour";
  const earliest = behind ? listStart(context, clause) : 0;
  return before.filter(
    ({ start }) =>
      sentenceAt[start] === sentenceAt[last.start] &&
      (owners[start] === owner || inQuestion(start)) &&
      start >= earliest,
  );
}

/** Where the list ends in this clause that its words are about: "1.5 hp, 230 V, 56Y is …". */
function listStart(context: Context, clause: Clause): number {
  const { clauses, clauseAt, stated } = context;
  let start = clause.start;
  for (
    let index = (clauseAt[clause.start] ?? 0) - 1;
    clauses[index]?.sentence === clause.sentence;
    index -= 1
  ) {
    const before = clauses[index] as Clause;
    const last = stated.within(before.start, before.end).at(-1);
    const subject = cuesIn(context, before.start, before.end, "home", "person").length > 0;
    if (!last || last.to < before.end || subject) break;
    start = before.start;
  }
  return start;
}
