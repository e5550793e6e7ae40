import type { StockMotor } from "../matching/types.ts";
import type { RatingValue } from "../nameplate/vocabulary.ts";
import type { NumberFormat } from "./number-search.ts";

/** A pump without its motor (the wet end), as the shop lists it, and the motor it needs. */
export interface Pump {
  /** Model on the pump's own label. */
  readonly model: string;
  readonly maker: string;
  readonly description: string;
  /** Mounting face of the bracket: the motor must have the same. */
  readonly flange: RatingValue<"flange">;
  /** How the impeller is carried. */
  readonly shaft: RatingValue<"shaft">;
  /** Total horsepower that the impeller in it takes, hp. */
  readonly totalHp: number;
  /** Motor body its base is made for: 48 or 56 (NEMA MG 1 Part 4: shaft height = number / 16 in). */
  readonly frameBody?: 48 | 56 | undefined;
  readonly sealSku?: string | undefined;
  readonly gasketSku?: string | undefined;
  readonly impellerSku?: string | undefined;
  readonly diffuserSku?: string | undefined;
  /** Other ways the model is written or was called. */
  readonly aliases: readonly string[];
}

export const spareKinds = ["shaft-seal", "gasket", "impeller", "diffuser", "base", "capacitor"] as const;
export type SpareKind = (typeof spareKinds)[number];

/** A part that a motor change may need. */
export interface Spare {
  readonly sku: string;
  readonly kind: SpareKind;
  readonly description: string;
  /** Pump models it fits; empty for capacitors, which go by the motor's own label. */
  readonly fits: readonly string[];
  /** Impellers and diffusers: total horsepower of the motor they are made for, hp. */
  readonly totalHp?: number | undefined;
  /** Capacitors, in microfarad. */
  readonly capacitorUf?: number | undefined;
  readonly priceUsd?: number | undefined;
  readonly inStock: number;
}

/** What the shop has, as imported. */
export interface Catalogue {
  readonly motors: readonly StockMotor[];
  readonly pumps: readonly Pump[];
  readonly spares: readonly Spare[];
  /** How makers write their numbers; without it numbers are compared as they stand. */
  readonly numberFormats?: readonly NumberFormat[];
  /** Day the motors were imported, ISO `YYYY-MM-DD`: their prices and stock are of that day. */
  readonly importedOn: string;
  /** Day the spares were imported; absent where it is that of the motors. */
  readonly sparesImportedOn?: string;
}
