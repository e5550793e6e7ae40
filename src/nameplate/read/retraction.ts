import type { Standing } from "./candidate.ts";
import { type Context, cuesOf } from "./context.ts";
import type { Owner } from "./owner.ts";
import { isWord } from "./token.ts";

/** "scratch that", "disregard all of that": what was said before does not count. */
export function retract(context: Context, owners: readonly Owner[], claims: readonly Standing[]): Standing[] {
  const { tokens, sentenceAt } = context;
  let kept = [...claims];
  for (const cue of cuesOf(context, "retraction").slice(0, 20)) {
    let rest = cue.end;
    while (rest < tokens.length && sentenceAt[rest] === sentenceAt[cue.start]) rest += 1;
    const all = /all|those|above|said/.test(cue.phrase) || isWord(tokens[cue.end], "all", "everything");
    let figure = cue.start - 1;
    while (figure > 0 && tokens[figure]?.kind !== "number" && tokens[figure]?.kind !== "code") figure -= 1;
    // "(I said 1.5 earlier, ignore that)" takes back what did not count anyway.
    if (!all && owners[figure] !== "label") continue;
    if (all) kept = kept.filter((claim) => claim.start > cue.start);
    else if (!tokens.slice(cue.end, rest).some(({ kind }) => kind === "number" || kind === "code")) {
      const last = kept.filter((claim) => claim.end <= cue.start).at(-1);
      const sentence = last && sentenceAt[last.start];
      kept = kept.filter((claim) => claim.start > cue.start || sentenceAt[claim.start] !== sentence);
    }
  }
  return kept;
}
