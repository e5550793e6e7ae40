import { folded } from "./look-alikes.ts";
import type { NumberTable } from "./table.ts";

/** Codes that fit in one exact double at six bits each. */
const packed = 8;

/** The numbers sorted by their folded codes, read from one end: those that begin (or end) alike stand together. */
export class SortedEnds {
  readonly #table: NumberTable;
  readonly #from: "start" | "end";
  readonly #order: Uint32Array;

  constructor(table: NumberTable, from: "start" | "end") {
    this.#table = table;
    this.#from = from;
    const keys = new Float64Array(table.size);
    for (let id = 0; id < table.size; id++) {
      let key = 0;
      for (let n = 0; n < packed; n++) key = key * 64 + this.#code(id, n);
      keys[id] = key;
    }
    this.#order = Uint32Array.from({ length: table.size }, (_, id) => id).sort(
      (a, b) => (keys[a] ?? 0) - (keys[b] ?? 0) || this.#compareRest(a, b) || a - b,
    );
  }

  /** First and one past the last place of the numbers that have these codes at this end, look-alikes folded. */
  range(codes: Uint8Array, start: number, end: number): { first: number; last: number } {
    const bound = (after: 0 | 1): number => {
      let low = 0;
      let high = this.#order.length;
      while (low < high) {
        const middle = (low + high) >>> 1;
        if (this.#compareTo(this.at(middle), codes, start, end) < after) low = middle + 1;
        else high = middle;
      }
      return low;
    };
    const first = bound(0);
    return { first, last: bound(1) };
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

  #compareTo(id: number, codes: Uint8Array, start: number, end: number): number {
    for (let n = 0; n < end - start; n++) {
      const at = this.#from === "start" ? start + n : end - 1 - n;
      const difference = this.#code(id, n) - (folded[codes[at] ?? 0] ?? 0);
      if (difference !== 0) return difference;
    }
    return 0;
  }
}
