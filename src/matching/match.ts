import { bestFirst, nearestMissFirst } from "./rank.ts";
import { rules } from "./rules/index.ts";
import type {
  Finding,
  JudgedMotor,
  MatchResult,
  MotorVerdict,
  OverallVerdict,
  Question,
  RuleName,
  StockMotor,
} from "./types.ts";

const decidingRules: ReadonlySet<RuleName> = new Set(
  rules.filter(({ weight }) => weight === "deciding").map(({ name }) => name),
);

/** What a motor's findings come to: a rule that rules out outweighs all, a deciding one not known all the rest. */
export function verdictOf(findings: readonly Finding[]): MotorVerdict {
  if (findings.some(({ outcome }) => outcome === "rules-out")) return "no-fit";
  if (findings.some(({ outcome, rule }) => outcome === "not-known" && decidingRules.has(rule))) {
    return "undecided";
  }
  return findings.some(({ outcome }) => outcome === "needs-work") ? "fits-with-work" : "drop-in";
}

/** Judges one stocked motor by every rule. */
export function judgeMotor(question: Question, motor: StockMotor): JudgedMotor {
  const findings = rules.map(({ judge }) => judge(question, motor));
  return { motor, verdict: verdictOf(findings), findings };
}

/** The best there is: a drop-in; else a motor that may turn out one; else work; else nothing fits. */
export function overallVerdict(motors: readonly JudgedMotor[]): OverallVerdict {
  const found = new Set(motors.map(({ verdict }) => verdict));
  if (found.has("drop-in")) return "drop-in";
  if (found.has("undecided")) return "undecided";
  return found.has("fits-with-work") ? "fits-with-work" : "none-fits";
}

/** Judges the stock and puts it in order; with `all` the motors ruled out too, the nearest miss first. */
export function matchStock(
  question: Question,
  stock: readonly StockMotor[],
  options: { readonly all?: boolean } = {},
): MatchResult {
  const judged = stock.map((motor) => judgeMotor(question, motor));
  const fitting = judged.filter(({ verdict }) => verdict !== "no-fit");
  const ruledOut = options.all ? judged.filter(({ verdict }) => verdict === "no-fit") : [];
  return {
    verdict: overallVerdict(fitting),
    motors: bestFirst(question, fitting),
    ruledOut: nearestMissFirst(question, ruledOut),
  };
}
