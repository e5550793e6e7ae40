/**
 * Compares the number search with general-purpose searches: same numbers, same corrupted queries, each in a process
 * of its own. Prints a table.
 *
 *   npx tsx tests/bench/number-search-report.ts [--rows N] [--modules FOLDER] [--only NAME]
 *
 * A search whose package is not installed is skipped and said so; `--modules` names a folder with node_modules.
 */
import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";
import {
  type CorruptedQuery,
  type CorruptionKind,
  corruptedQueries,
  corruptionKinds,
  inventNumbers,
} from "./number-search/numbers.ts";
import { type Contender, contenders, loaderFrom } from "./number-search/searches.ts";

const { values } = parseArgs({
  options: {
    rows: { type: "string" },
    modules: { type: "string" },
    only: { type: "string" },
    measure: { type: "string" },
  },
});
const numbersSeed = 20_261;
const queriesSeed = 4_711;
const mostQueries = 10_000;

interface Measured {
  readonly rows: number;
  readonly buildSeconds: number;
  readonly indexMb: number;
  readonly residentMb: number;
  readonly meanMs: number;
  /** Processor time for a query: what other programs take of the machine does not count. */
  readonly processorMs: number;
  readonly medianMs: number;
  readonly p99Ms: number;
  readonly slowestMs: number;
  /** For each query the place of the right number among the first three, 0 for none of them. */
  readonly places: readonly number[];
  /** For each query how it was answered; empty where there is but one way. */
  readonly answers: readonly string[];
}

const rowsOf = (contender: Contender) => Math.min(contender.rows, Number(values.rows ?? contender.rows));

function heldBytes(): number {
  globalThis.gc?.();
  globalThis.gc?.();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}

function measure(contender: Contender): Measured {
  const rows = rowsOf(contender);
  const numbers = inventNumbers(rows, numbersSeed);
  const queries = corruptedQueries(numbers, mostQueries, queriesSeed).slice(0, contender.queries);
  const before = heldBytes();
  const started = performance.now();
  const { search, kindOfAnswer, nativeBytes = 0 } = contender.build(numbers, loaderFrom(values.modules));
  const buildSeconds = (performance.now() - started) / 1000;
  const indexMb = (heldBytes() - before + nativeBytes) / 1e6;
  warmUp(search, queries);
  const times = new Float64Array(queries.length);
  const places = queries.map(({ typed, answer }, n) => {
    const start = performance.now();
    const found = search(typed);
    times[n] = performance.now() - start;
    return found.slice(0, 3).indexOf(answer) + 1;
  });
  const meanMs = times.reduce((sum, time) => sum + time, 0) / times.length;
  times.sort();
  const at = (share: number) => times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
  const residentMb = process.memoryUsage().rss / 1e6;
  const answers = kindOfAnswer ? queries.map(({ typed }) => kindOfAnswer(typed)) : [];
  const processorMs = processorTime(search, queries);
  return {
    answers,
    rows,
    buildSeconds,
    indexMb,
    residentMb,
    meanMs,
    processorMs,
    medianMs: at(0.5),
    p99Ms: at(0.99),
    slowestMs: at(1),
    places,
  };
}

/** Runs queries for two seconds before the measured ones, so that everybody is measured in its stride. */
function warmUp(search: (typed: string) => unknown, queries: readonly CorruptedQuery[]): void {
  const until = performance.now() + 2000;
  for (let n = 0; performance.now() < until; n++) search(queries[n % queries.length]?.typed ?? "");
  globalThis.gc?.();
}

/** Mean processor time of a query in ms, over all queries again and again for at least two seconds. */
function processorTime(search: (typed: string) => unknown, queries: readonly CorruptedQuery[]): number {
  const began = process.cpuUsage();
  let run = 0;
  for (let spent = 0; spent < 2000; ) {
    for (const { typed } of queries) search(typed);
    run += queries.length;
    const { user, system } = process.cpuUsage(began);
    spent = (user + system) / 1000;
  }
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1000 / run;
}

function measureApart(contender: Contender): Measured | string {
  if (contender.needs && !isInstalled(contender.needs)) {
    return `skipped: ${contender.needs} is not installed (npm install --no-save ${contender.needs})`;
  }
  const options = ["--expose-gc", "--max-old-space-size=12000", "--import", "tsx"];
  const args = [import.meta.filename, ...process.argv.slice(2), "--measure", contender.name];
  const run = spawnSync(process.execPath, [...options, ...args], { encoding: "utf8", maxBuffer: 1e8 });
  if (run.status !== 0) return `failed: ${run.stderr.trim().split("\n").slice(0, 5).join(" | ")}`;
  return JSON.parse(run.stdout) as Measured;
}

