import { rules } from "../rules/index.ts";
import type { Finding, Question, Rule, StockMotor } from "../types.ts";
import { type RatedRule, ratedRules, ruleInputs } from "./rule-inputs.ts";

/** The stock as one rule sees it: motors that look the same to the rule share a number. */
export interface Aspect {
  readonly rule: Rule;
  /** Motor position in the stock -> number of its kind. */
  readonly kindOf: Uint32Array;
  /** One motor of each kind, at the kind's number. */
  readonly samples: readonly StockMotor[];
}

export type Aspects = Readonly<Record<RatedRule, Aspect>>;

/** Sorts the stock into kinds, once for each rule. */
export function aspectsOf(motors: readonly StockMotor[]): Aspects {
  return Object.fromEntries(ratedRules.map((name) => [name, aspectOf(name, motors)])) as Aspects;
}

function aspectOf(name: RatedRule, motors: readonly StockMotor[]): Aspect {
  const rule = rules.find((candidate) => candidate.name === name);
  if (!rule) throw new Error(`No rule is called ${name}: see rules/index.ts`);
  const reads = ruleInputs[name];
  const kinds = new Map<string, number>();
  const kindOf = new Uint32Array(motors.length);
  const samples: StockMotor[] = [];
  for (const [position, motor] of motors.entries()) {
    const key = reads(motor).join("|");
    let kind = kinds.get(key);
    if (kind === undefined) {
      kind = samples.length;
      kinds.set(key, kind);
      samples.push(motor);
    }
    kindOf[position] = kind;
  }
  return { rule, kindOf, samples };
}

/** Findings of one question, worked out when first asked for and then kept, one for each kind. */
export type FindingOf = (rule: RatedRule, kind: number) => Finding;

/** Findings already worked out, by rule and kind. */
export type Findings = Partial<Record<RatedRule, (Finding | undefined)[]>>;

/**
 * Judges kinds instead of motors. `kept` may bring findings that outlive one question, such as those of the
 * sale rule for one day.
 */
export function findingsFor(aspects: Aspects, question: Question, kept: Findings = {}): FindingOf {
  const found: Findings = { ...kept };
  return (rule, kind) => {
    found[rule] ??= [];
    const ofRule = found[rule];
    const known = ofRule[kind];
    if (known) return known;
    const aspect = aspects[rule];
    const sample = aspect.samples[kind];
    if (!sample) throw new RangeError(`The stock has no kind ${kind} for the rule ${rule}`);
    const finding = aspect.rule.judge(question, sample);
    ofRule[kind] = finding;
    return finding;
  };
}
