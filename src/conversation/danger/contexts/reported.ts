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
const own = patterns(
  "(my|our|mine) ~1 (pump|motor|pool|ladder|breaker|panel)",
  "(shocked|zapped|bit) (me|us)",
);

/** "I read about people getting shocked in pools": somewhere else, not here. */
export const reported: Context = (tokens, { from, to, head }) => {
  const start = sentenceStart(tokens, head);
  const end = sentenceEnd(tokens, head);
  if (!findFirst(hearsay, tokens, start, end)) return false;
  return !findFirst(own, tokens, Math.max(start, from - 4), Math.min(end, to + 4));
};
