import type { RuleName, StockMotor } from "../types.ts";

/** Every rule that looks at the ratings of a motor; the record rule looks at numbers and is kept apart. */
export type RatedRule = Exclude<RuleName, "record">;

type Reads = (motor: StockMotor) => readonly unknown[];

const power: Reads = ({ label }) => [label.hp, label.serviceFactor, label.totalHp, label.kw];
const speed: Reads = ({ label }) => [label.rpm, label.speedKind, label.hz];
const phase: Reads = ({ label }) => [label.phase, label.volts];

/**
 * What each rule reads of a stocked motor. Motors that agree in it get the same finding, so that a rule is
 * worked out once for all of them. A rule that reads more must say so here; a test watches over it.
 */
export const ruleInputs: Readonly<Record<RatedRule, Reads>> = {
  mount: ({ label }) => [label.flange, label.frame],
  shaft: ({ label }) => [label.shaft, label.frame],
  "total-horsepower": power,
  supply: ({ label }) => [label.volts],
  phase,
  frequency: ({ label }) => [label.hz],
  speed,
  current: ({ label }) => [label.volts, label.amps, label.serviceFactorAmps],
  duty: ({ label }) => [label.duty],
  ambient: ({ label }) => [label.ambientC],
  sale: (motor) => [...power(motor), ...speed(motor), ...phase(motor), motor.efficiencyPct, motor.madeOn],
};

export const ratedRules = Object.keys(ruleInputs) as RatedRule[];
