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

interface Named {
  readonly number: string;
  readonly text: readonly string[];
  /** The motors it leads to, as one word. */
  readonly motors: string;
}

/**
 * The question that separates the candidates best: that leaves the fewest motors whatever the answer, does not
 * turn on characters that look alike, and stands nearest to an end of the number ("does it end in 4 or A?").
 */
export function separate(candidates: readonly Candidate[]): Separation {
  const named = candidates.map(({ number, skus }) => ({
    number,
    text: Array.from(plainText(number)),
    motors: skus.join("\n"),
  }));
  const longest = Math.max(...named.map(({ text }) => text.length));
  let at: Place = { from: "end", position: 1 };
  let least: readonly number[] = [Number.POSITIVE_INFINITY];
  for (let position = 1; position <= longest; position++) {
    for (const from of ["end", "start"] as const) {
      const against = whatSpeaksAgainst(named, { from, position });
      if (!isLess(against, least)) continue;
      least = against;
      at = { from, position };
    }
  }
  const options = Array.from(byCharacter(named, at), ([character, members]) => ({
    character,
    numbers: members.map(({ number }) => number),
  }));
  return { at, options };
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

function byCharacter(named: readonly Named[], at: Place): Map<string, Named[]> {
  const groups = new Map<string, Named[]>();
  for (const one of named) {
    const character = characterAt(one.text, at);
    const group = groups.get(character);
    if (group) group.push(one);
    else groups.set(character, [one]);
  }
  return groups;
}

/** What speaks against asking for the character at a place, weightiest first. */
function whatSpeaksAgainst(named: readonly Named[], at: Place): readonly number[] {
  const groups = byCharacter(named, at);
  if (groups.size === 1) return [Number.POSITIVE_INFINITY];
  const motorsLeft = Array.from(groups.values(), (group) => new Set(group.map(({ motors }) => motors)).size);
  const characters = [...groups.keys()];
  const hardToTell = characters.some((a, n) => characters.slice(n + 1).some((b) => looksAlike(a, b)));
  return [Math.max(...motorsLeft), Number(hardToTell)];
}

/** Whether the first difference of two lists makes `a` the lesser. */
function isLess(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((one, index) => one !== (b[index] ?? Number.POSITIVE_INFINITY));
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? Number.POSITIVE_INFINITY);
}
