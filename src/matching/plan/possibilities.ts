import { checks } from "../../nameplate/audit.ts";
import { isNameplateRating, type Nameplate, type RatingName, type Site } from "../../nameplate/vocabulary.ts";
import type { RatedRule } from "../stock-index/rule-inputs.ts";
import type { StockIndex } from "../stock-index.ts";
import type { Question } from "../types.ts";
import { openMind } from "./assumptions.ts";
import type { Candidate } from "./candidates.ts";
import { electricsCandidates } from "./electrics-candidates.ts";
import {
  faceCandidates,
  frameCandidates,
  powerCandidates,
  rpmCandidates,
  speedKindCandidates,
} from "./label-candidates.ts";
import type { Part } from "./ladder.ts";
import { partKindsOf, rulesOf } from "./part-kinds.ts";
import type { Survivor } from "./survivors.ts";

/** Values that the ratings of one part may turn out to have, and how likely they are together. */
export interface Possibility {
  readonly values: Nameplate & Site;
  readonly likelihood: number;
}

/**
 * What the ratings asked for in one part may turn out to be: the values in stock and those the trade knows,
 * without those that contradict what is known. Likelihood follows the stocked motors that look like the old
 * one so far, because dead motors look like those that are sold.
 */
export function possibilitiesOf(
  part: Part,
  asked: readonly RatingName[],
  question: Question,
  index: StockIndex,
  survivors: readonly Survivor[],
): readonly Possibility[] {
  const alike = (rule: RatedRule) => alikeByKind(part, rule, index, survivors);
  const candidates = candidatesOf(part, asked, question, index, alike);
  const merged = new Map<string, Candidate>();
  for (const { values, alike: count } of candidates) {
    const key = JSON.stringify(values);
    merged.set(key, { values, alike: (merged.get(key)?.alike ?? 0) + count });
  }
  const all = [...merged.values()];
  const consistent = all.filter(({ values }) => !contradicts(question, values));
  const possible = consistent.length > 0 ? consistent : all;
  const total = possible.reduce((sum, { alike: count }) => sum + count, 0);
  return possible.map(({ values, alike: count }) => ({
    values,
    likelihood:
      total > 0 ? (1 - openMind) * (count / total) + openMind / possible.length : 1 / possible.length,
  }));
}

/** Look-alikes among the survivors for every kind that a rule tells apart. */
function alikeByKind(
  part: Part,
  rule: RatedRule,
  index: StockIndex,
  survivors: readonly Survivor[],
): readonly number[] {
  const { kinds } = partKindsOf(index)[part];
  const byPart = new Array<number>(kinds.length).fill(0);
  for (const survivor of survivors) byPart[survivor[part]] = (byPart[survivor[part]] ?? 0) + survivor.alike;
  const place = rulesOf[part].indexOf(rule);
  const byRule = new Array<number>(index.aspects[rule].samples.length).fill(0);
  for (const [kind, ofRules] of kinds.entries()) {
    const ofRule = ofRules[place] ?? 0;
    byRule[ofRule] = (byRule[ofRule] ?? 0) + (byPart[kind] ?? 0);
  }
  return byRule;
}

function candidatesOf(
  part: Part,
  asked: readonly RatingName[],
  question: Question,
  { aspects }: StockIndex,
  alike: (rule: RatedRule) => readonly number[],
): readonly Candidate[] {
  const stocked = (rule: RatedRule) => {
    const counts = alike(rule);
    return aspects[rule].samples.map(({ label }, kind) => ({ label, alike: counts[kind] ?? 0 }));
  };
  switch (part) {
    case "mount":
      return asked.includes("frame")
        ? frameCandidates(question, stocked("mount"))
        : faceCandidates(asked, question, stocked("mount"));
    case "power":
      return powerCandidates(asked, question, stocked("total-horsepower"));
    case "electrics":
      return electricsCandidates(asked, question, stocked("phase"));
    case "speed":
      return asked.includes("rpm")
        ? rpmCandidates(question, stocked("speed"))
        : speedKindCandidates(question);
  }
}

/** The question as it would be with these ratings told too. */
export function withValues({ nameplate, site, on }: Question, values: Nameplate & Site): Question {
  const told: { nameplate: Record<string, unknown>; site: Record<string, unknown> } = {
    nameplate: { ...nameplate },
    site: { ...site },
  };
  for (const [rating, value] of Object.entries(values)) {
    told[isNameplateRating(rating) ? "nameplate" : "site"][rating] = value;
  }
  return { nameplate: told.nameplate as Nameplate, site: told.site as Site, on };
}

/** True when the audit would call these values impossible beside what is known. */
function contradicts(question: Question, values: Nameplate & Site): boolean {
  const before = impossibleChecks(question);
  return impossibleChecks(withValues(question, values)).some((name) => !before.includes(name));
}

function impossibleChecks(subject: Question): readonly string[] {
  return checks
    .filter((check) => check.find(subject).some(({ severity }) => severity === "impossible"))
    .map(({ name }) => name);
}
