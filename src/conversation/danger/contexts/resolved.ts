import { type Context, hasWord, sentenceEnd, sentenceStart, words } from "../mention.ts";
import { findFirst, patterns } from "../pattern.ts";
import type { Token } from "../tokens.ts";

const past = words(
  "was were had did used got tripped shocked zapped smoked smelled sparked burned burnt melted leaked flooded caught last ago once before antes did electrocuted popped blew kicked tingled botaba boto dio daba hacia salia olia paso ano pasado wet",
);
const present = words(
  "keeps is are constantly always everytime still now again trips shocks zaps today tonight currently just smokes smells its esta sigue todavia ahora hoy",
);
const usedTo = patterns(
  "used to",
  "antes",
  "^(stopped|quit) ~1 (tripping|sparking|smoking|shocking|popping)",
);
/** Work that ends a danger whoever did it. */
const cured = patterns(
  "^(fixed|repaired|resolved|solved|sorted|rewired|rebonded|redone|corrected|inspected|arreglo|arreglaron|arreglado|arreglamos|reparo|repararon|reparado|solucionado)",
  "^(took|taken) care of",
  "^(signed off|passed inspection)",
  "^(stopped|ended|quit) after ~3 (new|replacing|replaced|swapping|electrician|installing|fixing|changing)",
  // It was something else, and harmless.
  "(was|is|its|were|from|just) ~3 ^@benign",
  "^turned out ~~8 (was|be|its|is) ~3 @benign",
  "^turned out to be ~4 (neighbor|neighbors|neighbour|barbecue|bbq|grill|steam|nothing|dust|trash|fog)",
  "(was|is|only) just ~1 ^(steam|dust|fog|mist|nothing)",
);
/** Work that ends it only with time, a tradesperson or a good outcome beside it. */
const replaced = patterns(
  "^(replaced|swapped|changed|disconnected|removed|trashed|junked|scrapped|tossed|chucked|dumped|pitched|pulled|yanked|ditched|gone|cambio|cambiaron|cambiamos|tiramos)",
  "^(thrown|threw|hauled|took|taken) ~5 (out|away)",
  "put (in|on)? ~2 new",
);
const outcome = patterns(
  "(no|not|never|hasnt|havent|without) ~2 ^(problem|problems|issue|issues|trouble|tripped|happened|incident|again|shocked|done) ~3 since",
  "(no|zero) ~1 ^(trips|tripping|problems|issues|trouble|smoke|shocks) ~1 (in|for) ~2 (year|years|month|months|weeks)",
  "(no|never|not) ~1 ^(problem|problems|issue|issues|trouble|again)",
  "(fine|good|great|ok|okay|perfect|solid) ~1 ^(since|ever since|after that|desde)",
  "(not|isnt|hasnt|doesnt|no) ~3 ^(anymore|any more)",
  "(not|hasnt|never) ~1 ^since",
  "^desde entonces ~3 (bien|no)",
  "(pero|but) ^(ya no|not anymore|not any more|no more|no longer)",
);
/** Fine after a repair; fine by itself proves nothing. */
const fineNow = patterns(
  "(runs|running|works|working|been) ~1 ^(cool|fine|good|great|perfect|perfecto) ~1 (now|since)?",
);
const distance = patterns(
  "last ^(year|summer|spring|winter|fall|season|month|fall|july|june|may|april|march|august|september|october)",
  "^(years|months|year) ago",
  "in ^(january|february|march|april|may|june|july|august|september|october|november|december)",
  "(ano|verano|mes) ^pasado",
  "hace ~2 ^(anos|meses|ano)",
  "(old|last|previous|first) ^(mtr|motor|pump|one|switch|breaker|timer)",
  "in the ^(spring|summer|fall|winter|autumn)",
  "^back (in|when)",
  "in ^(2000|2005|2008|2010|2011|2012|2013|2014|2015|2016|2017|2018|2019|2020|2021|2022|2023|2024)",
);
const former = patterns("(old|last|previous|former) (motor|pump|one|unit)");
const longAgo = patterns("years ago", "in (2015|2016|2017|2018|2019|2020|2021|2022|2023|2024)", "decades");
const tradesperson = patterns("(electrician|licensed|electricista|utility|inspector|tecnico)");
const notDone = words(
  "need needs want wants be get gets getting to until before not never havent hasnt hadnt isnt wasnt didnt nobody thought can should if supposedly cant will how or maybe",
);
const back = patterns(
  "(came|is|its|started|happening|doing it) ^(back|again)",
  "still ^(does|doing|happens|happening)",
);

/** Also the Spanish imperfect: "se bajaba", "salía". */
function isPast(tokens: readonly Token[], start: number, end: number): boolean {
  if (hasWord(tokens, start, end, past)) return true;
  return tokens.slice(start, end).some(({ word }) => word.length > 4 && /(?:aba|aban|ia|ian)$/.test(word));
}

/** What a later sentence says was mended is what that sentence speaks of: it ends where another danger is told. */
function untilNextTopic(
  tokens: readonly Token[],
  end: number,
  most: number,
  starts: ReadonlySet<number>,
): number {
  for (let at = end; at < Math.min(tokens.length, most); at += 1) {
    // "No trips in months" is no new danger.
    const denied = tokens[at - 1]?.concepts.has("negator");
    if (starts.has(at) && !denied) return sentenceStart(tokens, at);
  }
  return Math.min(tokens.length, most);
}

/** "It used to trip, the electrician fixed that", "smoked in May, that motor has been thrown out". */
export const resolved: Context = (tokens, { from, head, to }, starts) => {
  const start = sentenceStart(tokens, head);
  const end = sentenceEnd(tokens, head);
  const clauseStart = Math.max(start, from - 6);
  const settled = findFirst(cured, tokens, to, Math.min(end, to + 4));
  if (settled && !hasWord(tokens, to, settled.from, notDone)) return true;
  const ended = findFirst(usedTo, tokens, Math.max(start, head - 8), head + 1);
  if (ended && !hasWord(tokens, ended.from - 2, ended.from, notDone)) return true;
  if (hasWord(tokens, clauseStart, Math.min(end, to + 2), present)) return false;
  // "Fixed the tripping problem": the work comes first and names what it ended.
  const named = findFirst(cured, tokens, Math.max(start, head - 5), head);
  if (named && !hasWord(tokens, named.from - 3, named.from, notDone)) return true;
  const swapped = findFirst(replaced, tokens, Math.max(start, head - 5), head);
  if (
    swapped &&
    hasWord(tokens, start, end, words("already")) &&
    !hasWord(tokens, swapped.from - 3, swapped.from, notDone)
  ) {
    return true;
  }
  if (!isPast(tokens, clauseStart, Math.min(end, to + 6))) return false;
  const reach = untilNextTopic(tokens, end, to + 40, starts);
  const whole = (list: typeof cured) => findFirst(list, tokens, start, reach) !== undefined;
  const done = (list: typeof cured) => {
    const found = findFirst(list, tokens, start, reach);
    return found !== undefined && !hasWord(tokens, found.from - 3, found.from, notDone);
  };
  if (findFirst(back, tokens, to, reach)) return false;
  if (done(cured)) return true;
  if (whole(outcome)) return true;
  const already = hasWord(tokens, start, end, words("already ya"));
  if (done(replaced) && (already || whole(fineNow))) return true;
  // "My old pump caught fire in 2019": long ago, and not this one.
  if (findFirst(former, tokens, start, end) && findFirst(longAgo, tokens, start, end)) return true;
  return done(replaced) && (whole(distance) || whole(tradesperson));
};
