/** Bits of a posting that hold the number; the eight above them hold bits of its hash. */
const idBits = 24;
export const mostNumbers = 2 ** idBits;

/**
 * Hash -> the numbers that have it, in two flat arrays: where each bucket starts, and the postings of all buckets
 * one after the other. Eight bits of the hash in each posting tell most strangers in a bucket apart.
 */
export class Postings {
  readonly #starts: Uint32Array;
  readonly #postings: Uint32Array;
  readonly #mask: number;
  /** Where the buckets of one look-up start and end. */
  readonly #begins: Uint32Array;
  readonly #ends: Uint32Array;

  /**
   * Indexes the numbers 0 to `size - 1`, at most `mostNumbers`. `hashesOf` writes the hashes of one number into a scratch array of
   * `mostHashes` and gives their count; it is called twice for each: to count, then to fill.
   */
  constructor(size: number, mostHashes: number, hashesOf: (id: number, out: Uint32Array) => number) {
    const hashes = new Uint32Array(mostHashes);
    this.#begins = new Uint32Array(mostHashes);
    this.#ends = new Uint32Array(mostHashes);
    let total = 0;
    for (let id = 0; id < size; id++) total += hashesOf(id, hashes);
    const buckets = 2 ** Math.max(4, Math.min(24, Math.ceil(Math.log2(total / 4 + 1))));
    this.#mask = buckets - 1;
    this.#postings = new Uint32Array(total);
    this.#starts = new Uint32Array(buckets + 1);
    this.#fill(size, hashes, hashesOf);
  }

  #fill(size: number, hashes: Uint32Array, hashesOf: (id: number, out: Uint32Array) => number): void {
    const starts = this.#starts;
    for (let id = 0; id < size; id++) {
      const count = hashesOf(id, hashes);
      for (let n = 0; n < count; n++) {
        const bucket = (hashes[n] ?? 0) & this.#mask;
        starts[bucket] = (starts[bucket] ?? 0) + 1;
      }
    }
    let end = 0;
    for (let bucket = 0; bucket < starts.length; bucket++) {
      end += starts[bucket] ?? 0;
      starts[bucket] = end;
    }
    // From the last number to the first: each bucket is filled from its end, and stays in catalogue order.
    for (let id = size - 1; id >= 0; id--) {
      const count = hashesOf(id, hashes);
      for (let n = 0; n < count; n++) {
        const hash = hashes[n] ?? 0;
        const slot = (starts[hash & this.#mask] ?? 0) - 1;
        starts[hash & this.#mask] = slot;
        this.#postings[slot] = tagOf(hash) | id;
      }
    }
  }

  /**
   * Writes into `out` every number that has one of the first `count` hashes (and a few that have none), hash by hash, a
   * number of several hashes several times. Gives how many were written, or one more than `out` holds when there are
   * more. All buckets are looked up before the first is read: the waits for memory overlap.
   */
  collect(hashes: Uint32Array, count: number, out: Uint32Array): number {
    const begins = this.#begins;
    const ends = this.#ends;
    const starts = this.#starts;
    for (let n = 0; n < count; n++) {
      const bucket = (hashes[n] ?? 0) & this.#mask;
      begins[n] = starts[bucket] ?? 0;
      ends[n] = starts[bucket + 1] ?? 0;
    }
    const postings = this.#postings;
    let found = 0;
    for (let n = 0; n < count; n++) {
      const tag = tagOf(hashes[n] ?? 0);
      const end = ends[n] ?? 0;
      for (let slot = begins[n] ?? 0; slot < end; slot++) {
        const difference = ((postings[slot] ?? 0) ^ tag) >>> 0;
        if (difference >= mostNumbers) continue;
        if (found === out.length) return found + 1;
        out[found++] = difference;
      }
    }
    return found;
  }
}

/** The highest bits of a hash, where a posting holds them; the lowest ones have chosen the bucket. */
function tagOf(hash: number): number {
  return (hash >>> idBits) << idBits;
}
