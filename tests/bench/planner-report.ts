/**
 * Prints the planner's and the index's figures: `npx tsx --expose-gc tests/bench/planner-report.ts`. Takes a few
 * minutes; `fast` as an argument leaves out the exhaustive search.
 */
import { readFileSync } from "node:fs";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { planQuestions } from "../../src/matching/plan.ts";
import { indexStock } from "../../src/matching/stock-index.ts";
import type { Question } from "../../src/matching/types.ts";
import { leastMessages } from "../matching/plan/optimum.ts";
import { decidingOrder, everything, labelOrder, planned } from "../matching/plan/policies.ts";
import { makeStock, partOf, randomFrom, truth } from "../matching/plan/stock-maker.ts";
import { customersOf, playAll, smallCrowds } from "../matching/plan/threads.ts";

const print = (line: string) => process.stdout.write(`${line}\n`);
const fixed = (value: number, places = 2) => value.toFixed(places);

function policies() {
  const demo = parseMotors(readFileSync(new URL("../../data/motors.csv", import.meta.url), "utf8")).motors;
  print(`# Threads on the demo stock (${demo.length} motors), 300 customers each, sum over a thread`);
  print("opening    labels     policy           messages  readings  undecided at the end");
  for (const told of [0, 0.3, 0.6]) {
    for (const everythingReadable of [true, false]) {
      const customers = customersOf(demo, { count: 300, seed: 7, told, everythingReadable });
      for (const [name, policy] of Object.entries({ planned, decidingOrder, labelOrder, everything })) {
        const { messages, readings, undecided } = playAll(policy, customers, demo);
        const mean = (sum: number) => fixed(sum / customers.length).padStart(8);
        print(
          `hp + ${String(told * 100).padEnd(3)}%  ${everythingReadable ? "all legible" : "worn       "}` +
            ` ${name.padEnd(14)} ${mean(messages)}  ${mean(readings)}  ${undecided}`,
        );
      }
    }
  }
}

function optimum() {
  print("\n# Messages against the least possible (exhaustive search), by what is known at first");
  const sums = new Map<string, { least: number; asked: number; customers: number }>();
  for (const { stock, told, opening, customers } of smallCrowds([8, 15, 25, 40, 60], 40)) {
    const least = leastMessages(opening, customers, stock) * customers.length;
    const threads = customers.map((whole) => ({ whole, opening, canRead: () => true }));
    const { messages } = playAll(planned, threads, stock);
    for (const key of [told.join(" + "), "all"]) {
      const sum = sums.get(key) ?? { least: 0, asked: 0, customers: 0 };
      sums.set(key, {
        least: sum.least + least,
        asked: sum.asked + messages,
        customers: sum.customers + customers.length,
      });
    }
  }
  for (const [key, { least, asked, customers }] of sums) {
    const above = fixed((100 * asked) / least - 100);
    print(
      `${key.padEnd(28)} ${customers} customers, least ${fixed(least / customers, 3)}, planned ${fixed(asked / customers, 3)}, +${above} %`,
    );
  }
}

/** Warm; the best of three runs of each question, because other work on the machine is not what is measured. */
function quantiles(run: (question: Question) => void, questions: readonly Question[]): string {
  for (const question of questions) run(question);
  const times = questions.map((question) => {
    const once = () => {
      const start = performance.now();
      run(question);
      return performance.now() - start;
    };
    return Math.min(once(), once(), once());
  });
  times.sort((a, b) => a - b);
  const at = (share: number) => fixed(times[Math.floor(share * (times.length - 1))] ?? 0, 3);
  return `median ${at(0.5)}, 95 % ${at(0.95)}, worst ${at(1)} ms`;
}

function scale() {
  print("\n# Generated stocks, warm, 300 questions each, best of three; ten best motors");
  for (const count of [1_000, 10_000, 100_000]) {
    globalThis.gc?.();
    const before = process.memoryUsage();
    const stock = makeStock(count);
    const start = performance.now();
    const index = indexStock(stock);
    const built = performance.now() - start;
    const random = randomFrom(3);
    const complete = Array.from({ length: 300 }, () => truth(random, stock));
    const partial = complete.map((whole) => partOf(random, whole, 0.5));
    const plan = (question: Question) => void planQuestions(question, stock, { unaskable: new Set() });
    print(`${count} motors: indexed in ${fixed(built, 0)} ms, ${index.groups.length} groups`);
    print(
      `  match, complete label: ${quantiles((question) => void index.match(question, { limit: 10 }), complete)}`,
    );
    print(
      `  match, half a label:   ${quantiles((question) => void index.match(question, { limit: 10 }), partial)}`,
    );
    print(`  plan, half a label:    ${quantiles(plan, partial)}`);
    globalThis.gc?.();
    const after = process.memoryUsage();
    const used = (memory: NodeJS.MemoryUsage) => memory.heapUsed + memory.arrayBuffers;
    print(`  memory of stock and index: ${fixed((used(after) - used(before)) / 1e6, 0)} MB`);
  }
}

policies();
if (!process.argv.includes("fast")) optimum();
scale();
