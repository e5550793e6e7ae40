import { blanks, type Check } from "../check.ts";

/**
 * Rated voltages of small motors at 50 and 60 Hz. Source: NEMA MG 1 10.30 and IEC 60038 for the standard
 * ones; the nominal supplies that labels also print: common practice, no source.
 */
const ratedVoltages: ReadonlySet<number> = new Set([
  100, 110, 115, 120, 127, 200, 208, 220, 230, 240, 277, 380, 400, 415, 440, 460, 480,
]);

/** Label volts that no supply has: 203 for 230, 175 for 115. */
export const ratedVolts: Check = {
  name: "rated-volts",
  source: "NEMA MG 1 10.30; IEC 60038",
  reasons: ["volts-unusual"],
  find: (subject) => {
    const odd = subject.nameplate.volts?.find((volts) => !ratedVoltages.has(volts));
    if (odd === undefined) return [];
    return [
      {
        ratings: ["volts"],
        reason: "volts-unusual",
        values: { ...blanks(subject, "volts"), odd },
        severity: "doubtful",
      },
    ];
  },
};
