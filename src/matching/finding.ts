import type { RatingName } from "../nameplate/vocabulary.ts";
import type { Finding, Outcome, RuleName, Work } from "./types.ts";

/** What a finding says besides its outcome and its case. */
export interface FindingDetails {
  readonly values?: Finding["values"];
  readonly needs?: readonly RatingName[];
  readonly work?: readonly Work[];
  readonly inferred?: boolean;
}

type Say<Case extends string> = (found: Case, details?: FindingDetails) => Finding;

/** The four ways a rule can speak, limited to the cases it declares. */
export interface FindingsOf<Case extends string> {
  /** The reason keys of all cases. */
  readonly reasons: readonly string[];
  readonly holds: Say<Case>;
  readonly needsWork: Say<Case>;
  readonly rulesOut: Say<Case>;
  readonly notKnown: Say<Case>;
}

const nothing: readonly never[] = [];
const noValues = {};

/** Gives a rule its vocabulary: the case `same` of the rule `mount` has the reason key `mount.same`. */
export function findingsOf<const Case extends string>(
  rule: RuleName,
  cases: readonly Case[],
): FindingsOf<Case> {
  const keys = Object.fromEntries(cases.map((found) => [found, `${rule}.${found}`])) as Record<Case, string>;
  const say =
    (outcome: Outcome): Say<Case> =>
    (found, { values = noValues, needs = nothing, work = nothing, inferred = false } = {}) => ({
      rule,
      outcome,
      reason: keys[found],
      values,
      needs,
      work,
      inferred,
    });
  return {
    reasons: Object.values(keys),
    holds: say("holds"),
    needsWork: say("needs-work"),
    rulesOut: say("rules-out"),
    notKnown: say("not-known"),
  };
}

/** The ratings of `names` that the customer has not stated, in the given order. */
export function missing(
  stated: Readonly<Record<string, unknown>>,
  names: readonly RatingName[],
): readonly RatingName[] {
  return names.filter((name) => stated[name] === undefined);
}

/** A figure as people write it, to a hundredth. */
export function figure(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Room for binary fractions: 1.5 x 1.1 must count as 1.65. */
export const tolerance = 1e-9;
