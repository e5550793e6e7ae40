import { supplySystems } from "../../engineering/voltage.ts";
import { checks } from "../../nameplate/audit.ts";
import { isNameplateRating, type Nameplate, type RatingName, type Site } from "../../nameplate/vocabulary.ts";
import { faceOf, phaseOf, ratedHpOf, shaftOf, totalHpOf } from "../deduced.ts";
import { figure } from "../finding.ts";
import type { RatedRule } from "../stock-index/rule-inputs.ts";
import type { StockIndex } from "../stock-index.ts";
import { possibleSupplies } from "../supplies.ts";
import type { Question } from "../types.ts";
import {
  openMind,
  supplyShare,
  threePhaseShare,
  usualFrames,
  usualHp,
  usualMounts,
  usualRpm,
  usualServiceFactors,
  usualVolts,
} from "./assumptions.ts";
import type { Part } from "./ladder.ts";
import { partKindsOf, rulesOf } from "./part-kinds.ts";
import type { Survivor } from "./survivors.ts";

/** Values that the ratings of one part may turn out to have, and how likely they are together. */
export interface Possibility {
  readonly values: Nameplate & Site;
  readonly likelihood: number;
}

/** Belief before it is shared out: how many look-alikes stand behind a set of values. */
interface Candidate {
  readonly values: Nameplate & Site;
  readonly alike: number;
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
        ? frames(question, stocked("mount"))
        : faces(asked, question, stocked("mount"));
    case "power":
      return powers(asked, question, stocked("total-horsepower"));
    case "electrics":
      return electrics(asked, question, stocked("phase"));
    case "speed":
      return asked.includes("rpm") ? speeds(question, stocked("speed")) : speedKinds(question);
  }
}

interface Stocked {
  readonly label: Nameplate;
  readonly alike: number;
}

function frames({ nameplate }: Question, stocked: readonly Stocked[]): readonly Candidate[] {
  const fromStock = stocked.flatMap(({ label, alike }) =>
    label.frame === undefined ? [] : [{ values: { frame: label.frame }, alike }],
  );
  const all = [...fromStock, ...usualFrames.map((frame) => ({ values: { frame }, alike: 0 }))];
  const fits = all.filter(({ values: { frame } }) => {
    const face = faceOf({ frame })?.value;
    const shaft = shaftOf({ frame })?.value;
    const faceFits =
      face === undefined ||
      nameplate.flange === undefined ||
      face === nameplate.flange ||
      (face === "square" && nameplate.flange === "through-bolt");
    return faceFits && (shaft === undefined || nameplate.shaft === undefined || shaft === nameplate.shaft);
  });
  return fits.length > 0 ? fits : all;
}

function faces(asked: readonly RatingName[], { nameplate }: Question, stocked: readonly Stocked[]) {
  const known = { flange: faceOf(nameplate)?.value, shaft: shaftOf(nameplate)?.value };
  const mounts = [
    ...stocked.map(({ label, alike }) => ({
      flange: faceOf(label)?.value,
      shaft: shaftOf(label)?.value,
      alike,
    })),
    ...usualMounts.map((mount) => ({ ...mount, alike: 0 })),
  ];
  const fits = mounts.filter(
    ({ flange, shaft }) =>
      (known.flange === undefined || flange === known.flange) &&
      (known.shaft === undefined || shaft === known.shaft),
  );
  return (fits.length > 0 ? fits : mounts).flatMap(({ flange, shaft, alike }): Candidate[] =>
    flange === undefined || shaft === undefined ? [] : [{ values: only(asked, { flange, shaft }), alike }],
  );
}

