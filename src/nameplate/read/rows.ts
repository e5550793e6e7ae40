import type { RatingName } from "../vocabulary.ts";
import type { Candidate, Claim } from "./candidate.ts";
import { cellsOf, cellValue, headOf, linesOf } from "./grid.ts";
import type { Name } from "./naming.ts";
import type { Token } from "./token.ts";

/** Ratings of which a label prints one figure for each voltage or speed. */
const inPairs: ReadonlySet<RatingName> = new Set(["volts", "amps", "serviceFactorAmps", "rpm"]);

interface Row {
  readonly index: number;
  readonly candidate: Candidate;
}

/**
 * Rows of a table without a separator: a name and a figure for each voltage or speed, set apart by wide gaps. One row
 * alone may be chance; two beside each other are a table.
 */
export function rows(tokens: readonly Token[], names: readonly (readonly Name[])[]): Candidate[] {
  const found = linesOf(tokens).flatMap((line, index): Row[] => {
    const [head, ...cells] = cellsOf(tokens, line, "wide");
    if (!head || cells.length !== 2) return [];
    const rating = headOf(tokens, names, head);
    if (rating === undefined || !inPairs.has(rating)) return [];
    const claims = cells.flatMap((cell) => cellValue(tokens, rating, cell) ?? []);
    const [first, second] = claims;
    if (!first || !second || !Array.isArray(first.value) || !Array.isArray(second.value)) return [];
    const value = [...first.value, ...second.value] as number[];
    const claim: Claim = {
      rating,
      value,
      start: first.start,
      end: second.end,
      score: first.score + second.score,
    };
    return [
      { index, candidate: { start: line.start, end: second.end, score: claim.score + 1, claims: [claim] } },
    ];
  });
  const beside = ({ index }: Row) => found.some((other) => Math.abs(other.index - index) === 1);
  return found.filter(beside).map(({ candidate }) => candidate);
}
