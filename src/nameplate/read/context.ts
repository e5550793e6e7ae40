import type { Standing } from "./candidate.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import { type Entity, findEntities } from "./entities.ts";
import { type Cue, type CueKind, findCues } from "./findCues.ts";
import type { Name } from "./naming.ts";
import { Ordered } from "./ordered.ts";
import { isWord, type Token } from "./token.ts";
import { motorsToldApart, type ToldApart } from "./whichMotor.ts";

/** One message as the later steps see it: its pieces, its clauses, and what was found in them. */
export interface Context {
  readonly tokens: readonly Token[];
  readonly names: readonly (readonly Name[])[];
  readonly cues: Ordered<Cue>;
  readonly stated: Ordered<Standing>;
  /** Motors told apart in the message; none unless there are two or more. */
  readonly entities: Ordered<Entity>;
  /** The stretches about each of several motors, where the message says which of them is broken. */
  readonly toldApart: readonly ToldApart[];
  readonly clauses: readonly Clause[];
  /** For every token, the index of its clause. */
  readonly clauseAt: readonly number[];
  /** For every token, the number of its sentence. */
  readonly sentenceAt: readonly number[];
  /** For every sentence, its clauses. */
  readonly sentences: readonly (readonly Clause[])[];
}

export function contextOf(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  stated: readonly Standing[],
): Context {
  const named = findEntities(tokens);
  const entities = new Ordered(new Set(named.map(({ key }) => key)).size > 1 ? named : []);
  const found = new Ordered(findCues(tokens));
  // Where "the waterfall one" is the broken motor told apart, no waterfall has the figure.
  const toldApart = motorsToldApart(tokens, found, entities);
  const broken = toldApart.filter(({ owner }) => owner === "label");
  // "Pool motor: 1.5 HP" names the one that runs: no home for its figures.
  const namesOther = (cue: Cue) =>
    cue.kind === "home" &&
    toldApart.some(({ owner, start, named }) => owner === "other" && start <= cue.start && cue.end <= named);
  const namesMotor = (cue: Cue) =>
    (cue.kind === "thing" || cue.kind === "earlier") &&
    (broken.some(({ start, named }) => start <= cue.start && cue.start < named) ||
      entities.before(cue.start + 1, 1).some(({ start, end }) => cue.start > start + 1 && cue.start < end));
  const cues = new Ordered(found.all.filter((cue) => !namesMotor(cue) && !namesOther(cue)));
  const clauses = clausesOf(tokens, cues.all, entities.all);
  const clauseAt: number[] = [];
  const sentenceAt: number[] = [];
  const sentences: Clause[][] = [];
  let index = 0;
  for (const clause of clauses) {
    sentences[clause.sentence] ??= [];
    sentences[clause.sentence]?.push(clause);
  }
  for (let at = 0; at < tokens.length; at++) {
    while (index + 1 < clauses.length && (clauses[index + 1]?.start ?? 0) <= at) index += 1;
    clauseAt.push(index);
    sentenceAt.push(clauses[index]?.sentence ?? 0);
  }
  return {
    tokens,
    names,
    cues,
    stated: new Ordered(stated),
    entities,
    toldApart,
    clauses,
    clauseAt,
    sentenceAt,
    sentences,
  };
}

export function cuesOf({ cues }: Context, ...kinds: readonly CueKind[]): Cue[] {
  return cues.all.filter(({ kind }) => kinds.includes(kind));
}

/** The cues of these kinds that start in a stretch of text. */
export function cuesIn({ cues }: Context, from: number, to: number, ...kinds: readonly CueKind[]): Cue[] {
  return cues.within(from, to).filter(({ kind }) => kinds.includes(kind));
}

/** True when one of these cues lies wholly between two places. */
export function cueBetween(
  context: Context,
  from: number,
  to: number,
  ...kinds: readonly CueKind[]
): boolean {
  return cuesIn(context, from, to, ...kinds).some(({ end }) => end <= to);
}

/** True when the sentence ends with a question mark, unless it only wants to hear "yes": "it's single speed, ok?". */
export function isQuestion({ sentences, tokens }: Context, sentence: number): boolean {
  const clauses = sentences[sentence] ?? [];
  const last = clauses.at(-1);
  if (last?.closing !== "?") return false;
  const tag =
    last.end - last.start === 1 && isWord(tokens[last.start], "ok", "okay", "alright", "entendido", "vale");
  return !(tag && clauses.length > 1);
}
