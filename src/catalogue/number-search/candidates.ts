import { SortedEnds } from "./ends.ts";
import { deletionHashes, foldedHash } from "./hashes.ts";
import { likeness } from "./look-alikes.ts";
import { longestSearched } from "./plain.ts";
import { mostNumbers, Postings } from "./postings.ts";
import type { FoundHow } from "./result.ts";
import { alike, part, type Stretch, slipBetween } from "./slip.ts";
import { type NumberEntry, NumberTable } from "./table.ts";
import type { TypedNumber } from "./typed.ts";

/** A number that may have been meant. `tier` decides, `cost` only orders within a tier; both lowest first. */
export interface Ranked {
  readonly id: number;
  readonly how: FoundHow;
  readonly tier: number;
  readonly cost: number;
}

/** The candidates of one search, each number once. `unlisted` more fit what was typed and were not looked at. */
export interface Candidates {
  readonly ranked: readonly Ranked[];
  readonly unlisted: number;
}

/** Shorter numbers have no slips: one character of two or three makes any number any other. */
const shortestWithSlip = 4;
const shortestPiece = 3;
/** A number standing within a longer text must be at least so long, and half of the text. */
const shortestWithin = 5;
/** How many numbers one search looks at, and one end lists: they bound its time on stock that is all alike. */
const mostVisited = 4000;
const mostListed = 64;
const fewListed = 3;

/** Finds the numbers close to what was typed, in time that does not depend on how many there are. */
export class NumberIndex {
  readonly #table: NumberTable;
  readonly #postings: Postings;
  /** 1 where some number has that length. */
  readonly #lengths = new Uint8Array(longestSearched + 2);
  /** Room for the hashes of one search, and for the numbers that have them. */
  readonly #hashes = new Uint32Array(longestSearched + 1);
  readonly #found = new Uint32Array(mostVisited);
  readonly #seen = new SeenIds();
  readonly #ends: readonly { readonly from: "start" | "end"; readonly sorted: SortedEnds }[];

