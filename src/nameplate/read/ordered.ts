/** Things in text order, so that those that start in a stretch of text are found without looking at all. */
export class Ordered<T extends { readonly start: number }> {
  readonly all: readonly T[];

  constructor(items: readonly T[]) {
    this.all = items.toSorted((a, b) => a.start - b.start);
  }

  /** Those that start at `from` or later, but before `to`. */
  within(from: number, to: number): readonly T[] {
    return this.all.slice(this.#first(from), this.#first(to));
  }

  /** Those that start before `at`, nearest first, at most `most`. */
  before(at: number, most: number): T[] {
    const end = this.#first(at);
    return this.all.slice(Math.max(0, end - most), end).reverse();
  }

  #first(at: number): number {
    let [low, high] = [0, this.all.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.all[middle]?.start ?? 0) < at) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
