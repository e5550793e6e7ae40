import { withinVoltageBand } from "../../../engineering/voltage.ts";
import { type Check, shown } from "../check.ts";
import { voltAmpPairs } from "../volt-amp-pairs.ts";

/** A breaker carries its own rating; a motor that draws a good deal more would trip it within minutes. */
const leastShareOfAmps = 0.85;

/** A breaker far below the motor's amps at the wired supply (at the highest label voltage when not stated). */
export const breakerSize: Check = {
  name: "breaker-size",
  source:
    "NFPA 70 (NEC) 430.22(A) and 430.52 ask for far more; that it would trip: common practice, no source",
  reasons: ["breaker-small"],
  find: (subject) => {
    const { breakerAmps, supplyVolts } = subject.site;
    if (breakerAmps === undefined) return [];
    const kind = subject.nameplate.amps ? ("amps" as const) : ("serviceFactorAmps" as const);
    const pairs = voltAmpPairs(subject.nameplate, kind) ?? [];
    const atSupply = pairs.filter(
      ({ volts }) =>
        supplyVolts === undefined || volts.some((rated) => withinVoltageBand(rated, supplyVolts)),
    );
    const leastAmps = Math.min(...atSupply.map(({ amps }) => amps));
    if (atSupply.length === 0 || breakerAmps >= leastAmps * leastShareOfAmps) return [];
    return [
      {
        ratings: ["breakerAmps", kind],
        reason: "breaker-small",
        values: { breaker: shown(subject, "breakerAmps"), amps: shown(subject, kind) },
        severity: "doubtful",
      },
    ];
  },
};
