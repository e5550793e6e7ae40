import type { RatingName } from "../../nameplate/vocabulary.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Question } from "../types.ts";
import { partCodes } from "./codes.ts";
import type { Part } from "./ladder.ts";
import { type Possibility, withValues } from "./possibilities.ts";

/** A part that is asked about, and what may come out. */
export interface AskedPart {
  readonly part: Part;
  readonly ratings: readonly RatingName[];
  readonly possibilities: readonly Possibility[];
}

/** The same with what each answer says about the motors that are left. */
export interface OpenPart extends AskedPart {
  /**
   * State of the part for each possibility and each set of its ratings told (bit i: the i-th rating). Answers
   * that say the same about every motor lead to the same state.
   */
  readonly states: readonly (readonly number[])[];
  /** Kind of motor -> column; kinds which no state tells apart share one. */
  readonly columnOf: readonly number[];
  /** For each state, its outcome bits by column. */
  readonly codes: readonly Uint8Array[];
}

/** Works out the states of a part for the kinds of motor that are `present` (kind -> 1). */
export function openPart(
  index: StockIndex,
  question: Question,
  { part, ratings, possibilities }: AskedPart,
  present: Uint8Array,
): OpenPart {
  const stateByAnswer = new Map<string, number>();
  const stateByCodes = new Map<string, number>();
  const codes: Uint8Array[] = [];
  const stateFor = (told: Possibility["values"]): number => {
    const answer = JSON.stringify(told);
    const known = stateByAnswer.get(answer);
    if (known !== undefined) return known;
    const ofPresent = partCodes(index, part, withValues(question, told)).filter((_, kind) => present[kind]);
    const key = ofPresent.join("");
    const state = stateByCodes.get(key) ?? codes.push(ofPresent) - 1;
    stateByCodes.set(key, state);
    stateByAnswer.set(answer, state);
    return state;
  };
  const states = possibilities.map(({ values }) =>
    Array.from({ length: 1 << ratings.length }, (_, told) =>
      stateFor(
        Object.fromEntries(ratings.flatMap((name, at) => (told & (1 << at) ? [[name, values[name]]] : []))),
      ),
    ),
  );

  // Columns: kinds among the present ones that get the same bits in every state.
  const columns = new Map<string, number>();
  const firstOf: number[] = [];
  const columnOf: number[] = [];
  let place = 0;
  for (const [kind, here] of present.entries()) {
    if (!here) continue;
    const at = place++;
    const key = codes.map((bits) => bits[at]).join("");
    const column = columns.get(key) ?? firstOf.push(at) - 1;
    columns.set(key, column);
    columnOf[kind] = column;
  }
  const byColumn = codes.map((bits) => Uint8Array.from(firstOf, (at) => bits[at] ?? 0));
  return { part, ratings, possibilities, states, columnOf, codes: byColumn };
}
