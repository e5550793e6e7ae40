import type { Question, StockMotor } from "../../../src/matching/types.ts";
import { type Customer, converse, type Policy, readerFrom } from "./policies.ts";
import { makeStock, partOf, randomFrom, truth } from "./stock-maker.ts";

const on = "2026-11-25";

/** What people do not say of their own accord: it is not on the label, or they must look for it. */
const seldomVolunteered = ["totalHp", "flange", "shaft", "speedKind"] as const;

/**
 * Customers as a shop meets them: seven in ten have a motor like a stocked one, the others any motor of the
 * trade. All open with the horsepower and a share of the rest.
 */
export function customersOf(
  stock: readonly StockMotor[],
  wanted: {
    readonly count: number;
    readonly seed: number;
    readonly told: number;
    readonly everythingReadable: boolean;
  },
): readonly Customer[] {
  const random = randomFrom(wanted.seed);
  const others = makeStock(50, wanted.seed + 1);
  return Array.from({ length: wanted.count }, (): Customer => {
    const whole = truth(random, random() < 0.7 ? stock : others, on);
    const nameplate = { ...partOf(random, whole, wanted.told).nameplate, hp: whole.nameplate.hp };
    for (const rating of seldomVolunteered) delete nameplate[rating];
    const opening = { nameplate, site: {}, on };
    return { whole, opening, canRead: wanted.everythingReadable ? () => true : readerFrom(random) };
  });
}

export interface Totals {
  readonly messages: number;
  readonly readings: number;
  readonly undecided: number;
}

/** All threads played with one policy, summed up. */
export function playAll(
  policy: Policy,
  customers: readonly Customer[],
  stock: readonly StockMotor[],
): Totals {
  const threads = customers.map((customer) => converse(policy, customer, stock));
  const sum = (of: (thread: (typeof threads)[number]) => number) =>
    threads.reduce((total, thread) => total + of(thread), 0);
  return {
    messages: sum(({ messages }) => messages),
    readings: sum(({ readings }) => readings),
    undecided: sum(({ verdict }) => (verdict === "undecided" ? 1 : 0)),
  };
}

/** Small stocks with customers who have said the same so far: what an exhaustive search can cope with. */
export function* smallCrowds(stockSizes: readonly number[], atMost: number) {
  const openings = [
    ["hp", "volts"],
    ["frame", "hp"],
    ["hp", "serviceFactor", "volts"],
    ["frame", "rpm"],
  ] as const;
  for (const size of stockSizes) {
    const stock = makeStock(size, size);
    const random = randomFrom(size + 100);
    const others = makeStock(30, 77);
    const everyone = Array.from({ length: 200 }, () => truth(random, random() < 0.8 ? stock : others, on));
    for (const told of openings) {
      const crowds = new Map<string, Question[]>();
      for (const whole of everyone) {
        const key = JSON.stringify(told.map((rating) => whole.nameplate[rating]));
        crowds.set(key, [...(crowds.get(key) ?? []), whole]);
      }
      const biggest = [...crowds.values()].sort((a, b) => b.length - a.length).slice(0, 2);
      for (const crowd of biggest) {
        const first = crowd[0]!;
        const nameplate = Object.fromEntries(told.map((rating) => [rating, first.nameplate[rating]]));
        yield { stock, told, opening: { nameplate, site: {}, on }, customers: crowd.slice(0, atMost) };
      }
    }
  }
}
