import { tolerance } from "../matching/finding.ts";
import { largestTotalHpRatio, smallestTotalHpRatio } from "../matching/rules/total-horsepower.ts";
import type { StockMotor, Work } from "../matching/types.ts";
import { plainNumber } from "./numbers.ts";
import type { Catalogue, Pump, Spare, SpareKind } from "./types.ts";

/** The motor with this stock number, ignoring case, spaces and hyphens. */
export function motorBySku(catalogue: Catalogue, sku: string): StockMotor | undefined {
  const wanted = plainNumber(sku);
  return catalogue.motors.find((motor) => plainNumber(motor.sku) === wanted);
}

/** The pump with this model or alias, ignoring case, spaces and hyphens. */
export function pumpByModel(catalogue: Catalogue, model: string): Pump | undefined {
  const wanted = plainNumber(model);
  if (wanted === "") return undefined;
  return catalogue.pumps.find((pump) =>
    [pump.model, ...pump.aliases].some((name) => plainNumber(name) === wanted),
  );
}

/** The spare with this stock number, ignoring case, spaces and hyphens. */
export function spareBySku({ spares }: Catalogue, sku: string): Spare | undefined {
  const wanted = plainNumber(sku);
  return spares.find((spare) => plainNumber(spare.sku) === wanted);
}

/** A part that was called for; `spare` is undefined when the shop lists none that fits. */
export interface SpareLine {
  readonly kind: SpareKind;
  readonly spare: Spare | undefined;
}

/**
 * What each piece of work takes off the shelf; other work takes no spare. A capacitor is never on the list:
 * it comes with the motor and goes by its label, not by the pump.
 */
export const sparesOfWork: Readonly<Record<string, readonly SpareKind[]>> = {
  "seal-and-gasket": ["shaft-seal", "gasket"],
  "impeller-and-diffuser": ["impeller", "diffuser"],
  base: ["base"],
};

/**
 * The spares that the work of a motor change takes on one pump, one line for each part. With the new motor's
 * `totalHp` (hp) the impeller and diffuser are those made for it, else those the pump lists.
 */
export function sparesFor(
  catalogue: Catalogue,
  pump: Pump,
  work: Iterable<Pick<Work, "key">>,
  totalHp?: number,
): readonly SpareLine[] {
  const kinds = new Set(Array.from(work, ({ key }) => sparesOfWork[key] ?? []).flat());
  return Array.from(kinds, (kind) => ({ kind, spare: spareFor(catalogue, pump, kind, totalHp) }));
}

function spareFor(
  { spares }: Catalogue,
  pump: Pump,
  kind: SpareKind,
  totalHp: number | undefined,
): Spare | undefined {
  const fitting = spares.filter((spare) => spare.kind === kind && fits(spare, pump));
  if (totalHp !== undefined && (kind === "impeller" || kind === "diffuser")) {
    return largestCarried(fitting, totalHp);
  }
  return fitting.find(({ sku }) => sku === listedSku(pump, kind)) ?? fitting[0];
}

/** The largest part the motor carries, within the limits that the rule on total horsepower sets. */
function largestCarried(fitting: readonly Spare[], motorTotalHp: number): Spare | undefined {
  return fitting
    .filter(({ totalHp }) => {
      const ratio = totalHp === undefined ? 0 : motorTotalHp / totalHp;
      return ratio >= smallestTotalHpRatio - tolerance && ratio <= largestTotalHpRatio + tolerance;
    })
    .sort((a, b) => (b.totalHp ?? 0) - (a.totalHp ?? 0))[0];
}

function listedSku(pump: Pump, kind: SpareKind): string | undefined {
  switch (kind) {
    case "shaft-seal":
      return pump.sealSku;
    case "gasket":
      return pump.gasketSku;
    case "impeller":
      return pump.impellerSku;
    case "diffuser":
      return pump.diffuserSku;
    default:
      return undefined;
  }
}

function fits(spare: Spare, pump: Pump): boolean {
  return spare.fits.some((model) => plainNumber(model) === plainNumber(pump.model));
}
