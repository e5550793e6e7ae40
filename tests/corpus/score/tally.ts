/** Counts behind precision and recall of one field. */
export interface Tally {
  truePositives: number;
  falsePositives: number;
  falseNegatives: number;
}

/** Right ones out of all. */
export interface Share {
  right: number;
  all: number;
}

export const emptyTally = (): Tally => ({ truePositives: 0, falsePositives: 0, falseNegatives: 0 });

/** Right among all; 1 where there was nothing to get right. */
export const ratio = (right: number, all: number): number => (all === 0 ? 1 : right / all);

/** Share of the values given that are right. */
export const precision = (tally: Tally): number =>
  ratio(tally.truePositives, tally.truePositives + tally.falsePositives);

/** Share of the values stated that were found. */
export const recall = (tally: Tally): number =>
  ratio(tally.truePositives, tally.truePositives + tally.falseNegatives);

/** Harmonic mean of precision and recall. */
export const f1 = (tally: Tally): number =>
  ratio(2 * tally.truePositives, 2 * tally.truePositives + tally.falsePositives + tally.falseNegatives);

/** Adds tallies (the micro average is taken over the sum). */
export function sumTallies(tallies: Iterable<Tally>): Tally {
  const sum = emptyTally();
  for (const tally of tallies) {
    sum.truePositives += tally.truePositives;
    sum.falsePositives += tally.falsePositives;
    sum.falseNegatives += tally.falseNegatives;
  }
  return sum;
}

/** Counts one message under each of its tags. */
export function countTags(shares: Map<string, Share>, tags: readonly string[], right: boolean): void {
  for (const tag of new Set(tags)) {
    const share = shares.get(tag) ?? { right: 0, all: 0 };
    share.all += 1;
    if (right) share.right += 1;
    shares.set(tag, share);
  }
}
