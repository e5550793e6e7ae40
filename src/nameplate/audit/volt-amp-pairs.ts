import type { Nameplate } from "../vocabulary.ts";

/** One printed current with the voltages it may stand for (208-230 V share one figure on many labels). */
export interface VoltAmpPair {
  readonly volts: readonly number[];
  readonly amps: number;
}

/** True when the two are one voltage range (208-230), not two connections (115/230). */
function sameConnection(a: number, b: number): boolean {
  return Math.max(a, b) / Math.min(a, b) < 1.3;
}

/** Label volts grouped by connection, label order kept: 115/208-230 gives [115] and [208, 230]. */
export function connections(volts: readonly number[]): number[][] {
  const groups: number[][] = [];
  for (const value of volts) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && sameConnection(last[0], value)) last.push(value);
    else groups.push([value]);
  }
  return groups;
}

/**
 * True when the label tells of two speeds, in words or in its rpm list. 2850/3450 is one speed at 50 and 60 Hz;
 * two windings stand at least 3 to 2 apart (common practice, no source).
 */
export function isTwoSpeed({ speedKind, rpm }: Nameplate): boolean {
  if (speedKind !== undefined) return speedKind === "two";
  return rpm?.length === 2 && Math.max(...rpm) >= 1.4 * Math.min(...rpm);
}

/**
 * Which printed current belongs to which voltage. One to one where the counts agree; one figure for each
 * connection otherwise; of a two-speed motor on one connection only the top speed's current. A single figure
 * on a dual-voltage label may belong to any of its voltages. Undefined when the counts cannot be explained.
 */
export function voltAmpPairs(
  label: Nameplate,
  kind: "amps" | "serviceFactorAmps",
): VoltAmpPair[] | undefined {
  const { volts } = label;
  const amps = label[kind];
  if (!volts || !amps) return undefined;
  const groups = connections(volts);
  if (isTwoSpeed(label) && groups.length === 1 && amps.length > 1) {
    return [{ volts, amps: Math.max(...amps) }];
  }
  const perAmps =
    amps.length === volts.length
      ? volts.map((value) => [value])
      : amps.length === groups.length
        ? groups
        : amps.length === 1
          ? [[...volts]]
          : undefined;
  return perAmps?.map((group, index) => ({ volts: group, amps: amps[index] ?? Number.NaN }));
}
