import { type Check, shown } from "../check.ts";

/** In North America one pole gives 120 V, two poles 208 or 240 V. Common practice, no source. */
const servedByOnePole = (volts: number): boolean => volts <= 132;

/** Breaker poles against the wired supply, or against label volts that leave no choice. */
export const breakerPoles: Check = {
  name: "breaker-poles",
  source: "common practice, no source",
  reasons: ["breaker-poles-supply", "breaker-poles-volts"],
  find: (subject) => {
    const { breakerPoles: poles, supplyVolts } = subject.site;
    const { volts } = subject.nameplate;
    if (poles === undefined) return [];
    const fits = (value: number) => servedByOnePole(value) === (poles === 1);
    if (supplyVolts !== undefined) {
      if (fits(supplyVolts)) return [];
      return [
        {
          ratings: ["breakerPoles", "supplyVolts"],
          reason: "breaker-poles-supply",
          values: { poles, supply: shown(subject, "supplyVolts") },
          severity: "doubtful",
        },
      ];
    }
    if (!volts || volts.some(fits)) return [];
    return [
      {
        ratings: ["breakerPoles", "volts"],
        reason: "breaker-poles-volts",
        values: { poles, volts: shown(subject, "volts") },
        severity: "doubtful",
      },
    ];
  },
};
