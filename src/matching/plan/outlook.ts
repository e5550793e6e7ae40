import type { RatingName } from "../../nameplate/vocabulary.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Question } from "../types.ts";
import { needsWork, notKnown, partCodes, rulesOut } from "./codes.ts";
import type { Part } from "./ladder.ts";
import { type Possibility, withValues } from "./possibilities.ts";
import type { Survivor } from "./survivors.ts";

/** One part of the old motor that is being asked about. */
export interface OpenPart {
  readonly part: Part;
  readonly ratings: readonly RatingName[];
  readonly possibilities: readonly Possibility[];
  /**
   * State of the part for each possibility and each set of its ratings told (bit i: the i-th rating). Answers
   * that say the same about every motor lead to the same state.
   */
  readonly states: readonly (readonly number[])[];
}

/** A set of survivors, one bit each. */
type Bits = Uint32Array;

/** Which survivors a state of one part rules out, leaves open, or gives work. */
interface Effect {
  readonly out: Bits;
  readonly unknown: Bits;
  readonly work: Bits;
}

/** What comes out for the stock when each open part is in one of its states. */
export interface Outlook {
  readonly parts: readonly OpenPart[];
  /** True when nothing more needs to be known: a drop-in exists, or no motor is undecided. */
  readonly isDecided: (states: readonly number[]) => boolean;
  /** Verdict, motors offered and the work they need, as text to compare. */
  readonly outcome: (states: readonly number[]) => string;
}

/**
 * Prepares the survivors so that the outcome of any answers is a few operations on bits. Survivors which no
 * possible answer tells apart count as one.
 */
export function outlookOf(
  index: StockIndex,
  question: Question,
  survivors: readonly Survivor[],
  open: readonly {
    readonly part: Part;
    readonly ratings: readonly RatingName[];
    readonly possibilities: readonly Possibility[];
  }[],
  closed: readonly Part[],
): Outlook {
  const views = open.map((asked) => viewOf(index, question, survivors, asked));
  const base = closed.map((part) => {
    const { kinds, placeOf } = kindsOf(survivors, part);
    const codes = partCodes(index, part, question, kinds);
    return placeOf.map((place) => codes[place] ?? 0);
  });

  // Survivors that look the same in every open part and are as well off in the others.
  const classes = new Map<string, { readonly columns: readonly number[]; readonly code: number }>();
  for (const [at, { needsWork: work }] of survivors.entries()) {
    let code = work ? needsWork : 0;
    for (const codes of base) code |= codes[at] ?? 0;
    code = code & notKnown ? notKnown : code;
    const columns = views.map(({ columnOf }) => columnOf[at] ?? 0);
    const key = `${columns.join(",")}:${code}`;
    if (!classes.has(key)) classes.set(key, { columns, code });
  }
  const all = [...classes.values()];
  const words = Math.max(1, Math.ceil(all.length / 32));
  const emptyBits = () => new Uint32Array(words);
  const baseUnknown = emptyBits();
  const baseWork = emptyBits();
  for (const [at, { code }] of all.entries()) {
    if (code & notKnown) setBit(baseUnknown, at);
    if (code & needsWork) setBit(baseWork, at);
  }
  const unused = new Uint32Array(words);
  for (let at = all.length; at < words * 32; at++) setBit(unused, at);

  const effects = views.map(({ vectors }, view) =>
    vectors.map((vector): Effect => {
      const effect = { out: emptyBits(), unknown: emptyBits(), work: emptyBits() };
      for (const [at, { columns }] of all.entries()) {
        const code = vector[columns[view] ?? 0] ?? 0;
        if (code === rulesOut) setBit(effect.out, at);
        else if (code === notKnown) setBit(effect.unknown, at);
        else if (code === needsWork) setBit(effect.work, at);
      }
      return effect;
    }),
  );

  /** The word of survivors still there, undecided and faultless, for one combination of states. */
  const look = (states: readonly number[], word: number) => {
    let out = unused[word] ?? 0;
    let unknown = baseUnknown[word] ?? 0;
    let work = baseWork[word] ?? 0;
    for (let view = 0; view < states.length; view++) {
      const effect = effects[view]?.[states[view] ?? 0];
      if (!effect) continue;
      out |= effect.out[word] ?? 0;
      unknown |= effect.unknown[word] ?? 0;
      work |= effect.work[word] ?? 0;
    }
    return { alive: ~out, undecided: ~out & unknown, dropIn: ~out & ~unknown & ~work };
  };

  return {
    parts: views.map(({ openPart }) => openPart),
    isDecided: (states) => {
      let undecided = false;
      for (let word = 0; word < words; word++) {
        const seen = look(states, word);
        if (seen.dropIn !== 0) return true;
        if (seen.undecided !== 0) undecided = true;
      }
      return !undecided;
    },
    outcome: (states) => {
      const seen = Array.from({ length: words }, (_, word) => look(states, word));
      if (seen.some(({ dropIn }) => dropIn !== 0)) return `drop-in ${seen.map(({ dropIn }) => dropIn)}`;
      const verdict = seen.some(({ undecided }) => undecided !== 0) ? "undecided" : "work";
      const work = states.map((state, view) =>
        seen.map(({ alive }, word) => (effects[view]?.[state]?.work[word] ?? 0) & alive),
      );
      return `${verdict} ${seen.map(({ alive }) => alive)} ${work.join(" ")}`;
    },
  };
}

