import { labelTotalHp } from "../engineering/power.ts";
import { type InputPower, inputPower, type RunningCost, runningCost } from "../engineering/running-cost.ts";
import type { StockMotor } from "../matching/types.ts";
import type { Nameplate, Site } from "../nameplate/vocabulary.ts";
import type { Shop } from "./knowledge.ts";

/** Hours and price of one customer: theirs where said, else the shop's, each marked. */
export interface Use {
  readonly hoursPerDay: number;
  readonly pricePerKwh: number;
  /** True when both are the customer's own figures. */
  readonly stated: boolean;
}

export function useOf(site: Site, shop: Shop): Use {
  return {
    hoursPerDay: site.hoursPerDay ?? shop.hoursPerDay,
    pricePerKwh: site.pricePerKwh ?? shop.pricePerKwh,
    stated: site.hoursPerDay !== undefined && site.pricePerKwh !== undefined,
  };
}

/**
 * A year's running of the customer's motor by its label; undefined while the label says too little. Amps
 * printed on a pool motor's label are those at full pump load (common practice).
 */
export function costOfLabel(label: Nameplate, use: Use): RunningCost | undefined {
  return cost(inputPower({ totalHp: labelTotalHp(label), ...circuit(label) }), use);
}

/**
 * A year's running of a stocked motor on a pump that takes `loadHp` at the shaft (default: all the motor
 * gives); undefined when the shop's row says too little. The impeller sets the load, not the motor.
 */
export function costOfMotor(motor: StockMotor, use: Use, loadHp?: number): RunningCost | undefined {
  const { label, efficiencyPct, powerFactor } = motor;
  const fullLoadHp = labelTotalHp(label);
  const power = inputPower({ totalHp: fullLoadHp, efficiencyPct, powerFactor, ...circuit(label) });
  if (power === undefined || fullLoadHp === undefined || loadHp === undefined) return cost(power, use);
  return cost({ ...power, kw: (power.kw * loadHp) / fullLoadHp }, use);
}

function cost(power: InputPower | undefined, use: Use): RunningCost | undefined {
  return power && runningCost(power, use);
}

/**
 * Volts and amps of one printed pair. The highest voltage is taken: both sides of a dual plate give the same
 * power, and two-speed labels print the top speed first.
 */
function circuit(label: Nameplate): Pick<Parameters<typeof inputPower>[0], "volts" | "amps" | "phase"> {
  const amps = label.serviceFactorAmps ?? label.amps;
  const { volts } = label;
  if (volts === undefined || amps === undefined || volts.length === 0) return { phase: label.phase };
  const paired = volts.length === amps.length;
  const index = paired ? volts.indexOf(Math.max(...volts)) : 0;
  return { volts: volts[index], amps: amps[index], phase: label.phase };
}

/** A year's running of the old motor and of the new one, worked out on the same use. */
export interface CostComparison {
  readonly before: RunningCost;
  readonly after: RunningCost;
  readonly use: Use;
}

/** Both costs as far as the labels tell them. */
export function costsOf(
  { nameplate, site }: { readonly nameplate: Nameplate; readonly site: Site },
  motor: StockMotor,
  shop: Shop,
): Pick<CostComparison, "use"> & Partial<CostComparison> {
  const use = useOf(site, shop);
  const before = costOfLabel(nameplate, use);
  const after = costOfMotor(motor, use, labelTotalHp(nameplate));
  return { use, ...(before ? { before } : {}), ...(after ? { after } : {}) };
}

/** Whole dollars, or tens of dollars above a hundred: the figure is an estimate and should look like one. */
export function roundUsd(usd: number): number {
  return usd >= 100 ? Math.round(usd / 10) * 10 : Math.round(usd);
}
