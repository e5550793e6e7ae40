import type { Standing } from "./candidate.ts";
import { type Clause, type Cue, type CueKind, clausesOf, findCues } from "./clauses.ts";
import type { Name } from "./naming.ts";
import { type Owner, ownersOf } from "./scope.ts";
import type { Token } from "./token.ts";

/** One message as the later steps see it: its pieces, what was found in them, and whose they are. */
export interface Context {
  readonly tokens: readonly Token[];
  readonly names: readonly (readonly Name[])[];
  readonly cues: readonly Cue[];
  readonly clauses: readonly Clause[];
  /** For every token, the index of its clause. */
  readonly clauseAt: readonly number[];
  /** For every token, the number of its sentence. */
  readonly sentenceAt: readonly number[];
  readonly owners: readonly Owner[];
}

export function contextOf(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  stated: readonly Standing[],
): Context {
  const cues = findCues(tokens);
  const clauses = clausesOf(tokens, cues);
  const clauseAt: number[] = [];
  const sentenceAt: number[] = [];
  let index = 0;
  for (let at = 0; at < tokens.length; at++) {
    while (index + 1 < clauses.length && (clauses[index + 1]?.start ?? 0) <= at) index += 1;
    clauseAt.push(index);
    sentenceAt.push(clauses[index]?.sentence ?? 0);
  }
  return {
    tokens,
    names,
    cues,
    clauses,
    clauseAt,
    sentenceAt,
    owners: ownersOf(tokens, clauses, cues, stated),
  };
}

export function cuesOf(context: Context, ...kinds: readonly CueKind[]): Cue[] {
  return context.cues.filter(({ kind }) => kinds.includes(kind));
}

/** True when one of these cues lies wholly between two places. */
export function cueBetween(
  context: Context,
  from: number,
  to: number,
  ...kinds: readonly CueKind[]
): boolean {
  return context.cues.some(({ kind, start, end }) => start >= from && end <= to && kinds.includes(kind));
}