function setBit(bits: Bits, at: number): void {
  bits[at >>> 5] = (bits[at >>> 5] ?? 0) | (1 << (at & 31));
}

/** The kinds of one part among the survivors, and which of them each survivor is. */
function kindsOf(survivors: readonly Survivor[], part: Part) {
  const places = new Map<number, number>();
  const kinds: (readonly number[])[] = [];
  const placeOf = survivors.map((survivor) => {
    const ofRules = survivor.kinds[part];
    const key = (ofRules[0] ?? 0) * 2 ** 24 + (ofRules[1] ?? 0);
    let place = places.get(key);
    if (place === undefined) {
      place = kinds.length;
      places.set(key, place);
      kinds.push(ofRules);
    }
    return place;
  });
  return { kinds, placeOf };
}

/** States of one part and what each says of the survivors; kinds that no state tells apart share a column. */
function viewOf(
  index: StockIndex,
  question: Question,
  survivors: readonly Survivor[],
  { part, ratings, possibilities }: Omit<OpenPart, "states">,
) {
  const { kinds, placeOf } = kindsOf(survivors, part);
  const stateOf = new Map<string, number>();
  const byKind: Uint8Array[] = [];
  const stateByAnswer = new Map<string, number>();
  const states = possibilities.map(({ values }) =>
    Array.from({ length: 1 << ratings.length }, (_, told) => {
      const toldValues = Object.fromEntries(
        ratings.flatMap((rating, at) => (told & (1 << at) ? [[rating, values[rating]]] : [])),
      );
      const answer = JSON.stringify(toldValues);
      let state = stateByAnswer.get(answer);
      if (state === undefined) {
        const codes = partCodes(index, part, withValues(question, toldValues), kinds);
        const key = codes.join("");
        state = stateOf.get(key);
        if (state === undefined) {
          state = byKind.length;
          stateOf.set(key, state);
          byKind.push(codes);
        }
        stateByAnswer.set(answer, state);
      }
      return state;
    }),
  );

  const columns = new Map<string, number>();
  const columnByKind = kinds.map((_, kind) => {
    const key = byKind.map((codes) => codes[kind]).join("");
    const known = columns.get(key) ?? columns.size;
    columns.set(key, known);
    return known;
  });
  const vectors = byKind.map((codes) => {
    const vector = new Uint8Array(columns.size);
    for (const [kind, column] of columnByKind.entries()) vector[column] = codes[kind] ?? 0;
    return vector;
  });
  const openPart: OpenPart = { part, ratings, possibilities, states };
  return { openPart, vectors, columnOf: placeOf.map((place) => columnByKind[place] ?? 0) };
}
