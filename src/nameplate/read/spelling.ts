/**
 * Edits between two words (insert, delete, replace, swap neighbours), given up above `most`.
 * Damerau's optimal string alignment distance; from memory.
 */
export function editDistance(from: string, to: string, most: number): number {
  if (Math.abs(from.length - to.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      let cost = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    before = last;
    last = row;
  }
  return last[to.length] ?? most + 1;
}

const consonants = (word: string) => word.replace(/[aeiou]/g, "");

/**
 * How a word sounds to an English or Spanish ear, roughly: spellings that sound alike give the same text (`fase` and
 * `phase`, `servise` and `service`, `cavallos` and `caballos`, `fraim` and `frame`).
 */
export function sound(word: string): string {
  return word
    .replace(/ph/g, "f")
    .replace(/qu(?=[ei])|ck|q/g, "k")
    .replace(/sc(?=[eiy])|c(?=[eiy])|z/g, "s")
    .replace(/c/g, "k")
    .replace(/v/g, "b")
    .replace(/g(?=[ei])/g, "j")
    .replace(/a[iy](?=[^aeiouy]+$)/g, "a")
    .replace(/ea|ee|ie/g, "i")
    .replace(/y/g, "i")
    .replace(/h/g, "")
    .replace(/ll(?=[aeou])/g, "i")
    .replace(/(.)\1+/g, "$1")
    .replace(/(?<=.[^aeiou])e$/, "");
}

/** The word with each two neighbouring letters exchanged: `prm` for `rpm`, `hosre` for `horse`. */
export function* swapped(word: string): Iterable<string> {
  for (let at = 0; at + 1 < word.length; at++)
    if (word[at] !== word[at + 1]) yield word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2);
}

/** Exact slips of the ear and the fingers for a list of words: no guessing by distance. */
export class Slips {
  readonly #bySound = new Map<string, string | undefined>();
  readonly #bySwap = new Map<string, string | undefined>();
  readonly #bySwappedSound = new Map<string, string | undefined>();

  constructor(words: Iterable<string>) {
    for (const word of new Set(words)) {
      const heard = sound(word);
      // Two words that sound alike (phase, fase): the first stands for both.
      const first = !this.#bySound.has(heard);
      if (first) this.#bySound.set(heard, word);
      for (const slip of swapped(word)) this.#bySwap.set(slip, this.#bySwap.has(slip) ? undefined : word);
      if (first && word.length >= 6)
        for (const slip of swapped(heard))
          this.#bySwappedSound.set(slip, this.#bySwappedSound.has(slip) ? undefined : word);
    }
  }

  of(word: string): string | undefined {
    const heard = sound(word);
    const exchanged = () => (word.length >= 6 ? this.#bySwappedSound.get(heard) : undefined);
    return this.#bySwap.get(word) ?? this.#bySound.get(heard) ?? exchanged();
  }
}

/** A list of words in which the one meant by a misspelled word is looked up. */
export class Spelling {
  readonly #byFirst = new Map<string, string[]>();
  readonly #byBones = new Map<string, string>();
  readonly #alike: (word: string, other: string) => boolean;

  /** Of words that mean the `alike` either will do. */
  constructor(words: Iterable<string>, alike = (_word: string, _other: string) => false) {
    this.#alike = alike;
    for (const word of words) {
      const bones = consonants(word);
      if (!this.#byBones.has(bones)) this.#byBones.set(bones, word);
      if (word.length < 4) continue;
      const first = word[0] ?? "";
      const others = this.#byFirst.get(first);
      if (others) others.push(word);
      else this.#byFirst.set(first, [word]);
    }
  }

  /** The one word this may be a slip for; undefined when none or several are as near. */
  likeliest(word: string, most = word.length >= 7 ? 2 : word.length >= 4 ? 1 : 0): string | undefined {
    const whole = this.#abbreviated(word);
    if (whole !== undefined) return whole;
    let best: string | undefined;
    let least = most + 1;
    for (const candidate of this.#byFirst.get(word[0] ?? "") ?? []) {
      if (Math.abs(candidate.length - word.length) > most) continue;
      const distance = editDistance(word, candidate, most);
      if (distance < least) {
        least = distance;
        best = candidate;
      } else if (
        distance === least &&
        best !== undefined &&
        !candidate.startsWith(best) &&
        !best.startsWith(candidate) &&
        !this.#alike(best, candidate)
      )
        best = undefined;
    }
    return least <= most ? best : undefined;
  }

  /** A long word with only its vowels wrong, left out or moved: `therded`, `continuus`. */
  byConsonants(word: string, fewest: number): string | undefined {
    const bones = consonants(word);
    const whole = bones.length >= fewest ? this.#byBones.get(bones) : undefined;
    return whole !== undefined && whole[0] === word[0] ? whole : undefined;
  }

  /** The word written without its vowels: VLTS, HRSPWR, FCTR. */
  #abbreviated(word: string): string | undefined {
    const bones = consonants(word);
    const vowels = word.length - bones.length;
    if (bones.length < 3 || vowels > 1 || (vowels === 1 && bones.length < 4)) return undefined;
    const whole = this.#byBones.get(bones);
    return whole !== undefined && whole.length > word.length ? whole : undefined;
  }
}
