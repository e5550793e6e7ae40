import type { StockMotor } from "../matching/types.ts";

/** Why a number leads to a motor: it is its stock number, or an old number it is recorded to replace. */
export interface NumberHit {
  readonly motor: StockMotor;
  readonly as: "sku" | "replaces";
  /** The number as the catalogue writes it. */
  readonly number: string;
}

/** Numbers of the stock in plain form -> what they lead to, in catalogue order. */
export type NumberIndex = ReadonlyMap<string, readonly NumberHit[]>;

/** The form in which two spellings of a number are equal: lower case, no spaces, no hyphens. */
export function plainNumber(number: string): string {
  return number.toLowerCase().replaceAll(/[\s\u2010-\u2015-]+/g, "");
}

/** Lists every stock number and replaced number once, for look-ups that do not walk the stock. */
export function indexNumbers(motors: Iterable<StockMotor>): NumberIndex {
  const index = new Map<string, NumberHit[]>();
  const add = (hit: NumberHit) => {
    const key = plainNumber(hit.number);
    const hits = index.get(key);
    if (hits) hits.push(hit);
    else if (key !== "") index.set(key, [hit]);
  };
  for (const motor of motors) {
    add({ motor, as: "sku", number: motor.sku });
    for (const number of motor.replaces) add({ motor, as: "replaces", number });
  }
  return index;
}

/** The motors a typed number leads to, stock numbers first; empty when it is not in the catalogue. */
export function findByNumber(numbers: NumberIndex, typed: string): readonly NumberHit[] {
  const hits = numbers.get(plainNumber(typed)) ?? [];
  return [...hits.filter(({ as }) => as === "sku"), ...hits.filter(({ as }) => as === "replaces")];
}
