import data from "../../../../intents/owners/weights.json" with { type: "json" };
import type { Standing } from "../candidate.ts";
import { type Context, cuesIn } from "../context.ts";
import { statesInAsking } from "../statedInAsking.ts";
import { isMark, isWord } from "../token.ts";
import { signsOf } from "./signs.ts";

/** What each sign says for (positive) or against (negative) a figure being the label's, as log odds. */
export interface Weights {
  readonly bias: number;
  /** The sum is divided by the number of known signs to this power, so that long texts do not shout. */
  readonly damping: number;
  readonly weights: ReadonlyMap<string, number>;
}

/** Reads lines of `sign<TAB>weight`. */
export function readWeights(file: {
  readonly bias: number;
  readonly damping: number;
  readonly weights: readonly string[];
}): Weights {
  const rows = file.weights.map((line) => {
    const tab = line.lastIndexOf("\t");
    return [line.slice(0, tab), Number(line.slice(tab + 1))] as const;
  });
  return { bias: file.bias, damping: file.damping, weights: new Map(rows) };
}

const learned = readWeights(data);

/** The sum of what the signs say, as log odds: 0 is even. */
export function oddsOf({ bias, damping, weights }: Weights, signs: Iterable<string>): number {
  let sum = 0;
  let known = 0;
  for (const sign of signs) {
    const weight = weights.get(sign);
    if (weight === undefined) continue;
    sum += weight;
    known += 1;
  }
  return sum * (known + 1) ** -damping + bias;
}

/** Below this a figure that the cues leave with the label is somebody else's; chosen on messages not learned from. */
const NOT_THE_LABELS = -0.5;
/** Above this a figure that the cues give to something else is the label's all the same. */
const THE_LABELS = 2.2;
/** So many tokens may part figures told in one breath: "1 hp, 56J". */
const BREATH = 2;
/** So many figures on either side are asked. */
const NEIGHBOURS = 5;
/** So many tokens back a correction reaches. */
const CORRECTED = 6;
/** So many tokens ahead somebody begins to correct himself: "1.5... wait". */
const AFTERTHOUGHT = 5;
/** Above this a figure in a question is the label's all the same. */
const THOUGH_ASKED = 4;

/**
 * Two opinions on whose a figure is: that of the cues (`byCues`: it is the label's), which know the trade, and that of
 * the words around it, learned from labelled messages (`intents/owners`), which know wordings nobody listed. The words
 * overrule the cues when they are sure, except where the figure itself is claimed or corrected, and but for a capacitor:
 * it hangs on the motor, and a bought or changed one is the motor's as well.
 */
export function isLabels(context: Context, claim: Standing, byCues: boolean, asked: boolean): boolean {
  if (byCues && isSettled(context, claim)) return true;
  const all = inOneBreath(context, claim).map((one) => oddsOf(learned, signsOf(context, one)));
  const odds = all.reduce((sum, each) => sum + each, 0) / all.length;
  return odds > (byCues ? NOT_THE_LABELS : asked ? THOUGH_ASKED : THE_LABELS);
}

/** The words around a capacitor's figure, a claimed or corrected one and one stated in asking need not be weighed. */
function isSettled(context: Context, claim: Standing): boolean {
  if (claim.rating === "capacitorUf" || isClaimed(context, claim) || isCorrected(context, claim)) return true;
  if (isOfBroken(context, claim) || isSetAgainst(context, claim)) return true;
  const clause = context.clauses[context.clauseAt[claim.start] ?? 0];
  return clause !== undefined && statesInAsking(context, clause);
}

/** "es de 2 caballos pero el vecino tiene uno de 3": what somebody else's is set against is the writer's own. */
function isSetAgainst(context: Context, { start }: Standing): boolean {
  const { clauses, clauseAt, tokens, stated } = context;
  const index = clauseAt[start] ?? 0;
  const [own, next] = [clauses[index], clauses[index + 1]];
  if (!own || !next || own.sentence !== next.sentence || !isWord(tokens[next.start], "but", "pero"))
    return false;
  const others = cuesIn(context, own.start, own.end, "person", "thing", "earlier", "wish", "measured");
  const theirs = cuesIn(context, next.start, next.end, "person").length > 0;
  const figures = tokens.slice(next.start, next.end).some(({ kind }) => kind === "number");
  return others.length === 0 && theirs && figures && stated.within(own.start, own.end).length > 0;
}

/** Of two motors told apart this is told of the broken one. */
function isOfBroken({ toldApart }: Context, { start }: Standing): boolean {
  return (
    toldApart.some(({ owner }) => owner === "other") &&
    toldApart.some((one) => one.owner === "label" && one.start <= start && start < one.end)
  );
}

/** "my 20 amp breaker", "amps on mine: 9.6" */
function isClaimed(context: Context, { from, start }: Standing): boolean {
  const { tokens } = context;
  if (isWord(tokens[from - 1], "my", "our", "mi", "nuestra", "nuestro")) return true;
  let at = start;
  while (at > 0 && (isMark(tokens[at - 1], ":") || isWord(tokens[at - 1], "is", "es", "a"))) at -= 1;
  return isWord(tokens[at - 1], "mine", "ours", "mio", "mia");
}

/** "15 amp no 20 amp", "not X, it's Y": what is being put right was told of the label before. */
function isCorrected(context: Context, { from, to }: Standing): boolean {
  return cuesIn(context, from - CORRECTED, to + AFTERTHOUGHT, "correction", "negator").length > 0;
}

/** Figures set beside each other have one owner. */
function inOneBreath({ stated, sentenceAt }: Context, claim: Standing): readonly Standing[] {
  const joins = (one: Standing, next: Standing) =>
    sentenceAt[one.start] === sentenceAt[next.start] && next.from - one.to <= BREATH;
  const breath = [claim];
  let first = claim;
  for (const one of stated.before(claim.start, NEIGHBOURS)) {
    if (!joins(one, first)) break;
    breath.push(one);
    first = one;
  }
  let last = claim;
  for (const one of stated.within(claim.start + 1, claim.to + NEIGHBOURS * 8).slice(0, NEIGHBOURS)) {
    if (!joins(last, one)) break;
    breath.push(one);
    last = one;
  }
  return breath;
}
