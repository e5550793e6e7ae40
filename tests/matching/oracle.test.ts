import { beforeAll, describe, expect, test } from "vitest";
import { judgeMotor, matchStock } from "../../src/matching/match.ts";
import { type MotorVerdict, type Outcome, ruleNames } from "../../src/matching/types.ts";
import { type Case, drawCase, seeded } from "./generate.ts";
import { oracleOutcomes, oracleOverall, oracleVerdict } from "./oracle.ts";

const PAIRS = 100_000;
const MOTORS_A_QUESTION = 4;

interface Disagreement {
  readonly about: string;
  readonly engine: string;
  readonly oracle: string;
  readonly case: unknown;
}

/** Everything on which engine and oracle differ in one case. */
function disagreements({ question, stock }: Case, seen: Map<string, number>): Disagreement[] {
  const found: Disagreement[] = [];
  const verdicts: MotorVerdict[] = [];
  for (const motor of stock) {
    const judged = judgeMotor(question, motor);
    const outcomes = oracleOutcomes(question, motor);
    const verdict = oracleVerdict(outcomes);
    verdicts.push(verdict);
    const compare = (about: string, engine: string, oracle: string) => {
      if (engine !== oracle) found.push({ about, engine, oracle, case: { question, motor } });
    };
    for (const finding of judged.findings) {
      compare(finding.rule, finding.outcome, outcomes[finding.rule]);
      count(seen, `${finding.rule} ${finding.outcome}`);
    }
    compare("rules", judged.findings.map(({ rule }) => rule).join(), ruleNames.join());
    compare("verdict", judged.verdict, verdict);
    count(seen, verdict);
  }
  const result = matchStock(question, stock, { all: true });
  const overall = oracleOverall(verdicts);
  if (result.verdict !== overall) {
    found.push({ about: "overall", engine: result.verdict, oracle: overall, case: { question, stock } });
  }
  count(seen, `overall ${overall}`);
  return found;
}

function count(seen: Map<string, number>, what: string): void {
  seen.set(what, (seen.get(what) ?? 0) + 1);
}

describe("engine and oracle", () => {
  const random = seeded(20_251_125);
  const seen = new Map<string, number>();
  const found: Disagreement[] = [];
  beforeAll(() => {
    for (let pairs = 0; pairs < PAIRS; pairs += MOTORS_A_QUESTION) {
      found.push(...disagreements(drawCase(random, MOTORS_A_QUESTION), seen));
    }
  }, 60_000);

  test(`agree on every rule and verdict of ${PAIRS} pairs`, () => {
    expect(found.slice(0, 3)).toEqual([]);
    expect(found).toHaveLength(0);
  });

  test("the pairs reach every verdict and every outcome a rule can have", () => {
    const possible: Record<string, readonly Outcome[]> = {
      mount: ["holds", "needs-work", "rules-out", "not-known"],
      shaft: ["holds", "rules-out", "not-known"],
      "total-horsepower": ["holds", "needs-work", "rules-out", "not-known"],
      supply: ["holds", "needs-work", "rules-out", "not-known"],
      phase: ["holds", "rules-out", "not-known"],
      frequency: ["holds", "rules-out", "not-known"],
      speed: ["holds", "needs-work", "rules-out", "not-known"],
      current: ["holds", "needs-work", "not-known"],
      duty: ["holds", "rules-out", "not-known"],
      ambient: ["holds", "needs-work", "not-known"],
      sale: ["holds", "needs-work", "rules-out", "not-known"],
      record: ["holds", "rules-out", "not-known"],
    };
    const wanted = [
      ...Object.entries(possible).flatMap(([rule, outcomes]) =>
        outcomes.map((outcome) => `${rule} ${outcome}`),
      ),
      ...["drop-in", "fits-with-work", "undecided", "no-fit"],
      ...["overall drop-in", "overall fits-with-work", "overall undecided", "overall none-fits"],
    ];
    const rare = wanted.filter((what) => (seen.get(what) ?? 0) < PAIRS / 500);
    expect(rare).toEqual([]);
  });
});
