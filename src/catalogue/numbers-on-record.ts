import type { StaffMember } from "../staff.ts";
import { plainNumber } from "./numbers.ts";
import type { Catalogue } from "./types.ts";

/** An old motor number that a sale has shown to be replaced by a stocked motor. */
export interface NumberOnRecord {
  readonly id: number;
  /** As the customer typed it, upper case. */
  readonly number: string;
  /** Stock number of the motor that was sold for it. */
  readonly sku: string;
  /** The case it comes from; null once that customer's data was erased. */
  readonly caseId: number | null;
  readonly by: StaffMember;
  /** ISO instant. */
  readonly at: string;
  /** `withdrawn`: the part came back as wrong. `struck`: a person took it off the list. Neither is used. */
  readonly standing: "used" | "withdrawn" | "struck";
  readonly ended: { readonly by: StaffMember; readonly at: string } | null;
}

/** The catalogue with the numbers on record among those its motors replace. */
export function withNumbers(catalogue: Catalogue, numbers: readonly NumberOnRecord[]): Catalogue {
  if (numbers.length === 0) return catalogue;
  const ofMotor = new Map<string, string[]>();
  for (const { sku, number } of numbers) {
    const key = plainNumber(sku);
    ofMotor.set(key, [...(ofMotor.get(key) ?? []), number]);
  }
  const motors = catalogue.motors.map((motor) => {
    const recorded = ofMotor.get(plainNumber(motor.sku));
    if (!recorded) return motor;
    return { ...motor, replaces: [...motor.replaces, ...recorded] };
  });
  return { ...catalogue, motors };
}
