import { describe, expect, test } from "vitest";
import { costsOf } from "../../src/conversation/money.ts";
import { runningCostPicture } from "../../src/pictures/running-cost.ts";
import { colours } from "../../src/pictures/style.ts";
import { knowledge } from "../conversation/knowledge.ts";
import { comparison, read, wording } from "./examples.ts";
import { elements, placedWords } from "./placed-words.ts";

const costs = comparison();
const scaled = (usd: number) => ({ ...costs, after: { ...costs.after, usdPerYear: usd } });
const words = (picture: ReturnType<typeof runningCostPicture>) =>
  placedWords(picture).map(({ text }) => text);

describe("running cost as bars", () => {
  test("bars stand in the ratio of the figures beside them, from zero", () => {
    const picture = runningCostPicture(scaled(costs.before.usdPerYear / 2), wording);
    const [before, after] = elements(picture.svg, "rect")
      .filter(({ height }) => height === "34")
      .map(({ width }) => Number(width));
    const figures = words(picture)
      .flatMap((text) => /about \$(\d+)/.exec(text)?.[1] ?? [])
      .map(Number);
    expect(figures).toHaveLength(2);
    expect(after! / before!).toBeCloseTo(figures[1]! / figures[0]!, 3);
  });

  // 230 V x 9.6 A x 0.85 = 1.877 kW; x 8 h x 365 = 5480 kWh; x $0.1729 = $948, told as $950 (worked by hand).
  test("tells the old motor's figure and everything it rests on", () => {
    const all = words(runningCostPicture(costs, wording));
    expect(all).toContain("about $950");
    expect(all.join(" ")).toMatch(
      /8 h a day, all year 17\.3 ¢ per kWh your motor: power factor 0\.85 assumed/,
    );
    expect(all.join(" ")).toMatch(/new motor: efficiency as printed both at the full load of your pump/);
  });

  test("says so when hours and price are the customer's own", () => {
    const own = comparison({ hoursPerDay: 6, pricePerKwh: 0.31 });
    expect(words(runningCostPicture(own, wording))).toEqual(
      expect.arrayContaining(["Estimated with your hours and price:", "6 h a day, all year", "31 ¢ per kWh"]),
    );
  });

  test("does not make much of a difference that labels cannot tell", () => {
    const same = scaled(costs.before.usdPerYear * 0.95);
    expect(words(runningCostPicture(same, wording)).join(" ")).toContain("About the same");
    expect(words(runningCostPicture(scaled(costs.before.usdPerYear * 0.7), wording)).join(" ")).not.toContain(
      "About the same",
    );
  });

  test("tells old from new by hatching and by name, not by colour alone", () => {
    const picture = runningCostPicture(costs, wording);
    expect(elements(picture.svg, "path").filter(({ stroke }) => stroke === colours.pencil)).toHaveLength(1);
    expect(words(picture)).toEqual(expect.arrayContaining(["your motor now", "the new motor"]));
  });

  test("leaves out the cost of a label that says too little", () => {
    const motor = knowledge.catalogue.motors[0]!;
    expect(Object.keys(costsOf({ nameplate: { hp: 1.5 }, site: {} }, motor, knowledge.shop))).toEqual([
      "use",
      "after",
    ]);
    expect(Object.keys(costsOf(read, { ...motor, label: {} }, knowledge.shop))).toEqual(["use", "before"]);
  });
});
