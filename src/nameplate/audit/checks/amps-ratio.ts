import type { Nameplate } from "../../vocabulary.ts";
import { blanks, type Check, shown } from "../check.ts";
import { connections, voltAmpPairs } from "../volt-amp-pairs.ts";

/** Half a step of what the label rounds to: half amperes when every figure is one, else tenths. */
function roundingAmps(amps: readonly number[]): number {
  return amps.every((value) => Number.isInteger(value * 2)) ? 0.25 : 0.05;
}

/** Allowed difference of the products volts x amps, as a fraction. */
const connectionTolerance = 0.04;
/** 208 against 230 V: the current need not rise fully with the falling voltage, so a wide band. */
const rangeTolerance = 0.16;

/** The printed figure for one voltage. */
interface Figure {
  readonly volts: number;
  readonly amps: number;
}

function agree(a: Figure, b: Figure, tolerance: number): boolean {
  const [va, vb] = [a.volts * a.amps, b.volts * b.amps];
  const rounding = roundingAmps([a.amps, b.amps]) * Math.max(a.volts, b.volts);
  return Math.abs(va - vb) <= tolerance * Math.min(va, vb) + rounding;
}

/** Figures of one connection by its highest voltage, the other voltages of the range behind it. */
function byConnection(label: Nameplate, kind: "amps" | "serviceFactorAmps"): Figure[][] {
  const figures = (voltAmpPairs(label, kind) ?? []).map(({ volts, amps }) => ({
    volts: Math.max(...volts),
    amps,
  }));
  return connections(figures.map(({ volts }) => volts)).map((group) =>
    figures.filter(({ volts }) => group.includes(volts)).toSorted((a, b) => b.volts - a.volts),
  );
}

function ratioHolds(figures: Figure[][]): boolean {
  const tops = figures.flatMap((group) => group.slice(0, 1));
  const [first] = tops;
  return (
    (first === undefined || tops.every((top) => agree(first, top, connectionTolerance))) &&
    figures.every((group) => group.every((figure) => agree(group[0] ?? figure, figure, rangeTolerance)))
  );
}

/** Amps of a dual-voltage label stand in the inverse ratio of the volts: 115/230 V, 19.2/9.6 A. */
export const ampsRatio: Check = {
  name: "amps-ratio",
  source: "equal apparent power at either connection; NFPA 70 (NEC) Table 430.248 shows the same ratio",
  reasons: ["amps-ratio"],
  find: (subject) =>
    (["amps", "serviceFactorAmps"] as const)
      .filter((kind) => !ratioHolds(byConnection(subject.nameplate, kind)))
      .map((kind) => ({
        ratings: [kind, "volts"],
        reason: "amps-ratio",
        values: { ...blanks(subject, kind), volts: shown(subject, "volts") },
        severity: "impossible",
      })),
};
