import { tableCurrentAmps } from "../../../engineering/circuits.ts";
import { impliedEfficiencyTimesPowerFactor } from "../../../engineering/power.ts";
import { type Check, type Finding, type Subject, shown } from "../check.ts";
import { loadRange, phaseForPower } from "../load.ts";
import { voltAmpPairs } from "../volt-amp-pairs.ts";

/** Label amps up to this multiple of the table current for the load they were measured at are never doubted. */
export const tableCurrentLimit = 1.1;
/**
 * Efficiency times power factor that even old pool motors keep above (common practice, no source): bigger
 * ones may pass the table, but not with less than this.
 */
export const oldMotorProduct = 0.43;

function judge(subject: Subject, kind: "amps" | "serviceFactorAmps"): Finding | undefined {
  const label = subject.nameplate;
  const load = loadRange(label, kind);
  if (!load) return undefined;
  const phase = phaseForPower(label);
  for (const { volts, amps } of voltAmpPairs(label, kind) ?? []) {
    const limits = volts.flatMap((v) => tableCurrentAmps(load.highHp, v, phase) ?? []);
    const table = Math.max(...limits);
    if (limits.length < volts.length || amps <= table * tableCurrentLimit) continue;
    const product = (v: number) => impliedEfficiencyTimesPowerFactor(load.highHp, v, amps, phase);
    if (volts.some((v) => product(v) >= oldMotorProduct)) continue;
    return {
      ratings: [kind, label.hp === undefined ? "totalHp" : "hp"],
      reason: "table-current-above",
      values: {
        amps: shown(subject, kind),
        volts: shown(subject, "volts"),
        hp: shown(subject, "hp") || shown(subject, "totalHp"),
        table: `${Math.round(table * 10) / 10} A`,
      },
      severity: "doubtful",
    };
  }
  return undefined;
}

/**
 * Label amps against the NEC table current for the load. The table is set high on purpose, so a label well
 * above it is odd; how far below it a label may lie, the power balance knows better.
 */
export const tableCurrent: Check = {
  name: "table-current",
  source: "NFPA 70 (NEC) Tables 430.248 and 430.250",
  reasons: ["table-current-above"],
  find: (subject) => (["serviceFactorAmps", "amps"] as const).flatMap((kind) => judge(subject, kind) ?? []),
};