function isInstalled(name: string): boolean {
  try {
    loaderFrom(values.modules)(name);
    return true;
  } catch {
    return false;
  }
}

const share = (places: readonly number[], most: number) =>
  places.filter((place) => place > 0 && place <= most).length / places.length;
const percent = (part: number) => `${(part * 100).toFixed(1)} %`;
const ms = (time: number) => (time < 1 ? time.toFixed(4) : time.toFixed(1));

function report(): void {
  const results = contenders
    .filter(({ name }, index) => index === 0 || !values.only || name.includes(values.only))
    .map((contender) => {
      const result = measureApart(contender);
      process.stderr.write(`${contender.name}: ${typeof result === "string" ? result : "measured"}\n`);
      return { contender, result };
    });
  const measured = results.flatMap(({ contender, result }) =>
    typeof result === "string" ? [] : [{ name: contender.name, ...result }],
  );
  for (const { contender, result } of results) {
    if (typeof result === "string") console.log(`${contender.name}: ${result}`);
  }
  const own = measured[0];
  if (!own) return;
  console.log(
    "\nTime for a query in ms, times ours by processor time; recall over the queries run, own recall over the same queries in brackets.\n",
  );
  printTable([
    [
      "search",
      "rows",
      "queries",
      "processor",
      "mean",
      "median",
      "p99",
      "slowest",
      "times ours",
      "recall@1",
      "recall@3",
      "index s",
      "index MB",
      "process MB",
    ],
    ...measured.map((one) => {
      const same = own.places.slice(0, one.places.length);
      const recall = (most: number) => `${percent(share(one.places, most))} (${percent(share(same, most))})`;
      return [
        one.name,
        String(one.rows),
        String(one.places.length),
        ms(one.processorMs),
        ms(one.meanMs),
        ms(one.medianMs),
        ms(one.p99Ms),
        ms(one.slowestMs),
        (one.processorMs / own.processorMs).toFixed(0),
        recall(1),
        recall(3),
        one.buildSeconds.toFixed(1),
        one.indexMb.toFixed(0),
        one.residentMb.toFixed(0),
      ];
    }),
  ]);
  const kinds = corruptedQueries(inventNumbers(own.rows, numbersSeed), mostQueries, queriesSeed).map(
    ({ kind }) => kind,
  );
  console.log("\nRecall@1 / recall@3 by kind of corruption\n");
  printTable([
    ["search", ...corruptionKinds],
    ...measured.map(({ name, places }) => [
      name,
      ...corruptionKinds.map((kind) => ofKind(places, kinds, kind)),
    ]),
  ]);
  printAnswers(own, kinds);
}

/** How many of the answers of one sort held the right number and how many did not, by kind of corruption. */
function printAnswers({ answers, places }: Measured, kinds: readonly CorruptionKind[]): void {
  console.log(
    "\nOwn answers by kind of corruption: the right number among the first three / not among them\n",
  );
  const ways = [...new Set(answers)].sort();
  printTable([
    ["answer", "all", ...corruptionKinds],
    ...ways.map((way) => [
      way,
      ...[undefined, ...corruptionKinds].map((kind) => {
        const own = places.filter((_, n) => answers[n] === way && (kind === undefined || kinds[n] === kind));
        const right = own.filter((place) => place > 0).length;
        return `${right} / ${own.length - right}`;
      }),
    ]),
  ]);
}

function ofKind(places: readonly number[], kinds: readonly CorruptionKind[], kind: CorruptionKind): string {
  const own = places.filter((_, n) => kinds[n] === kind);
  return own.length === 0 ? "" : `${(share(own, 1) * 100).toFixed(0)} / ${(share(own, 3) * 100).toFixed(0)}`;
}

function printTable(rows: readonly (readonly string[])[]): void {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? "").length)),
  );
  for (const row of rows) {
    console.log(
      row
        .map((cell, column) => (column === 0 ? cell.padEnd : cell.padStart).call(cell, widths[column] ?? 0))
        .join("  "),
    );
  }
}

const measuring = contenders.find(({ name }) => name === values.measure);
if (measuring) process.stdout.write(JSON.stringify(measure(measuring)));
else report();
