import type { JudgedMotor, Work } from "./types.ts";

/** Something the change of motor takes besides the motor; wording in `intents/answers/work.json`. */
export interface ChangeItem extends Work {
  /** A part goes into the parcel, a job is somebody's to do. */
  readonly kind: "part" | "job";
  readonly need: "needed" | "optional";
}

/** Common practice, no source: the old seal leaks once disturbed, and a capacitor belongs to its motor. */
const everyChange: readonly ChangeItem[] = [
  { key: "seal-and-gasket", values: {}, kind: "part", need: "needed" },
  { key: "own-capacitor", values: {}, kind: "job", need: "needed" },
];

const parts: ReadonlySet<string> = new Set(["base", "impeller-and-diffuser"]);

/** The impeller sets the flow: with the old one a stronger motor just works less hard, so these are a choice. */
const onlyForMoreFlow: ReadonlySet<string> = new Set(["impeller-and-diffuser", "flow-limits"]);

/** Parts and jobs that fitting this motor takes: what every change takes, then what its findings ask for. */
export function changeItems({ findings }: JudgedMotor): readonly ChangeItem[] {
  const asked = findings.flatMap(({ work }) => work);
  return [
    ...everyChange,
    ...asked.map(
      ({ key, values }): ChangeItem => ({
        key,
        values,
        kind: parts.has(key) ? "part" : "job",
        need: onlyForMoreFlow.has(key) ? "optional" : "needed",
      }),
    ),
  ];
}

/** Every work key there is; the wording is checked against it. */
export const workKeys: readonly string[] = [
  ...everyChange.map(({ key }) => key),
  "base",
  "clearance",
  "bolt-circle",
  "impeller-and-diffuser",
  "flow-limits",
  "low-voltage-check",
  "control-and-wiring",
  "electrician-circuit",
  "cooling",
  "sale-date-unknown",
  "sale-scope-unclear",
];
