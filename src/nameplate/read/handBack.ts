import type { Clause } from "./clauses.ts";
import { type Context, cuesIn } from "./context.ts";
import { foreign, linking, type Owner } from "./owner.ts";
import { isWord } from "./token.ts";

/**
 * A clause without a figure of its own that tells afterwards whose the figure before was: "… but its on the timer",
 * "… so leave that one alone", "… that ain't the one".
 */
export function handBack(context: Context, index: number, owners: Owner[]): void {
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
