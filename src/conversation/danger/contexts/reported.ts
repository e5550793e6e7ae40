import type { Context } from "../mention.ts";
import { sentenceEnd, sentenceStart } from "../mention.ts";
import { findFirst, patterns } from "../pattern.ts";

const hearsay = patterns(
  "(read|heard|reading|hear) (about|that|of|online|somewhere|people|stories|how)",
  "(on|in|from) ~1 (news|youtube|tiktok|article|forum|movie|internet|facebook|noticias)",
  "(a|the|this|that) (video|article|story|movie|forum)",
  "(last|old|previous|former) (house|houses|rental|place|home|apartment)",
  "(told|tells) me (his|her|their|about)",
  "(cousins|friends|uncles|coworkers|brothers|buddys|cousin|friend|uncle) (pump|motor|pool) ~8 once",
  "(i|ive|we) (heard|read) ~1 (variable|motors|some|these|old|new|pumps|people|those)",
  "they say",
  "back in the",
  "when i was (a|little|young|in)",
  "decades ago",
  "(as a kid|growing up|in college)",
  "(urban|horror) (legend|story|stories)",
);
/** Said of somebody else's machine, in this sentence or the next. */
const notOurs = patterns(
  "not (mine|ours)",
  "(mine|ours) ~1 (is|are|runs) ~1 (fine|ok|okay|good|perfect|great)",
  "(mine|ours) ~1 (never|hasnt|doesnt|isnt)",
  "(la|el) (mia|mio) ~2 (bien|no|nunca|perfecta|perfecto)",
  "en mi casa ~1 (no|nunca)",
  "aqui (no|nunca)",
);
const theirs = patterns(
  "(his|her|their|hers|theirs|su)",
  "(neighbor|neighbors|cousin|cousins|friend|friends|coworker|brother|sister|vecino|vecina|compadre|cunado|primo)",
);
const own = patterns(
  "(my|our|mine) ~1 (pump|motor|pool|ladder|breaker|panel)",
  "(shocked|zapped|bit) (me|us)",
);

/** "I read about people getting shocked in pools": somewhere else, not here. */
export const reported: Context = (tokens, { from, to, head }) => {
  const start = sentenceStart(tokens, head);
  const end = sentenceEnd(tokens, head);
  if (
    findFirst(theirs, tokens, start, end) &&
    findFirst(
      notOurs,
      tokens,
      to,
      Math.min(tokens.length, sentenceEnd(tokens, Math.min(end, tokens.length - 1))),
    )
  ) {
    return true;
  }
  if (!findFirst(hearsay, tokens, start, end)) return false;
  return !findFirst(own, tokens, Math.max(start, from - 4), Math.min(end, to + 4));
};
