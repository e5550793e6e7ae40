import { blanks, type Check, shown } from "../check.ts";
import { type VoltAmpPair, voltAmpPairs } from "../volt-amp-pairs.ts";

/** Half a step of what the label rounds to: half amperes when every figure is one, else tenths. */
function roundingAmps(amps: readonly number[]): number {
  return amps.every((value) => Number.isInteger(value * 2)) ? 0.25 : 0.05;
}

/** Allowed difference of the products volts x amps, as a fraction. */
const connectionTolerance = 0.04;
/** 208 against 230 V: the current need not rise fully with the falling voltage, so a wide band. */
const rangeTolerance = 0.16;

function agree(a: VoltAmpPair, b: VoltAmpPair): boolean {
  const halfStep = roundingAmps([a.amps, b.amps]);
  return a.volts.some((voltsA) =>
    b.volts.some((voltsB) => {
      const near = Math.max(voltsA, voltsB) / Math.min(voltsA, voltsB) < 1.3;
      const [va, vb] = [voltsA * a.amps, voltsB * b.amps];
      const rounding = halfStep * Math.max(voltsA, voltsB);
      return Math.abs(va - vb) <= (near ? rangeTolerance : connectionTolerance) * Math.min(va, vb) + rounding;
    }),
  );
}

/** Amps of a dual-voltage label stand in the inverse ratio of the volts: 115/230 V, 19.2/9.6 A. */
export const ampsRatio: Check = {
  name: "amps-ratio",
  source: "equal apparent power at either connection; NFPA 70 (NEC) Table 430.248 shows the same ratio",
  reasons: ["amps-ratio"],
  find: (subject) =>
    (["amps", "serviceFactorAmps"] as const).flatMap((kind) => {
      const pairs = voltAmpPairs(subject.nameplate, kind) ?? [];
      // Against the highest voltage: of 115/208-230 V the 208 V figure stands in no fixed ratio to the first.
      const reference = pairs.toSorted((a, b) => Math.max(...b.volts) - Math.max(...a.volts))[0];
      if (!reference || pairs.every((pair) => agree(reference, pair))) return [];
      return [
        {
          ratings: [kind, "volts"],
          reason: "amps-ratio",
          values: { ...blanks(subject, kind), volts: shown(subject, "volts") },
          severity: "impossible",
        },
      ];
    }),
};
