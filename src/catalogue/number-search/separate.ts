import { looksAlike } from "./look-alikes.ts";
import { plainText } from "./plain.ts";
import type { Candidate } from "./result.ts";

/** Where a character stands, counted over letters and digits only: 1 is the first, or the last, of the number. */
export interface Place {
  readonly from: "start" | "end";
  readonly position: number;
}

/** A question that tells candidates apart: which character stands there; "" means the number has none there. */
export interface Separation {
  readonly at: Place;
  readonly options: readonly { readonly character: string; readonly numbers: readonly string[] }[];
}

interface Rated {
  readonly separation: Separation;
  /** What speaks against asking it, weightiest first. */
  readonly against: readonly number[];
}

/**
 * The question that separates the candidates best: that leaves the fewest motors whatever the answer, does not
 * turn on characters that look alike, and stands nearest to an end of the number ("does it end in 4 or A?").
 */
export function separate(candidates: readonly Candidate[]): Separation {
  const texts = candidates.map(({ number }) => Array.from(plainText(number)));
  const longest = Math.max(...texts.map(({ length }) => length));
  let best: Rated | undefined;
  for (const from of ["end", "start"] as const) {
    for (let position = 1; position <= longest; position++) {
      const rated = rate(candidates, texts, { from, position });
      if (!best || isBetter(rated, best)) best = rated;
    }
  }
  return best?.separation ?? { at: { from: "end", position: 1 }, options: [] };
}

/** The candidates whose number has this character at the place that was asked about. */
export function narrow(candidates: readonly Candidate[], at: Place, character: string): readonly Candidate[] {
  return candidates.filter(
    ({ number }) => characterAt(Array.from(plainText(number)), at) === plainText(character),
  );
}

function characterAt(text: readonly string[], { from, position }: Place): string {
  return text.at(from === "start" ? position - 1 : -position) ?? "";
}

function rate(candidates: readonly Candidate[], texts: readonly string[][], at: Place): Rated {
  const groups = new Map<string, Candidate[]>();
  for (const [index, candidate] of candidates.entries()) {
    const character = characterAt(texts[index] ?? [], at);
    groups.set(character, [...(groups.get(character) ?? []), candidate]);
  }
  const characters = [...groups.keys()];
  const options = Array.from(groups, ([character, members]) => ({
    character,
    numbers: members.map(({ number }) => number),
  }));
  const motorsLeft = Math.max(
    ...Array.from(groups.values(), (members) => new Set(members.map(({ skus }) => skus.join("\n"))).size),
  );
  const hardToTell = characters.some((a, n) => characters.slice(n + 1).some((b) => looksAlike(a, b)));
  const against = [motorsLeft, Number(hardToTell), at.position];
  return { separation: { at, options }, against };
}

function isBetter(a: Rated, b: Rated): boolean {
  for (const [index, mine] of a.against.entries()) {
    const other = b.against[index] ?? 0;
    if (mine !== other) return mine < other;
  }
  return false;
}
