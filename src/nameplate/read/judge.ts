import type { Candidate } from "./candidate.ts";
import type { Name } from "./naming.ts";
import { goTogether, suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** What it costs to leave a token unexplained. */
function silence(token: Token, names: readonly Name[]): number {
  if (token.kind === "number") return 1.2;
  if (token.kind === "partial" || token.kind === "code") return 0.3;
  return names.some((name) => !name.weak) ? 0.3 : 0;
}

const cutCost = 3;

/** Joints of one figure as they are spoken: "two oh eight to two thirty". */
const said = ["to", "slash", "thru", "through", "diagonal"];

/** True when this place lies inside one written figure: 115/230, 1 1/2. */
export function insideFigure(tokens: readonly Token[], at: number): boolean {
  const joint = tokens[at]?.kind === "mark" || isWord(tokens[at], ...said) ? at : at - 1;
  const mark = tokens[joint];
  const first = tokens[joint - 1];
  const second = tokens[tokens[joint + 1]?.kind === "break" ? joint + 2 : joint + 1];
  if (isWord(mark, ...said) && first?.kind === "number" && second?.kind === "number")
    return goTogether("volts", first.value, second.value);
  if (mark?.kind === "mark" && first?.kind === "number" && second?.kind === "number") {
    // "A 5,2 / 2.850 rpm": a slash set apart, and a unit of its own behind it.
    const apart = isMark(mark, "/") && !mark.glued && !second.glued;
    if (apart && isWord(tokens[joint + 2], "rpm", "rpms", "hz", "hp", "kw", "ph", "uf", "mfd")) return false;
    const tight = isMark(mark, "/") || (isMark(mark, "-") && mark.glued && second.glued);
    return tight && related(first.value, second.value);
  }
  const [before, here, slash, under] = [tokens[at - 1], tokens[at], tokens[at + 1], tokens[at + 2]];
  if (before?.kind === "number" && here?.kind === "number" && here.form === "fraction" && before.value < 10)
    return Number.isInteger(before.value) && here.value < 1;
  if (before?.kind !== "number" || here?.kind !== "number" || under?.kind !== "number") return false;
  const mixed = Number.isInteger(before.value) && before.value < 10 && Number.isInteger(here.value);
  return mixed && isMark(slash, "/") && here.value < under.value && under.value <= 16;
}

/** Two figures that may be the two values of one rating, or a fraction. */
function related(first: number, second: number): boolean {
  if (first <= 16 && second <= 16) return true;
  return (["volts", "amps", "rpm", "hz"] as const).some(
    (rating) =>
      goTogether(rating, first, second) && suits(rating, first) > 0.5 && suits(rating, second) > 0.5,
  );
}

/**
 * Chooses the candidates that together explain the text best: no two overlap, and the sum of their scores
 * less the cost of everything left unexplained is greatest. One pass from left to right.
 */
export function judge(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  candidates: readonly Candidate[],
): Candidate[] {
  const ending: Candidate[][] = Array.from({ length: tokens.length + 1 }, () => []);
  for (const candidate of candidates) {
    const cuts = Number(insideFigure(tokens, candidate.start)) + Number(insideFigure(tokens, candidate.end));
    const score = candidate.score - cutCost * cuts;
    if (score > 0) ending[candidate.end]?.push(cuts > 0 ? { ...candidate, score } : candidate);
  }
  const best: { score: number; candidate: Candidate | undefined }[] = [{ score: 0, candidate: undefined }];
  for (let at = 1; at <= tokens.length; at++) {
    const token = tokens[at - 1];
    const skipped = (best[at - 1]?.score ?? 0) - (token ? silence(token, names[at - 1] ?? []) : 0);
    let choice: { score: number; candidate: Candidate | undefined } = {
      score: skipped,
      candidate: undefined,
    };
    for (const candidate of ending[at] ?? []) {
      const score = (best[candidate.start]?.score ?? 0) + candidate.score;
      if (score > choice.score) choice = { score, candidate };
    }
    best.push(choice);
  }
  const chosen: Candidate[] = [];
  for (let at = tokens.length; at > 0; ) {
    const candidate = best[at]?.candidate;
    if (candidate) chosen.push(candidate);
    at = candidate ? candidate.start : at - 1;
  }
  return chosen.reverse();
}
