import type { StockIndex } from "../stock-index.ts";
import type { Question } from "../types.ts";
import { outcomeBits, partCodes } from "./codes.ts";
import type { Part } from "./ladder.ts";
import { type AskedPart, type OpenPart, openPart } from "./open-part.ts";
import { partKindsOf } from "./part-kinds.ts";
import type { Survivor } from "./survivors.ts";

/** What comes out for the stock when each open part is in one of its states. */
export interface Outlook {
  readonly parts: readonly OpenPart[];
  /** True when nothing more needs to be known: a drop-in exists, or no motor is undecided. */
  readonly isDecided: (states: readonly number[]) => boolean;
  /** Verdict, motors offered, and the work of those that fit with work, as text to compare. */
  readonly outcome: (states: readonly number[]) => string;
}

/** A set of motor classes, one bit each. */
type Bits = Uint32Array;

/** Which classes are ruled out, left open, or given work. */
interface Effect {
  readonly out: Bits;
  readonly unknown: Bits;
  readonly work: Bits;
  /** False when nothing can be a drop-in any more, as long as it stays so. */
  readonly leavesFaultless: boolean;
}

/**
 * Prepares the survivors so that the outcome of any answers is a few operations on bits. Survivors which no
 * possible answer tells apart count as one class.
 */
export function outlookOf(
  index: StockIndex,
  question: Question,
  survivors: readonly Survivor[],
  asked: readonly AskedPart[],
  closed: readonly Part[],
): Outlook {
  const parts = asked.map((open) =>
    openPart(index, question, open, presentKinds(index, survivors, open.part)),
  );
  const { base, members, words } = classesOf(index, question, survivors, parts, closed);
  const effects = parts.map(({ codes }, at) =>
    codes.map((byColumn) => effectOf(byColumn, members[at] ?? [], words)),
  );

  const effectsIn = (states: readonly number[]) => [
    base,
    ...states.flatMap((state, part) => effects[part]?.[state] ?? []),
  ];

  return {
    parts,
    isDecided: (states) => isDecided(effectsIn(states), words),
    outcome: (states) => outcomeOf(effectsIn(states), words),
  };
}

/** Runs for every combination of states, hence without leaving anything for the garbage collector. */
function isDecided(effects: readonly Effect[], words: number): boolean {
  const mayDropIn = effects.every(({ leavesFaultless }) => leavesFaultless);
  let undecided = false;
  for (let word = 0; word < words; word++) {
    let out = 0;
    let unknown = 0;
    let work = 0;
    for (const effect of effects) {
      out |= effect.out[word] ?? 0;
      unknown |= effect.unknown[word] ?? 0;
      work |= effect.work[word] ?? 0;
    }
    if (mayDropIn && (~out & ~unknown & ~work) !== 0) return true;
    if ((~out & unknown) !== 0) {
      undecided = true;
      if (!mayDropIn) return false;
    }
  }
  return !undecided;
}

function outcomeOf(effects: readonly Effect[], words: number): string {
  const together = (which: "out" | "unknown" | "work") =>
    Uint32Array.from({ length: words }, (_, word) =>
      effects.reduce((bits, effect) => bits | (effect[which][word] ?? 0), 0),
    );
  const [out, unknown, work] = [together("out"), together("unknown"), together("work")];
  const faultless = out.map((bits, word) => ~(bits | (unknown[word] ?? 0) | (work[word] ?? 0)));
  if (faultless.some((bits) => bits !== 0)) return `drop-in ${faultless}`;
  const alive = out.map((bits) => ~bits);
  const undecided = alive.some((bits, word) => (bits & (unknown[word] ?? 0)) !== 0);
  const settled = alive.map((bits, word) => bits & ~(unknown[word] ?? 0));
  const toDo = effects.map((effect) => effect.work.map((bits, word) => bits & (settled[word] ?? 0)));
  return `${undecided ? "undecided" : "decided"} ${alive} ${toDo.join(" ")}`;
}

function presentKinds(index: StockIndex, survivors: readonly Survivor[], part: Part): Uint8Array {
  const present = new Uint8Array(partKindsOf(index)[part].kinds.length);
  for (const survivor of survivors) present[survivor[part]] = 1;
  return present;
}

/** The survivors as classes: alike in every column of the open parts, and as well off in all the rest. */
function classesOf(
  index: StockIndex,
  question: Question,
  survivors: readonly Survivor[],
  parts: readonly OpenPart[],
  closed: readonly Part[],
) {
  const { "not-known": unknownBit, "needs-work": workBit } = outcomeBits;
  const closedCodes = closed.map((part) => ({ part, codes: partCodes(index, part, question) }));
  const numbers = new Map<number, number>();
  const unknown: number[] = [];
  const work: number[] = [];
  /** Part -> column -> the classes in it. */
  const inColumn = parts.map(({ codes }) =>
    Array.from({ length: codes[0]?.length ?? 0 }, (): number[] => []),
  );
  for (const survivor of survivors) {
    let code = survivor.needsWork ? workBit : 0;
    for (const { part, codes } of closedCodes) code |= codes[survivor[part]] ?? 0;
    let key = code;
    for (const { part, columnOf } of parts) key = key * 4096 + (columnOf[survivor[part]] ?? 0);
    if (numbers.has(key)) continue;
    const number = numbers.size;
    numbers.set(key, number);
    if (code & unknownBit) unknown.push(number);
    else if (code & workBit) work.push(number);
    for (const [at, { part, columnOf }] of parts.entries()) {
      inColumn[at]?.[columnOf[survivor[part]] ?? 0]?.push(number);
    }
  }

  const words = Math.max(1, Math.ceil(numbers.size / 32));
  const unused = Array.from({ length: words * 32 - numbers.size }, (_, at) => numbers.size + at);
  const base: Effect = {
    out: bitsOf(unused, words),
    unknown: bitsOf(unknown, words),
    work: bitsOf(work, words),
    leavesFaultless: unknown.length + work.length < numbers.size,
  };
  return {
    base,
    words,
    members: inColumn.map((columns) => columns.map((classes) => bitsOf(classes, words))),
  };
}

function bitsOf(members: readonly number[], words: number): Bits {
  const bits = new Uint32Array(words);
  for (const at of members) bits[at >>> 5] = (bits[at >>> 5] ?? 0) | (1 << (at & 31));
  return bits;
}

function effectOf(byColumn: Uint8Array, members: readonly Bits[], words: number): Effect {
  const effect: Effect = {
    out: new Uint32Array(words),
    unknown: new Uint32Array(words),
    work: new Uint32Array(words),
    leavesFaultless: byColumn.includes(outcomeBits.holds),
  };
  const into: Readonly<Record<number, Bits>> = {
    [outcomeBits["rules-out"]]: effect.out,
    [outcomeBits["not-known"]]: effect.unknown,
    [outcomeBits["needs-work"]]: effect.work,
  };
  for (const [column, code] of byColumn.entries()) {
    const bits = into[code];
    const classes = members[column];
    if (!bits || !classes) continue;
    for (let word = 0; word < words; word++) bits[word] = (bits[word] ?? 0) | (classes[word] ?? 0);
  }
  return effect;
}
