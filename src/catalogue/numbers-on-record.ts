import type { StaffMember } from "../staff.ts";

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
