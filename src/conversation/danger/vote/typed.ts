import type { Token } from "../tokens.ts";
import { conceptsOf } from "./lexicon.ts";

/** A word as the vote sees it: what it stands for instead of how it is written. */
export interface Typed {
  readonly token: Token;
  /** `@smoke`, `@device`: concepts; a little word for itself; `#` a number; `~` any other word. */
  readonly symbols: readonly string[];
  /** A negation stands up to six words before it. */
  readonly denied: boolean;
}

/** Little words that tell moods, times and persons apart. */
const little = new Set(
  "i it is are was were has have had my our your the a an this that and but or so when while after before as then there do does did get gets got getting be been being to of for with like just only some any all if at which who what how why because cuz since until about more than too very really de la el y pero cuando con me se le lo mi es esta al ya que por un una los las del mas muy".split(
    " ",
  ),
);

const voltUnits = new Set("v volt volts vac vdc voltios voltio".split(" "));
/** A round figure in words is nobody's rating. */
const spelledTens = new Set("ten twenty thirty forty fifty sixty seventy eighty ninety".split(" "));
/** Supply and rated voltages: what a label says. Any other figure was measured. */
const supplies = new Set(
  "12 24 100 110 115 120 127 200 208 220 230 240 250 277 380 400 415 440 460 480 575".split(" "),
);

/** A figure in volts, of a supply or, more telling, of none. */
function voltsOf(tokens: readonly Token[], at: number): readonly string[] {
  const word = tokens[at]?.word ?? "";
  if (!(/^\d/.test(word) || spelledTens.has(word)) || !voltUnits.has(tokens[at + 1]?.word ?? "")) return [];
  return supplies.has(word) ? ["volts"] : ["volts", "oddVolts"];
}

function symbolsOf(word: string, concepts: ReadonlySet<string>): readonly string[] {
  if (concepts.size > 0) return [...concepts].map((concept) => `@${concept}`);
  if (little.has(word)) return [word];
  return [/^\d/.test(word) ? "#" : "~"];
}

/** Types every word; a negation reaches on to the end of the sentence or to "but". */
export function typeWords(tokens: readonly Token[]): readonly Typed[] {
  const concepts = conceptsOf(tokens.map(({ word }) => word));
  let reach = 0;
  return tokens.map((token, i) => {
    const own = new Set([...(concepts[i] ?? []), ...voltsOf(tokens, i)]);
    if (token.gap === "sentence" || token.word === "but" || token.word === "pero") reach = 0;
    const denied = reach > 0;
    reach = own.has("not") ? 6 : Math.max(0, reach - 1);
    return { token, symbols: symbolsOf(token.word, own), denied };
  });
}

/** Groups of neighbouring sentences or clauses: a new one starts where `starts` says so. */
export function split(
  typed: readonly Typed[],
  starts: (at: number, length: number) => boolean,
): readonly (readonly Typed[])[] {
  const parts: Typed[][] = [];
  typed.forEach((one, at) => {
    const part = parts.at(-1);
    if (part === undefined || part.length >= 40 || starts(at, part.length)) parts.push([one]);
    else part.push(one);
  });
  return parts;
}
