import { bench, describe } from "vitest";
import { createNumberSearch } from "../../src/catalogue/number-search.ts";
import { corruptedQueries, inventNumbers, plainForm } from "./number-search/numbers.ts";
import { levenshtein } from "./number-search/searches.ts";

// The comparison in full, a million numbers against other libraries: npx tsx tests/bench/number-search-report.ts
describe("a corrupted number among 20,000", () => {
  const numbers = inventNumbers(20_000, 20_261);
  const queries = corruptedQueries(numbers, 1000, 4711);
  const plain = numbers.map(plainForm);
  const { search } = createNumberSearch(numbers.map((number) => ({ number, sku: number })));
  let turn = 0;
  const next = () => queries[turn++ % queries.length]!.typed;

  bench("number search", () => {
    search(next());
  });
  bench("Levenshtein scan", () => {
    const typed = plainForm(next());
    for (const number of plain) levenshtein(typed, number);
  });
});

describe("the index of 20,000 numbers", () => {
  const entries = inventNumbers(20_000, 20_261).map((number) => ({ number, sku: number }));
  bench("is built", () => {
    createNumberSearch(entries);
  });
});
