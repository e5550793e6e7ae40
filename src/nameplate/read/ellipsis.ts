import type { RatingName } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cuesOf } from "./context.ts";
import type { Cue } from "./findCues.ts";
import { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { suits } from "./plausible.ts";
import { isOwnPronoun } from "./possessors.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** What a label calls by the same unit as an instrument or the house. */
const kin: Partial<Record<RatingName, RatingName>> = { supplyVolts: "volts", breakerAmps: "amps" };

/** So many tokens after "ours" its figures may stand. */
const reach = 30;

/**
 * "My sister's takes 12 amps, ours 7.4", "hers is a 2 hp 56J, mine has 1.5, 48Y": figures of one's own motor told
 * without the words the other motor's were just told with are of the same kinds, in the same order.
 */
export function elliptic(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  standing: readonly Standing[],
): Standing[] {
  const counted = new Set(standing);
  const foreign = new Ordered(
    context.stated.all.filter((claim) => !counted.has(claim) && claim.value !== undefined),
  );
  const own = new Ordered(standing);
  return cuesOf(context, "home")
    .filter(({ phrase }) => isOwnPronoun(phrase))
    .flatMap((cue) => figuresOf(context, cue, owners, explained, foreign, own));
}

function figuresOf(
  context: Context,
  cue: Cue,
  owners: readonly Owner[],
  explained: readonly boolean[],
  foreign: Ordered<Standing>,
  own: Ordered<Standing>,
): Standing[] {
  const { tokens, sentences, sentenceAt } = context;
  const sentence = sentenceAt[cue.start] ?? 0;
  const end = Math.min(cue.end + reach, sentences[sentence]?.at(-1)?.end ?? tokens.length);
  const compared = comparedWith(context, sentence, cue, foreign);
  const taken = new Set(own.within(cue.start, end).map(({ rating }) => rating));
  const found: Standing[] = [];
  for (let at = cue.end; at < end && owners[at] === "label"; at++) {
    const token = tokens[at];
    if (token?.kind !== "number" || explained[at]) continue;
    // "la mía de 1.5 hp 230": it stands beside a figure already read.
    if (!explained[at - 1] && !follows(tokens, cue.end, at)) continue;
    const volts = suits("volts", token.value) === 2 ? [{ rating: "volts" as const }] : [];
    const read = [...compared, ...volts]
      .filter(({ rating }) => !taken.has(rating))
      .flatMap(({ rating }) =>
        parseValue(rating, tokens, at)
          .filter((parsed) => !parsed.half && parsed.fit >= 0.8 && standsAlone(tokens, parsed.end))
          .map((parsed) => ({ rating, ...parsed })),
      )
      .sort((a, b) => b.fit - a.fit)[0];
    if (!read) continue;
    const { rating, value, end: to } = read;
    taken.add(rating);
    found.push({ rating, value, start: at, end: to, from: at, to, score: 1 });
    at = to - 1;
  }
  return found;
}

/** The other motor's figures told last, else those told next in the same sentence; each kind once. */
function comparedWith(
  { sentences }: Context,
  sentence: number,
  cue: Cue,
  foreign: Ordered<Standing>,
): readonly { rating: RatingName }[] {
  const own = sentences[sentence] ?? [];
  const before = sentences[sentence - 1] ?? [];
  const from = (clauses: typeof own) => clauses[0]?.start ?? cue.start;
  const sets = [
    foreign.within(from(own), cue.start),
    foreign.within(from(before), from(own)),
    foreign.within(cue.end, own.at(-1)?.end ?? cue.end),
  ];
  const nearest = sets.find((set) => set.length > 0) ?? [];
  return [...new Set(nearest.map(({ rating }) => kin[rating] ?? rating))].map((rating) => ({ rating }));
}

const small = [
  ...[
    "is",
    "are",
    "was",
    "has",
    "says",
    "said",
    "reads",
    "shows",
    "takes",
    "draws",
    "runs",
    "does",
    "only",
    "just",
  ],
  ...["a", "an", "the", "at", "on", "and", "s", "more", "like", "being", "rated", "to"],
  ...[
    "es",
    "dice",
    "tiene",
    "trae",
    "marca",
    "usa",
    "lleva",
    "solo",
    "nomas",
    "apenas",
    "un",
    "una",
    "de",
    "y",
    "a",
  ],
];

/** Between "ours" and its figure stand small words, or it goes on after a comma or an "and". */
function follows(tokens: readonly Token[], from: number, at: number): boolean {
  if (isMark(tokens[at - 1], ",") || isWord(tokens[at - 1], "and", "y")) return true;
  for (let before = at - 1; before >= from; before--)
    if (!isWord(tokens[before], ...small) && !isMark(tokens[before], ":")) return false;
  return true;
}

const afterwards = [
  ...[
    "and",
    "y",
    "but",
    "pero",
    "so",
    "with",
    "con",
    "by",
    "per",
    "on",
    "en",
    "segun",
    "though",
    "at",
    "a",
    "now",
  ],
  ...["only", "according", "while", "not", "instead", "o", "or"],
];

function standsAlone(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at];
  if (next === undefined || next.kind === "break") return true;
  if (next.kind === "mark") return !isMark(next, "/", "%", "$", "'", '"', "°", "-") || !next.glued;
  return isWord(next, ...afterwards);
}