  constructor(entries: Iterable<NumberEntry>) {
    const table = new NumberTable(entries);
    if (table.size > mostNumbers) {
      throw new RangeError(
        `${table.size} numbers are more than the ${mostNumbers} that one index holds: split them.`,
      );
    }
    this.#table = table;
    for (let id = 0; id < table.size; id++) this.#lengths[table.length(id)] = 1;
    this.#postings = new Postings(table.size, longestSearched + 1, (id, out) =>
      table.length(id) > longestSearched
        ? 0
        : deletionHashes(table.codes, table.start(id), table.end(id), out),
    );
    this.#ends = (["start", "end"] as const).map((from) => ({ from, sorted: new SortedEnds(table, from) }));
  }

  /** The number as the catalogue writes it, and the motors it leads to. */
  candidate({ id, how }: Ranked): { number: string; skus: readonly string[]; how: FoundHow } {
    return { number: this.#table.text(id), skus: this.#table.skus(id), how };
  }

  /** The number that is typed letter by letter, spaces, hyphens and case aside. */
  exact({ text, codes, start, end }: TypedNumber): number | undefined {
    return this.#table.find(text, codes, start, end);
  }

  /**
   * Numbers that differ in look-alikes only: first those that a hand mistakes, then those with one worn character.
   * With more worn characters they are no surer than numbers one edit away, and are listed with them.
   */
  lookAlikes(typed: Stretch): Candidates {
    const ranked: Ranked[] = [];
    this.#hashes[0] = foldedHash(typed.codes, typed.start, typed.end);
    const count = this.#collect(1);
    const length = typed.end - typed.start;
    for (let n = 0; n < Math.min(count, mostVisited); n++) {
      const id = this.#found[n] ?? 0;
      if (this.#table.length(id) !== length) continue;
      const slip = alike(typed, this.#stretch(id));
      if (slip && slip.worn <= 1) ranked.push({ id, how: "look-alike", tier: slip.worn, cost: slip.cost });
    }
    return { ranked, unlisted: Number(count > mostVisited) };
  }

  /** Numbers one edit or some worn characters away, and those of which a piece was typed or that stand within what was typed. */
  near(typed: Stretch): Candidates {
    if (typed.end - typed.start > longestSearched) return { ranked: [], unlisted: 0 };
    const proposals = new Proposals();
    const unlisted = this.#oneEdit(typed, proposals) + this.#pieces(typed, proposals);
    this.#within(typed, proposals);
    return { ranked: proposals.ranked, unlisted };
  }

  #oneEdit(typed: Stretch, proposals: Proposals): number {
    const length = typed.end - typed.start;
    if (![length - 1, length, length + 1].some((near) => this.#lengths[near])) return 0;
    const count = this.#collect(deletionHashes(typed.codes, typed.start, typed.end, this.#hashes));
    this.#seen.clear();
    for (let n = 0; n < Math.min(count, mostVisited); n++) {
      const id = this.#found[n] ?? 0;
      if (!this.#seen.add(id) || this.#table.length(id) < shortestWithSlip) continue;
      const slip = slipBetween(typed, this.#stretch(id));
      if (slip?.edits === 0) proposals.add(id, "look-alike", 0, slip.cost);
      else if (slip) proposals.add(id, "near", slip.worst === likeness.same ? 0 : 1, slip.cost);
    }
    return Number(count > mostVisited);
  }

  /** Fills the room for numbers with those of the first `hashes` hashes; more than `mostVisited` means that there are more. */
  #collect(hashes: number): number {
    return this.#postings.collect(this.#hashes, hashes, this.#found);
  }

  /** Numbers that begin or end with what was typed. */
  #pieces(typed: Stretch, proposals: Proposals): number {
    const length = typed.end - typed.start;
    if (length < shortestPiece) return 0;
    let unlisted = 0;
    for (const { from, sorted } of this.#ends) {
      const { first, last } = sorted.range(typed.codes, typed.start, typed.end);
      // Beyond that they are only counted, and a few shown.
      const listed = last - first <= mostListed ? last - first : fewListed;
      unlisted += last - first - listed;
      for (let place = first; place < first + listed; place++) {
        const id = sorted.at(place);
        const number = this.#stretch(id);
        const missing = this.#table.length(id) - length;
        const same = alike(typed, from === "start" ? part(number, 0, length) : part(number, missing));
        if (same) proposals.add(id, "part", same.worst === likeness.same ? 0 : 1, same.cost + 3);
      }
    }
    return unlisted;
  }

  /** The longest number that begins what was typed, and the longest that ends it. */
  #within(typed: Stretch, proposals: Proposals): void {
    const length = typed.end - typed.start;
    const shortest = Math.max(shortestWithin, Math.ceil(length / 2));
    for (const from of ["start", "end"] as const) {
      let found = false;
      for (let own = length - 2; own >= shortest && !found; own--) {
        if (!this.#lengths[own]) continue;
        const start = from === "start" ? typed.start : typed.end - own;
        this.#hashes[0] = foldedHash(typed.codes, start, start + own);
        const count = this.#collect(1);
        if (count === 0) continue;
        const piece = { codes: typed.codes, start, end: start + own };
        for (let n = 0; n < Math.min(count, mostVisited); n++) {
          const id = this.#found[n] ?? 0;
          const same = this.#table.length(id) === own ? alike(piece, this.#stretch(id)) : undefined;
          if (same) proposals.add(id, "part", same.worst === likeness.same ? 0 : 1, same.cost + 3);
          found ||= same !== undefined;
        }
      }
    }
  }

  #stretch(id: number): Stretch {
    return { codes: this.#table.codes, start: this.#table.start(id), end: this.#table.end(id) };
  }
}

/** Numbers proposed in several ways, each kept by its best. */
class Proposals {
  readonly #best = new Map<number, Ranked>();

  add(id: number, how: FoundHow, tier: number, cost: number): void {
    const known = this.#best.get(id);
    if (!known || tier < known.tier || (tier === known.tier && cost < known.cost)) {
      this.#best.set(id, { id, how, tier, cost });
    }
  }

  get ranked(): readonly Ranked[] {
    return [...this.#best.values()];
  }
}

const seenSlots = 2 ** Math.ceil(Math.log2(mostVisited * 2));

/** The numbers one search has looked at: open addressing, emptied by forgetting only what was put in. */
class SeenIds {
  readonly #slots = new Int32Array(seenSlots);
  readonly #used = new Int32Array(mostVisited);
  #count = 0;

  clear(): void {
    for (let n = 0; n < this.#count; n++) this.#slots[this.#used[n] ?? 0] = 0;
    this.#count = 0;
  }

  /** False when it was there already. At most `mostVisited` are put in before the next clearing. */
  add(id: number): boolean {
    let slot = Math.imul(id, 0x9e3779b1) >>> (32 - Math.log2(seenSlots));
    for (let held = this.#slots[slot] ?? 0; held !== 0; held = this.#slots[slot] ?? 0) {
      if (held === id + 1) return false;
      slot = (slot + 1) & (seenSlots - 1);
    }
    this.#slots[slot] = id + 1;
    this.#used[this.#count++] = slot;
    return true;
  }
}
