import { createRequire } from "node:module";
import Database from "better-sqlite3";
import { createNumberSearch } from "../../../src/catalogue/number-search.ts";
import { plainForm } from "./numbers.ts";

/** A search of the comparison: builds its index, answers with numbers, best first. */
export interface Contender {
  readonly name: string;
  /** The package it needs; a contender whose package is missing is skipped. */
  readonly needs?: string;
  /** Rows and queries it can stand within about a minute or two. */
  readonly rows: number;
  readonly queries: number;
  build(numbers: readonly string[], load: Load): Built;
}

export interface Built {
  readonly search: (typed: string) => readonly string[];
  /** How it answers, where it has more than one way: "found", "choose" and so on. */
  readonly kindOfAnswer?: (typed: string) => string;
  /** Bytes held outside the JavaScript heap and its buffers. */
  readonly nativeBytes?: number;
}

export type Load = (name: string) => unknown;

/** Loads packages from the project, or from the folder of another one. */
export function loaderFrom(folder: string | undefined): Load {
  return createRequire(folder ? `${folder.replace(/\/$/, "")}/package.json` : import.meta.url);
}

interface FuseModule {
  new (
    rows: readonly string[],
    options: object,
  ): {
    search(typed: string, options: { limit: number }): { item: string }[];
  };
}

interface MiniSearchModule {
  new (
    options: object,
  ): {
    addAll(rows: { id: number; number: string }[]): void;
    search(typed: string): { id: number }[];
  };
}

const million = 1_000_000;

export const contenders: readonly Contender[] = [
  {
    name: "number-search",
    rows: million,
    queries: 10_000,
    build(numbers) {
      const { search } = createNumberSearch(numbers.map((number) => ({ number, sku: number })));
      return {
        kindOfAnswer: (typed) => search(typed).kind,
        search(typed) {
          const result = search(typed);
          if (result.kind === "found") return [result.number];
          if (result.kind === "choose") return result.candidates.slice(0, 3).map(({ number }) => number);
          return result.kind === "many" ? result.likeliest.map(({ number }) => number) : [];
        },
      };
    },
  },
  miniSearch(1, 2000),
  miniSearch(2, 200),
  {
    name: "fuse.js, threshold 0.4",
    needs: "fuse.js",
    rows: million,
    queries: 40,
    build(numbers, load) {
      const loaded = load("fuse.js") as FuseModule & { default?: FuseModule };
      const fuse = new (loaded.default ?? loaded)(numbers.map(plainForm), { threshold: 0.4 });
      const written = byPlainForm(numbers);
      return {
        search: (typed) =>
          fuse.search(plainForm(typed), { limit: 3 }).map(({ item }) => written.get(item) ?? ""),
      };
    },
  },
  trigrams("SQLite FTS5 trigram, bm25", 3, 200),
  trigrams("SQLite FTS5 trigram, best 50 by Levenshtein", 50, 200),
  {
    name: "Levenshtein scan (bit-parallel)",
    rows: million,
    queries: 200,
    build(numbers) {
      const plain = numbers.map(plainForm);
      return {
        search: (typed) => nearest(plainForm(typed), plain).map((at) => numbers[at] ?? ""),
      };
    },
  },
];

function byPlainForm(numbers: readonly string[]): Map<string, string> {
  return new Map(numbers.map((number) => [plainForm(number), number]));
}

function miniSearch(fuzzy: number, queries: number): Contender {
  return {
    name: `minisearch, fuzzy ${fuzzy} and prefix`,
    needs: "minisearch",
    rows: million,
    queries,
    build(numbers, load) {
      const loaded = load("minisearch") as MiniSearchModule & { default?: MiniSearchModule };
      const index = new (loaded.default ?? loaded)({
        fields: ["number"],
        tokenize: (text: string) => [text],
        processTerm: (term: string) => term,
        searchOptions: { fuzzy, prefix: true },
      });
      index.addAll(numbers.map((number, id) => ({ id, number: plainForm(number) })));
      return {
        search: (typed) =>
          index
            .search(plainForm(typed))
            .slice(0, 3)
            .map(({ id }) => numbers[id] ?? ""),
      };
    },
  };
}

function trigrams(name: string, limit: number, queries: number): Contender {
  return {
    name,
    rows: million,
    queries,
    build(numbers) {
      const database = new Database(":memory:");
      database.exec("CREATE VIRTUAL TABLE numbers USING fts5(plain, tokenize = 'trigram')");
      const insert = database.prepare("INSERT INTO numbers (rowid, plain) VALUES (?, ?)");
      database.transaction(() => {
        for (const [id, number] of numbers.entries()) insert.run(id, plainForm(number));
      })();
      database.exec("INSERT INTO numbers (numbers) VALUES ('optimize')");
      const best = database.prepare<[string, number], { rowid: number; plain: string }>(
        "SELECT rowid, plain FROM numbers WHERE numbers MATCH ? ORDER BY rank LIMIT ?",
      );
      const pages = Number(database.pragma("page_count", { simple: true }));
      return {
        nativeBytes: pages * Number(database.pragma("page_size", { simple: true })),
        search(typed) {
          const plain = plainForm(typed);
          if (plain.length < 3) return [];
          const grams = Array.from({ length: plain.length - 2 }, (_, at) => `"${plain.slice(at, at + 3)}"`);
          const rows = best.all(grams.join(" OR "), limit);
          const order =
            limit > 3
              ? nearest(
                  plain,
                  rows.map((row) => row.plain),
                )
              : rows.keys();
          return Array.from(order, (at) => numbers[rows[at]?.rowid ?? -1] ?? "").slice(0, 3);
        },
      };
    },
  };
}

const bitsOf = new Int32Array(128);

/**
 * Levenshtein distance of two ASCII texts, the first of at most 32 characters: G. Myers, "A fast bit-vector
 * algorithm for approximate string matching based on dynamic programming", J. ACM 46 (1999), from memory.
 */
export function levenshtein(pattern: string, text: string): number {
  const last = 1 << (pattern.length - 1);
  for (let at = 0; at < pattern.length; at++) {
    const unit = pattern.charCodeAt(at);
    bitsOf[unit] = (bitsOf[unit] ?? 0) | (1 << at);
  }
  let positive = -1;
  let negative = 0;
  let score = pattern.length;
  for (let at = 0; at < text.length; at++) {
    let equal = bitsOf[text.charCodeAt(at)] ?? 0;
    const vertical = equal | negative;
    equal |= ((equal & positive) + positive) ^ positive;
    negative |= ~(equal | positive);
    positive &= equal;
    if (negative & last) score++;
    if (positive & last) score--;
    negative = (negative << 1) | 1;
    positive = (positive << 1) | ~(vertical | negative);
    negative &= vertical;
  }
  for (let at = 0; at < pattern.length; at++) bitsOf[pattern.charCodeAt(at)] = 0;
  return score;
}

/** Places of the three nearest texts, nearest first, the earlier of two equally near. */
function nearest(typed: string, texts: readonly string[]): number[] {
  const best: { at: number; distance: number }[] = [];
  for (let at = 0; at < texts.length; at++) {
    const text = texts[at] ?? "";
    const worst = best.length === 3 ? (best[2]?.distance ?? 0) : Number.POSITIVE_INFINITY;
    if (Math.abs(text.length - typed.length) >= worst) continue;
    const distance = levenshtein(typed, text);
    if (distance >= worst) continue;
    best.push({ at, distance });
    best.sort((a, b) => a.distance - b.distance || a.at - b.at);
    best.length = Math.min(best.length, 3);
  }
  return best.map(({ at }) => at);
}
