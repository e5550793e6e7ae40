import { impliedEfficiencyTimesPowerFactor, labelTotalHp } from "../../../engineering/power.ts";
import type { RatingName } from "../../vocabulary.ts";
import { type Check, type Finding, type Proposal, type Subject, shown } from "../check.ts";
import { loadRange, phaseForPower } from "../load.ts";
import { voltAmpPairs } from "../volt-amp-pairs.ts";

/**
 * Efficiency times power factor that a pool motor's label can show. Above 1 more power comes out than goes
 * in. The NEC tables imply 0.33 at 1/2 hp, the best drives reach 0.88; 208-230 V labels print one figure for both. Amps printed alone are mostly
 * service-factor amps; if they are full-load amps after all, total hp looks too good for them by the rise of
 * current between the two, so 1.2 is allowed there.
 */
export const balanceBand = { low: 0.3, high: 0.9, highForTotalHp: 1.2, impossible: 1 } as const;

/** The motor runs on one voltage, its amps were typed from the other: twice or half. */
function amperesOfOtherVoltage(subject: Subject, kind: "amps" | "serviceFactorAmps"): Proposal[] {
  const amps = subject.nameplate[kind];
  if (amps?.length !== 1) return [];
  return [0.5, 2].map((factor) => ({
    rating: kind,
    value: amps.map((value) => Math.round(value * factor * 10) / 10),
  }));
}

function suspects(subject: Subject, kind: "amps" | "serviceFactorAmps"): RatingName[] {
  const { hp, totalHp, serviceFactor, kw } = subject.nameplate;
  const corroborated = hp !== undefined && totalHp !== undefined && serviceFactor !== undefined;
  const power: RatingName[] = hp !== undefined ? ["hp"] : totalHp !== undefined ? ["totalHp"] : ["kw"];
  const factor: RatingName[] = serviceFactor === undefined ? [] : ["serviceFactor"];
  const agreeingAmps = (subject.nameplate[kind]?.length ?? 0) > 1;
  const rest: RatingName[] = kw !== undefined && hp !== undefined ? ["kw"] : [];
  return agreeingAmps && !corroborated
    ? [...power, kind, ...factor, "volts", ...rest]
    : [kind, ...power, ...factor, "volts", ...rest];
}

function judge(subject: Subject, kind: "amps" | "serviceFactorAmps"): Finding | undefined {
  const label = subject.nameplate;
  const load = loadRange(label, kind);
  if (!load) return undefined;
  const phase = phaseForPower(label);
  const standsAlone = label.serviceFactorAmps === undefined && labelTotalHp(label) !== undefined;
  for (const pair of voltAmpPairs(label, kind) ?? []) {
    const at = (hp: number) =>
      pair.volts.map((volts) => impliedEfficiencyTimesPowerFactor(hp, volts, pair.amps, phase));
    const [least, most] = [at(load.lowHp), at(load.highHp)];
    const tooStrong =
      Math.min(...least) > balanceBand.high ||
      (standsAlone && Math.min(...most) > balanceBand.highForTotalHp);
    if (!tooStrong && Math.max(...most) >= balanceBand.low) continue;
    return {
      ratings: suspects(subject, kind),
      reason: tooStrong ? "power-too-strong" : "power-too-weak",
      values: {
        volts: shown(subject, "volts"),
        amps: shown(subject, kind),
        hp: shown(subject, "hp") || shown(subject, "totalHp") || shown(subject, "kw"),
      },
      severity: Math.min(...least) > balanceBand.impossible ? "impossible" : "doubtful",
      suggestions: amperesOfOtherVoltage(subject, kind),
    };
  }
  return undefined;
}

/** Power out against power in, for each volt and amp pair of the label. */
export const powerBalance: Check = {
  name: "power-balance",
  source: "conservation of energy; NFPA 70 (NEC) Table 430.248 for the lower limit",
  reasons: ["power-too-strong", "power-too-weak"],
  find: (subject) => (["serviceFactorAmps", "amps"] as const).flatMap((kind) => judge(subject, kind) ?? []),
};
