import type { StockMotor } from "../matching/types.ts";
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

/** The parts that a motor change calls for on one pump. */
export interface SpareWork {
  readonly kinds: readonly SpareKind[];
  /** Total horsepower of the new motor, when impeller and diffuser are to match it; else those in the pump. */
  readonly totalHp?: number | undefined;
}

/** A part that was called for; `spare` is undefined when the shop lists none that fits. */
export interface SpareLine {
  readonly kind: SpareKind;
  readonly spare: Spare | undefined;
}

/**
 * The spares for one pump, one line for each kind asked for. Capacitors come with the motor and go by its
 * label, never by the pump, so that line is always without a spare.
 */
export function sparesFor(catalogue: Catalogue, pump: Pump, work: SpareWork): readonly SpareLine[] {
  const kinds = [...new Set(work.kinds)];
  return kinds.map((kind) => ({ kind, spare: spareFor(catalogue, pump, kind, work.totalHp) }));
}

function spareFor(
  { spares }: Catalogue,
  pump: Pump,
  kind: SpareKind,
  totalHp: number | undefined,
): Spare | undefined {
  const fitting = spares.filter((spare) => spare.kind === kind && fits(spare, pump));
  const listed = fitting.find(({ sku }) => sku === listedSku(pump, kind)) ?? fitting[0];
  if (kind !== "impeller" && kind !== "diffuser") return listed;
  return totalHp === undefined ? listed : bestForTotalHp(fitting, totalHp);
}

/** The largest that the motor carries: its total hp is 0.98 to 1.10 of the part's (2 % for label rounding). */
function bestForTotalHp(fitting: readonly Spare[], motorTotalHp: number): Spare | undefined {
  return fitting
    .filter(({ totalHp }) => {
      const share = totalHp === undefined ? 0 : motorTotalHp / totalHp;
      return share >= 0.98 && share <= 1.1;
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
