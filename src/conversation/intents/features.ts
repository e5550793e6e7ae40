import { conceptsOf } from "./concepts.ts";

/** The numbered features of a message, each with its weight; the squares of the weights add up to 1. */
export interface Features {
  readonly columns: Int32Array;
  readonly weights: Float32Array;
}

/** Pairs of neighbours say more together than each, but are met less often. */
const PAIR_WEIGHT = 0.8;
const CONCEPT_PAIR_WEIGHT = 0.7;
/** Pieces of words are there for endings and slips of the pen. */
const PIECE_WEIGHT = 0.3;
const PIECE_LETTERS = 3;
const LENGTH_WEIGHT = 0.7;
/** Of a long message the start and the end are looked at, where requests stand. */
const WORDS_AT_EITHER_END = 50;
/** Names a space holds at most, so that two of them make one small whole number, which maps find fastest. */
const NAMES = 2 ** 15;

const lengths = [1, 2, 4, 8, 14];

/** One word by number: itself, the concepts it stands for, its pieces; unknown ones are left out. */
interface Word {
  readonly itself: number | undefined;
  readonly concepts: readonly number[];
  readonly pieces: readonly number[];
}

function wordsOf(plain: string): readonly string[] {
  const words =
    plain.replace(/\d+(?:[./,-]\d+)*/g, "0").match(/\p{L}+|0|\?|\$|\p{Extended_Pictographic}/gu) ?? [];
  return words.length <= 2 * WORDS_AT_EITHER_END
    ? words
    : [...words.slice(0, WORDS_AT_EITHER_END), ...words.slice(-WORDS_AT_EITHER_END)];
}

function piecesOf(word: string): readonly string[] {
  const framed = `^${word}$`;
  const count = word.length > 3 ? framed.length - PIECE_LETTERS + 1 : 0;
  return Array.from({ length: count }, (_, at) => `~${framed.slice(at, at + PIECE_LETTERS)}`);
}

/**
 * Words, pairs of neighbours, pieces of words and length of normalised messages, with words also counted as the
 * concept they stand for, alone and in pairs. Every figure counts as the same word `0`.
 */
export class FeatureSpace {
  private readonly names = new Map<string, number>();
  private readonly words = new Map<string, Word>();
  private readonly columns = new Map<number, number>();
  private growing = true;

  /** How many features there are. */
  get size(): number {
    return this.columns.size;
  }

  /** From now on what was never met is left out. */
  freeze(): void {
    this.growing = false;
  }

  /** The features of one message. */
  of(plain: string): Features {
    const weights = new Map<number, number>();
    const add = (first: number | undefined, second: number | undefined, weight: number): void => {
      if (first === undefined || second === undefined) return;
      const column = this.column(first * NAMES + second);
      if (column !== undefined && !weights.has(column)) weights.set(column, weight);
    };
    const alone = this.name("");
    const said = wordsOf(plain);
    let before: Word = { itself: this.name("^"), concepts: [], pieces: [] };
    for (const text of said) {
      const word = this.word(text);
      add(alone, word.itself, 1);
      add(before.itself, word.itself, PAIR_WEIGHT);
      for (const concept of word.concepts) {
        add(alone, concept, 1);
        add(before.itself, concept, CONCEPT_PAIR_WEIGHT);
        for (const earlier of before.concepts) add(earlier, concept, CONCEPT_PAIR_WEIGHT);
      }
      for (const earlier of before.concepts) add(earlier, word.itself, CONCEPT_PAIR_WEIGHT);
      for (const piece of word.pieces) add(alone, piece, PIECE_WEIGHT);
      before = word;
    }
    add(before.itself, this.name("$"), PAIR_WEIGHT);
    const length = lengths.find((most) => said.length <= most) ?? "many";
    add(alone, this.name(`of ${length} words`), LENGTH_WEIGHT);

    let squares = 0;
    for (const weight of weights.values()) squares += weight * weight;
    const size = Math.sqrt(squares) || 1;
    return {
      columns: Int32Array.from(weights.keys()),
      weights: Float32Array.from(weights.values(), (weight) => weight / size),
    };
  }

  private word(text: string): Word {
    const known = this.words.get(text);
    if (known) return known;
    const numbers = (names: readonly string[]): readonly number[] =>
      names.map((name) => this.name(name)).filter((number) => number !== undefined);
    const word: Word = {
      itself: this.name(text),
      concepts: numbers(conceptsOf(text).map((concept) => `#${concept}`)),
      pieces: numbers(piecesOf(text)),
    };
    if (this.growing) this.words.set(text, word);
    return word;
  }

  private name(text: string): number | undefined {
    const known = this.names.get(text);
    if (known !== undefined || !this.growing || this.names.size === NAMES) return known;
    this.names.set(text, this.names.size);
    return this.names.size - 1;
  }

  private column(pair: number): number | undefined {
    const known = this.columns.get(pair);
    if (known !== undefined || !this.growing) return known;
    this.columns.set(pair, this.columns.size);
    return this.columns.size - 1;
  }
}
