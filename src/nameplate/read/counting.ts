import type { RatingName } from "../vocabulary.ts";
import type { Claim, Standing } from "./candidate.ts";
import type { Context } from "./context.ts";
import type { Owner } from "./owner.ts";
import { isWord } from "./token.ts";
import { isLabels } from "./whose/vote.ts";

const measurable = new Set<RatingName>(["amps", "volts", "serviceFactorAmps", "rpm", "hz", "kw"]);
const ofPlace = new Set<RatingName>([
  "supplyVolts",
  "breakerAmps",
  "breakerPoles",
  "pumpModel",
  "pricePerKwh",
  "hoursPerDay",
]);
const ofOthers = new Set<RatingName>(["pumpModel", "pricePerKwh", "hoursPerDay"]);

/** Owners that only some cue or other tells: there the words around the figure are asked as well. */
const arguable = new Set<Owner>(["label", "other", "neighbour", "asked"]);

/** No label and no letter about one states more; what does is no speech that words could be weighed in. */
const FIGURES = 120;

/** Whether a claim is about the label or the place in question, by the cues and by the words around it. */
export function heard(context: Context, owners: readonly Owner[], claim: Standing): boolean {
  const owner = owners[claim.start] ?? "label";
  const byCues = counts(owners, claim);
  const open =
    arguable.has(owner) &&
    !(owner === "neighbour" && isSubject(context, claim)) &&
    claim.value !== undefined &&
    context.stated.all.length <= FIGURES;
  return open ? isLabels(context, claim, byCues, owner === "asked") : byCues;
}

/** Of two values one of which only the words around it give to the label, the cues' one counts. */
export function outspoken(owners: readonly Owner[], claim: Standing, standing: readonly Standing[]): boolean {
  if (owners[claim.start] !== "other") return false;
  return standing.some(
    (rival) =>
      rival.rating === claim.rating &&
      scalar.has(rival.rating) &&
      owners[rival.start] === "label" &&
      rival.value !== undefined &&
      rival.value !== claim.value,
  );
}

const scalar = new Set<RatingName>(["hp", "totalHp", "frame", "serviceFactor"]);

/** "hers runs on 115", "and the neighbor's is 1.5, 48Y": from its first word it is said of somebody else. */
function isSubject({ tokens, clauses, clauseAt, cues }: Context, { start }: Standing): boolean {
  const own = clauseAt[start] ?? 0;
  const sentence = clauses[own]?.sentence;
  for (let index = own; index > own - CLAUSES && clauses[index]?.sentence === sentence; index -= 1) {
    const { start: first = 0, end = 0 } = clauses[index] ?? {};
    let at = first;
    while (isWord(tokens[at], ...beforeSubject)) at += 1;
    const said = cues.within(at, Math.min(end, start));
    if (said.some((cue) => cue.kind === "person" && (cue.start === at || cue.phrase === "theirs")))
      return true;
    if (said.some(({ kind }) => kind === "home")) return false;
  }
  return false;
}

/** So many clauses back the subject of a sentence is looked for. */
const CLAUSES = 6;
const beforeSubject = [
  ...[
    "and",
    "but",
    "also",
    "while",
    "y",
    "pero",
    "my",
    "our",
    "the",
    "el",
    "la",
    "mi",
    "de",
    "bomba",
    "motor",
  ],
];

/** Whether a claim is about the label or the place in question, by the owner of its words. */
export function counts(owners: readonly Owner[], claim: Standing): boolean {
  const owner = owners[claim.start];
  if (owner === "label") return true;
  // The end of the shaft and the face are described by what they carry: "the impeller screws on".
  if (owner === "part")
    return claim.rating === "shaft" || claim.rating === "flange" || claim.rating === "pumpModel";
  if (ofPlace.has(claim.rating))
    return owner === "measured" || owner === "place" || (owner === "other" && ofOthers.has(claim.rating));
  return owner === "measured" && (!measurable.has(claim.rating) || isPrintedPair(claim));
}

/** "draws 16.6/8.3 amps": a meter shows one current, a label of two voltages two, one twice the other. */
function isPrintedPair({ value }: Claim): boolean {
  const [first, second, ...more] = Array.isArray(value) ? (value as number[]) : [];
  if (first === undefined || second === undefined || more.length > 0) return false;
  return Math.abs(first / second - 2) < 0.1;
}
