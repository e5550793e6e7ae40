import type { Candidate } from "./candidate.ts";
import type { Name } from "./naming.ts";
import type { Token } from "./token.ts";

/** What it costs to leave a token unexplained. */
function silence(token: Token, names: readonly Name[]): number {
  if (token.kind === "number") return 1.2;
  if (token.kind === "partial" || token.kind === "code") return 0.3;
  return names.some((name) => !name.weak) ? 0.3 : 0;
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
  for (const candidate of candidates) ending[candidate.end]?.push(candidate);
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
