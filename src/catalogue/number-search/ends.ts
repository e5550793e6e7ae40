import { folded } from "./look-alikes.ts";
import type { NumberTable } from "./table.ts";

/** Codes that fit in one exact double at six bits each. */
const packed = 8;
/** Of so many keys one stands in the fence: small enough to stay in the processor's cache while it is searched. */
const paling = 64;

/** The numbers sorted by their folded codes, read from one end: those that begin (or end) alike stand together. */
export class SortedEnds {
  readonly #table: NumberTable;
  readonly #from: "start" | "end";
  readonly #order: Uint32Array;
  /** The first codes of each number in one double, in the same order: most of a look-up reads nothing else. */
  readonly #keys: Float64Array;
  readonly #fence: Float64Array;
  /** Open addressing: the first place of a key + 1 at its hash, or the next free slot. */
  readonly #slots: Uint32Array;

  constructor(table: NumberTable, from: "start" | "end") {
    this.#table = table;
    this.#from = from;
    const keys = new Float64Array(table.size);
    for (let id = 0; id < table.size; id++) {
      for (let n = 0; n < packed; n++) keys[id] = (keys[id] ?? 0) * 64 + this.#code(id, n);
    }
    this.#order = Uint32Array.from(keys, (_, id) => id).sort(
      (a, b) => (keys[a] ?? 0) - (keys[b] ?? 0) || this.#compareRest(a, b) || a - b,
    );
    this.#keys = Float64Array.from(this.#order, (id) => keys[id] ?? 0);
    this.#fence = this.#keys.filter((_, place) => place % paling === paling - 1);
    this.#slots = new Uint32Array(2 ** Math.ceil(Math.log2(table.size * 1.5 + 2)));
    for (let place = table.size - 1; place >= 0; place--) {
      if (place === 0 || this.#keys[place] !== this.#keys[place - 1])
        this.#slots[this.#slotOf(this.#keys[place] ?? 0)] = place + 1;
    }
  }

  /** First and one past the last place of the numbers that have these codes at this end, look-alikes folded. */
  range(codes: Uint8Array, start: number, end: number): { first: number; last: number } {
    const length = end - start;
    let key = 0;
    for (let n = 0; n < packed; n++) {
      const at = this.#from === "start" ? start + n : end - 1 - n;
      key = key * 64 + (n < length ? (folded[codes[at] ?? 0] ?? 0) : 0);
    }
    const first = length < packed ? this.#firstKey(key) : this.#firstOf(key);
    const after = key + 64 ** Math.max(0, packed - length);
    if (!((this.#keys[first] ?? after) < after)) return { first, last: first };
    // Most often it is the only one.
    const last = (this.#keys[first + 1] ?? after) < after ? this.#firstKey(after) : first + 1;
    if (length <= packed) return { first, last };
    const exactFirst = this.#firstBehind(-1, codes, start, end, first, last);
    return { first: exactFirst, last: this.#firstBehind(0, codes, start, end, exactFirst, last) };
  }

  /** The number at one place of the order. */
  at(place: number): number {
    return this.#order[place] ?? 0;
  }

  /** Folded code of the nth character from this end; 0 past the other end. */
  #code(id: number, n: number): number {
    if (n >= this.#table.length(id)) return 0;
    const at = this.#from === "start" ? this.#table.start(id) + n : this.#table.end(id) - 1 - n;
    return folded[this.#table.codes[at] ?? 0] ?? 0;
  }

  #compareRest(a: number, b: number): number {
    const length = Math.max(this.#table.length(a), this.#table.length(b));
    for (let n = packed; n < length; n++) {
      const difference = this.#code(a, n) - this.#code(b, n);
      if (difference !== 0) return difference;
    }
    return 0;
  }

  /** The first place with this key; behind the last where none has it. */
  #firstOf(key: number): number {
    const held = this.#slots[this.#slotOf(key)] ?? 0;
    return held === 0 ? this.#keys.length : held - 1;
  }

  /** The slot that holds this key, or the free one where it would stand. */
  #slotOf(key: number): number {
    const mask = this.#slots.length - 1;
    let slot = keyHash(key) & mask;
    for (let held = this.#slots[slot] ?? 0; held !== 0; held = this.#slots[slot] ?? 0) {
      if (this.#keys[held - 1] === key) break;
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  /** The first place whose key is not below this one. */
  #firstKey(key: number): number {
    const from = firstNotBelow(this.#fence, key, 0, this.#fence.length) * paling;
    return firstNotBelow(this.#keys, key, from, Math.min(from + paling, this.#keys.length));
  }

  /** The first place whose number compares above `limit` with the codes: -1 for from them on, 0 for behind them. */
  #firstBehind(
    limit: -1 | 0,
    codes: Uint8Array,
    start: number,
    end: number,
    from: number,
    to: number,
  ): number {
    let low = from;
    let high = to;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (Math.sign(this.#compareTo(this.at(middle), codes, start, end)) <= limit) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #compareTo(id: number, codes: Uint8Array, start: number, end: number): number {
    for (let n = packed; n < end - start; n++) {
      const at = this.#from === "start" ? start + n : end - 1 - n;
      const difference = this.#code(id, n) - (folded[codes[at] ?? 0] ?? 0);
      if (difference !== 0) return difference;
    }
    return 0;
  }
}

function firstNotBelow(keys: Float64Array, key: number, from: number, to: number): number {
  let low = from;
  let high = to;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((keys[middle] ?? 0) < key) low = middle + 1;
    else high = middle;
  }
  return low;
}

function keyHash(key: number): number {
  const high = Math.floor(key / 2 ** 32);
  let bits = Math.imul(key - high * 2 ** 32, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b);
  bits ^= bits >>> 15;
  bits = Math.imul(bits, 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}
