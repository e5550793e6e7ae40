import { isStandardBreaker } from "../../../engineering/circuits.ts";
import { withinVoltageBand } from "../../../engineering/voltage.ts";
import { type Check, type Finding, type Subject, shown } from "../check.ts";
import { voltAmpPairs } from "../volt-amp-pairs.ts";

/** A breaker carries its own rating; a motor that draws a good deal more would trip it within minutes. */
const leastShareOfAmps = 0.85;

/** Above this a breaker feeds more than one pump motor. Common practice, no source. */
const largestPumpBreakerAmps = 60;

function tooSmall(subject: Subject): Finding | undefined {
  const { breakerAmps, supplyVolts } = subject.site;
  if (breakerAmps === undefined) return undefined;
  const kind = subject.nameplate.amps ? ("amps" as const) : ("serviceFactorAmps" as const);
  const pairs = voltAmpPairs(subject.nameplate, kind) ?? [];
  const atSupply = pairs.filter(
    ({ volts }) => supplyVolts === undefined || volts.some((rated) => withinVoltageBand(rated, supplyVolts)),
  );
  const leastAmps = Math.min(...atSupply.map(({ amps }) => amps));
  if (atSupply.length === 0 || breakerAmps >= leastAmps * leastShareOfAmps) return undefined;
  return {
    ratings: ["breakerAmps", kind],
    reason: "breaker-small",
    values: { breaker: shown(subject, "breakerAmps"), amps: shown(subject, kind) },
    severity: "doubtful",
  };
}

function oddSize(subject: Subject): Finding | undefined {
  const { breakerAmps } = subject.site;
  if (breakerAmps === undefined) return undefined;
  const large = breakerAmps > largestPumpBreakerAmps;
  if (!large && isStandardBreaker(breakerAmps)) return undefined;
  return {
    ratings: ["breakerAmps"],
    reason: large ? "breaker-large" : "breaker-unusual",
    values: { breaker: shown(subject, "breakerAmps") },
    severity: "doubtful",
  };
}

/**
 * A breaker far below the motor's amps at the wired supply (at the highest label voltage when not stated), or
 * one so large that it must be the main or a sub-panel's, or of a size that is not made.
 */
export const breakerSize: Check = {
  name: "breaker-size",
  source:
    "NFPA 70 (NEC) 430.22(A), 430.52 for what a motor needs; the limits here: common practice, no source",
  reasons: ["breaker-small", "breaker-large", "breaker-unusual"],
  find: (subject) => [tooSmall(subject), oddSize(subject)].filter((finding) => finding !== undefined),
};
