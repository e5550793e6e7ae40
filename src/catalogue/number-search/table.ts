import { exactHash } from "./hashes.ts";
import { encode, otherCode, plainText } from "./plain.ts";

/** A number as the catalogue writes it, and the stock number of a motor it leads to. */
export interface NumberEntry {
  readonly number: string;
  readonly sku: string;
}

/** Bits of a slot that hold a number + 1. */
const numberBits = 25;
const largestId = 2 ** numberBits;

interface Probed {
  readonly slot: number;
  readonly tag: number;
  readonly id?: number;
}

/** Every different number once, in catalogue order: its codes in one array, its text, its motors. */
export class NumberTable {
  readonly codes: Uint8Array;
  /** Number -> where its codes start; one more entry than numbers. */
  readonly starts: Uint32Array;
  readonly #texts: string[] = [];
  readonly #skus: string[] = [];
  /** The second and further motors of numbers that lead to several. */
  readonly #moreSkus = new Map<number, Set<string>>();
  /** Open addressing: number + 1 at its hash, or the next free slot; the bits above it are the highest of its hash. */
  readonly #slots: Uint32Array;

  constructor(entries: Iterable<NumberEntry>) {
    const all = Array.from(entries);
    // A compatibility character (a ligature) can become many letters: only those numbers are measured in full.
    const room = all.reduce((sum, { number }) => sum + roomFor(number), 0);
    this.codes = new Uint8Array(room);
    this.starts = new Uint32Array(all.length + 1);
    this.#slots = new Uint32Array(2 ** Math.ceil(Math.log2(all.length * 2 + 2)));
    for (const entry of all) this.#add(entry);
  }

  get size(): number {
    return this.#texts.length;
  }

  /** The number as the catalogue writes it. */
  text(id: number): string {
    return this.#texts[id] ?? "";
  }

  /** The stock numbers it leads to, in catalogue order. */
  skus(id: number): readonly string[] {
    return [this.#skus[id] ?? "", ...(this.#moreSkus.get(id) ?? [])];
  }

  start(id: number): number {
    return this.starts[id] ?? 0;
  }

  end(id: number): number {
    return this.starts[id + 1] ?? 0;
  }

  length(id: number): number {
    return this.end(id) - this.start(id);
  }

  /** The number with exactly these codes, given with the text they come from. */
  find(text: string, codes: Uint8Array, start: number, end: number): number | undefined {
    return this.#probe(text, codes, start, end).id;
  }

  #add({ number, sku }: NumberEntry): void {
    const id = this.size;
    const start = this.start(id);
    const end = encode(number, this.codes, start);
    if (end === start) return;
    const found = this.#probe(number, this.codes, start, end);
    if (found.id !== undefined) {
      this.#lead(found.id, sku);
      return;
    }
    this.#slots[found.slot] = found.tag | (id + 1);
    this.starts[id + 1] = end;
    this.#texts.push(number);
    this.#skus.push(sku);
  }

  /** Another motor that a number leads to; thousands of motors may share an old number. */
  #lead(id: number, sku: string): void {
    if (sku === this.#skus[id]) return;
    const more = this.#moreSkus.get(id);
    if (more) more.add(sku);
    else this.#moreSkus.set(id, new Set([sku]));
  }

  #probe(text: string, codes: Uint8Array, start: number, end: number): Probed {
    const mask = this.#slots.length - 1;
    const hash = exactHash(codes, start, end);
    const tag = (hash >>> numberBits) << numberBits;
    let slot = hash & mask;
    for (let held = this.#slots[slot] ?? 0; held !== 0; held = this.#slots[slot] ?? 0) {
      // With the tag of another hash the bits above the number do not cancel out.
      const id = ((held ^ tag) >>> 0) - 1;
      if (id < largestId && this.#equals(id, text, codes, start, end)) return { slot, tag, id };
      slot = (slot + 1) & mask;
    }
    return { slot, tag };
  }

  #equals(id: number, text: string, codes: Uint8Array, start: number, end: number): boolean {
    const own = this.start(id);
    if (this.length(id) !== end - start) return false;
    let other = false;
    for (let n = 0; n < end - start; n++) {
      if (this.codes[own + n] !== codes[start + n]) return false;
      other ||= codes[start + n] === otherCode;
    }
    // Letters beyond A-Z share one code: only their text can tell them apart.
    return !other || plainText(this.text(id)) === plainText(text);
  }
}

function roomFor(number: string): number {
  for (let index = 0; index < number.length; index++) {
    if (number.charCodeAt(index) > 127) return plainText(number).length;
  }
  return number.length;
}
