import type { Nameplate, RatingName, Site } from "../nameplate/vocabulary.ts";

/** A stocked motor: its label and what the shop knows about it. Numbers in the units of the vocabulary. */
export interface StockMotor {
  readonly sku: string;
  readonly maker: string;
  readonly description: string;
  readonly label: Nameplate;
  /** Full-load efficiency, percent, when printed. */
  readonly efficiencyPct?: number | undefined;
  readonly powerFactor?: number | undefined;
  /** Date of manufacture, ISO `YYYY-MM-DD`; undefined when the shop does not know it. */
  readonly madeOn?: string | undefined;
  readonly priceUsd?: number | undefined;
  readonly inStock: number;
  /** Old numbers this motor is recorded to replace, as written in the catalogue. */
  readonly replaces: readonly string[];
}

export const ruleNames = [
  "mount",
  "shaft",
  "total-horsepower",
  "supply",
  "phase",
  "frequency",
  "speed",
  "current",
  "duty",
  "ambient",
  "sale",
  "record",
] as const;
export type RuleName = (typeof ruleNames)[number];

export type Outcome = "holds" | "needs-work" | "rules-out" | "not-known";

/** A part or a job that a motor change needs; wording in `intents/answers/work.json` under `key`. */
export interface Work {
  readonly key: string;
  readonly values: Readonly<Record<string, string | number>>;
}

/** What one rule says of one motor. `reason` is a key of `intents/answers/reasons.json`, `values` fill its blanks. */
export interface Finding {
  readonly rule: RuleName;
  readonly outcome: Outcome;
  readonly reason: string;
  readonly values: Readonly<Record<string, string | number>>;
  /** For `not-known`: the ratings any of which would decide it, easiest first. */
  readonly needs: readonly RatingName[];
  readonly work: readonly Work[];
  /** True where the finding rests on a deduction (a face from a frame letter), not on stated words. */
  readonly inferred?: boolean;
}

/** What the rules look at besides the motor. */
export interface Question {
  readonly nameplate: Nameplate;
  readonly site: Site;
  /** Day the sale rule is judged on, ISO `YYYY-MM-DD`. */
  readonly on: string;
}

/** One rule, one file: `rules/<name>.ts`. */
export interface Rule {
  readonly name: RuleName;
  /** Deciding rules hold a verdict up while not known; supporting rules do not. */
  readonly weight: "deciding" | "supporting";
  /** Standard and clause, law, or "common practice, no source". */
  readonly source: string;
  /** Every reason key this rule may give: checked against the wording at start. */
  readonly reasons: readonly string[];
  readonly judge: (question: Question, motor: StockMotor) => Finding;
}

export type MotorVerdict = "drop-in" | "fits-with-work" | "undecided" | "no-fit";
export type OverallVerdict = "drop-in" | "fits-with-work" | "none-fits" | "undecided";

export interface JudgedMotor {
  readonly motor: StockMotor;
  readonly verdict: MotorVerdict;
  readonly findings: readonly Finding[];
}

/** A motor that is ruled out, and the one finding that says why. */
export interface Miss {
  readonly judged: JudgedMotor;
  readonly why: Finding;
}

export interface MatchResult {
  readonly verdict: OverallVerdict;
  /** Every motor that is not `no-fit`, best first. */
  readonly motors: readonly JudgedMotor[];
  /** The motors ruled out, nearest miss first; empty unless asked for. */
  readonly ruledOut: readonly JudgedMotor[];
}
