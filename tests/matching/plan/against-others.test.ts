import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseMotors } from "../../../src/catalogue/motors-csv.ts";
import { leastMessages } from "./optimum.ts";
import { everything, labelOrder, planned } from "./policies.ts";
import { customersOf, playAll, smallCrowds } from "./threads.ts";

const demo = parseMotors(readFileSync(new URL("../../../data/motors.csv", import.meta.url), "utf8")).motors;

describe("messages until the verdict", () => {
  it("are within 5 % of the least possible on small stocks", { timeout: 60_000 }, () => {
    let least = 0;
    let asked = 0;
    for (const { stock, opening, customers } of smallCrowds([8, 15, 25], 12)) {
      least += leastMessages(opening, customers, stock) * customers.length;
      asked += playAll(
        planned,
        customers.map((whole) => ({ whole, opening, canRead: () => true })),
        stock,
      ).messages;
    }
    expect(least).toBeGreaterThan(60);
    expect(asked / least).toBeLessThanOrEqual(1.05);
    // Nobody can do better than the best: otherwise the comparison itself is wrong.
    expect(asked / least).toBeGreaterThanOrEqual(1);
  });
});

describe("readings asked for, on the demo stock", () => {
  const customers = customersOf(demo, { count: 60, seed: 41, told: 0.3, everythingReadable: false });
  const byPlan = playAll(planned, customers, demo);

  it("are at least 30 % fewer than down the label in order", () => {
    const inOrder = playAll(labelOrder, customers, demo);
    expect(byPlan.readings).toBeLessThanOrEqual(0.7 * inOrder.readings);
    expect(byPlan.messages).toBeLessThan(inOrder.messages);
    expect(byPlan.undecided).toBeLessThanOrEqual(inOrder.undecided);
  });

  it("are less than half of everything", () => {
    const all = playAll(everything, customers, demo);
    expect(byPlan.readings).toBeLessThan(0.5 * all.readings);
    expect(byPlan.undecided).toBeLessThanOrEqual(all.undecided);
  });
});
