import { rules } from "../../src/matching/rules/index.ts";
import type { Finding, RuleName, StockMotor } from "../../src/matching/types.ts";
import type { Nameplate, Site } from "../../src/nameplate/vocabulary.ts";

/** A day after the 2025 dates of 10 CFR 431.485 and before the 2027 one. */
export const someDay = "2026-06-01";

/** A stocked motor with this label and nothing else known. */
export function stocked(label: Nameplate, facts: Partial<StockMotor> = {}): StockMotor {
  return { sku: "S1", maker: "Invented", description: "", label, inStock: 1, replaces: [], ...facts };
}

/** What one rule finds. */
export function judge(
  rule: RuleName,
  { old = {}, site = {}, on = someDay }: { old?: Nameplate; site?: Site; on?: string },
  motor: StockMotor | Nameplate,
): Finding {
  const found = rules.find(({ name }) => name === rule)!;
  const stock = "sku" in motor ? (motor as StockMotor) : stocked(motor as Nameplate);
  return found.judge({ nameplate: old, site, on }, stock);
}

/** A good old label and a good replacement for it, to vary one entry at a time. */
export const oldLabel: Nameplate = {
  hp: 1,
  serviceFactor: 1.65,
  volts: [115, 230],
  serviceFactorAmps: [16, 8],
  rpm: [3450],
  hz: [60],
  phase: 1,
  frame: "56Y",
  ambientC: 50,
  duty: "continuous",
};

export const goodMotor: StockMotor = stocked(
  { ...oldLabel, hp: 1.5, serviceFactor: 1.1 },
  { madeOn: "2024-05-02", priceUsd: 249 },
);