function powers(asked: readonly RatingName[], { nameplate }: Question, stocked: readonly Stocked[]) {
  const known = { hp: ratedHpOf(nameplate)?.value, serviceFactor: nameplate.serviceFactor };
  const pairs = [
    ...stocked.flatMap(({ label, alike }) => {
      const hp = ratedHpOf(label)?.value;
      const total = totalHpOf(label)?.value;
      if (hp === undefined || total === undefined) return [];
      return [{ hp, serviceFactor: label.serviceFactor ?? figure(total / hp), alike }];
    }),
    ...usualHp.flatMap((hp) => usualServiceFactors.map((serviceFactor) => ({ hp, serviceFactor, alike: 0 }))),
  ];
  const fits = pairs.filter(
    ({ hp, serviceFactor }) =>
      (known.hp === undefined || hp === known.hp) &&
      (known.serviceFactor === undefined || serviceFactor === known.serviceFactor),
  );
  // A size the trade does not know: any service factor may stand on it.
  const loose = pairs.map((pair) => ({
    ...pair,
    hp: known.hp ?? pair.hp,
    serviceFactor: known.serviceFactor ?? pair.serviceFactor,
  }));
  return (fits.length > 1 ? fits : loose).map(
    ({ hp, serviceFactor, alike }): Candidate => ({
      values: only(asked, {
        hp,
        serviceFactor,
        totalHp: figure(hp * serviceFactor),
        kw: figure(hp * 0.7457),
      }),
      alike,
    }),
  );
}

function electrics(asked: readonly RatingName[], { nameplate, site }: Question, stocked: readonly Stocked[]) {
  const plates: { volts: Nameplate["volts"]; phase: 1 | 3; alike: number }[] = [];
  const add = (volts: Nameplate["volts"], phase: 1 | 3, alike: number) => {
    const same = (a: Nameplate["volts"], b: Nameplate["volts"]) => a?.join() === b?.join();
    if (nameplate.volts && !same(nameplate.volts, volts)) return;
    if (nameplate.phase !== undefined && nameplate.phase !== phase) return;
    if (phase === 3 && phaseOf({ volts }) === 1) return;
    plates.push({ volts, phase, alike });
  };
  for (const { label, alike } of stocked) {
    const phase = phaseOf(label);
    if (label.volts) add(label.volts, phase ?? 1, alike);
  }
  const stockedAlike = plates.reduce((sum, { alike }) => sum + alike, 0);
  for (const volts of nameplate.volts ? [nameplate.volts] : usualVolts) {
    add([...volts], 1, 0);
    add([...volts], 3, stockedAlike * threePhaseShare);
  }

  return plates.flatMap(({ volts, phase, alike }): Candidate[] => {
    if (site.supplyVolts !== undefined) return [{ values: only(asked, { volts, phase }), alike }];
    const plate = { nameplate: { volts, phase }, site, on: "" };
    const allowed = possibleSupplies(plate).volts.filter((system) => phase === 1 || system !== 120);
    const systems =
      allowed.length > 0 ? allowed : supplySystems.filter((system) => system !== 480 || phase === 3);
    const shares = systems.reduce((sum, system) => sum + supplyShare(system), 0);
    return systems.map((supplyVolts) => ({
      values: only(asked, { volts, phase, supplyVolts, breakerPoles: polesFor(supplyVolts, phase) }),
      alike: (alike * supplyShare(supplyVolts)) / shares,
    }));
  });
}

/** Poles of the breaker of a circuit: one for 120 V, two for 208 and 240 V, three for three-phase (common practice). */
function polesFor(supplyVolts: number, phase: 1 | 3): 1 | 2 | 3 {
  if (phase === 3) return 3;
  return supplyVolts < 150 ? 1 : 2;
}

function speeds({ nameplate: { speedKind } }: Question, stocked: readonly Stocked[]): readonly Candidate[] {
  const all = [
    ...stocked.flatMap(({ label: { rpm }, alike }) => (rpm ? [{ values: { rpm }, alike }] : [])),
    ...usualRpm.map((rpm) => ({ values: { rpm: [...rpm] }, alike: 0 })),
  ];
  const figures = { single: 1, two: 2, variable: undefined };
  const wanted = speedKind && figures[speedKind];
  const fits = all.filter(({ values: { rpm } }) => wanted === undefined || rpm.length === wanted);
  return fits.length > 0 ? fits : all;
}

function speedKinds({ nameplate: { rpm } }: Question): readonly Candidate[] {
  const kinds =
    rpm && rpm.length > 2 ? (["two", "variable"] as const) : (["single", "two", "variable"] as const);
  return kinds.map((speedKind) => ({ values: { speedKind }, alike: 1 }));
}

function only(asked: readonly RatingName[], values: Nameplate & Site): Nameplate & Site {
  return Object.fromEntries(
    Object.entries(values).filter(
      ([rating, value]) => value !== undefined && (asked as readonly string[]).includes(rating),
    ),
  );
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
