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
  /** Equal for numbers that lead to the same motors. */
  readonly motors: number;
}

/**
 * The question that separates the candidates best: that leaves the fewest motors whatever the answer, does not
 * turn on characters that look alike, and stands nearest to an end of the number ("does it end in 4 or A?").
 */
export function separate(candidates: readonly Candidate[]): Separation {
  const motors = candidates.map(({ skus }) => skus.join("\n"));
  const named = candidates.map(({ number }, n) => ({
    number,
    text: Array.from(plainText(number)),
    motors: motors.indexOf(motors[n] ?? ""),
  }));
  const at = bestPlace(named);
  const options = Array.from(byCharacter(named, at), ([character, members]) => ({
    character,
    numbers: members.map(({ number }) => number),
  }));
  return { at, options };
}

/** Nothing speaks against asking there: one motor left whatever the answer, and no characters that look alike. */
const NOTHING = 2;

function bestPlace(named: readonly Named[]): Place {
  const longest = Math.max(...named.map(({ text }) => text.length));
  let best: Place = { from: "end", position: 1 };
  let least = Number.POSITIVE_INFINITY;
  for (let position = 1; position <= longest; position++) {
    for (const from of ["end", "start"] as const) {
      const at = { from, position };
      const against = whatSpeaksAgainst(named, at);
      if (against >= least) continue;
      if (against === NOTHING) return at;
      least = against;
      best = at;
    }
  }
  return best;
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

/**
 * What speaks against asking for the character at a place: the motors left by the worst answer, and a little more where
 * two of the characters look alike. Compares the few candidates with each other, so that nothing is built for a place.
 */
function whatSpeaksAgainst(named: readonly Named[], at: Place): number {
  const characters = named.map(({ text }) => characterAt(text, at));
  let mostLeft = 0;
  let differs = false;
  let hardToTell = false;
  for (const [n, character] of characters.entries()) {
    let left = 0;
    for (const [other, otherCharacter] of characters.entries()) {
      if (otherCharacter !== character) {
        differs = true;
        hardToTell ||= other > n && looksAlike(character, otherCharacter);
      } else if (isFirstOfMotor(named, characters, other)) left++;
    }
    mostLeft = Math.max(mostLeft, left);
  }
  return differs ? mostLeft * 2 + Number(hardToTell) : Number.POSITIVE_INFINITY;
}

/** Whether no earlier candidate with the same character leads to the same motors. */
function isFirstOfMotor(named: readonly Named[], characters: readonly string[], at: number): boolean {
  for (let before = 0; before < at; before++) {
    if (characters[before] === characters[at] && named[before]?.motors === named[at]?.motors) return false;
  }
  return true;
}
