import type { OpenPart } from "./open-part.ts";

/** One way things may be: a possibility for each open part. */
export interface World {
  /** For each part, the number of its possibility. */
  readonly picks: readonly number[];
  readonly likelihood: number;
}

/** Above this the worlds are sampled instead of listed. */
const listedAtMost = 192;
const sampled = 128;

/**
 * The ways things may be, the parts taken as independent of each other. Possibilities of a part which no
 * question tells apart are one. Too many combinations are sampled evenly, the same ones each time.
 */
export function worldsOf(parts: readonly OpenPart[]): readonly World[] {
  const choices = parts.map(distinct);
  const combinations = choices.reduce((product, options) => product * options.length, 1);
  if (combinations <= listedAtMost) {
    return choices.reduce<readonly World[]>(
      (worlds, options) =>
        worlds.flatMap(({ picks, likelihood }) =>
          options.map((option) => ({
            picks: [...picks, option.pick],
            likelihood: likelihood * option.likelihood,
          })),
        ),
      [{ picks: [], likelihood: 1 }],
    );
  }
  return Array.from({ length: sampled }, (_, at) => ({
    picks: choices.map((options, part) => pickAt(options, halton(at + 1, bases[part] ?? 2))),
    likelihood: 1 / sampled,
  }));
}

interface Choice {
  readonly pick: number;
  readonly likelihood: number;
}

function distinct({ possibilities, states }: OpenPart): readonly Choice[] {
  const choices = new Map<string, Choice>();
  for (const [pick, { likelihood }] of possibilities.entries()) {
    const key = (states[pick] ?? []).join();
    const same = choices.get(key);
    choices.set(key, { pick: same?.pick ?? pick, likelihood: likelihood + (same?.likelihood ?? 0) });
  }
  return [...choices.values()];
}

const bases = [2, 3, 5, 7] as const;

/** Halton's sequence: points that fill [0, 1) evenly (Halton, Numerische Mathematik 2, 1960). */
function halton(at: number, base: number): number {
  let result = 0;
  for (let rest = at, fraction = 1 / base; rest > 0; rest = Math.floor(rest / base), fraction /= base) {
    result += fraction * (rest % base);
  }
  return result;
}

function pickAt(options: readonly Choice[], share: number): number {
  let sum = 0;
  for (const { pick, likelihood } of options) {
    sum += likelihood;
    if (share < sum) return pick;
  }
  return options.at(-1)?.pick ?? 0;
}
