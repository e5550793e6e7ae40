import { blanks, type Check, shown } from "../check.ts";
import { isTwoSpeed, voltAmpPairs } from "../volt-amp-pairs.ts";

/** Amps go with volts one to one, or one for each connection; more than that needs two speeds. */
export const ampsCount: Check = {
  name: "amps-count",
  source: "common practice, no source",
  reasons: ["amps-count"],
  find: (subject) => {
    const label = subject.nameplate;
    if (!label.volts || isTwoSpeed(label)) return [];
    return (["amps", "serviceFactorAmps"] as const)
      .filter((kind) => label[kind] && !voltAmpPairs(label, kind))
      .map((kind) => ({
        ratings: [kind, "volts"],
        reason: "amps-count",
        values: { ...blanks(subject, kind), volts: shown(subject, "volts") },
        severity: "doubtful",
      }));
  },
};
