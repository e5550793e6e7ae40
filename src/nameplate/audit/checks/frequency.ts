import { blanks, type Check, shown } from "../check.ts";

/** Voltages of 60 Hz countries only. Source: NEMA MG 1 10.30 against IEC 60038. */
const only60Hz: ReadonlySet<number> = new Set([115, 120, 208, 277, 460, 480]);

/** Mains are 50 or 60 Hz, and some voltages belong to 60 Hz alone. */
export const frequency: Check = {
  name: "frequency",
  source: "IEC 60196; IEC 60038; NEMA MG 1 10.30",
  reasons: ["frequency-unusual", "frequency-volts"],
  find: (subject) => {
    const { hz, volts = [] } = subject.nameplate;
    if (!hz) return [];
    const odd = hz.some((figure) => figure !== 50 && figure !== 60);
    const foreign = !hz.includes(60) && volts.some((figure) => only60Hz.has(figure));
    if (!odd && !foreign) return [];
    return [
      {
        ratings: ["hz"],
        reason: odd ? "frequency-unusual" : "frequency-volts",
        values: { ...blanks(subject, "hz"), volts: shown(subject, "volts") },
        severity: odd ? "impossible" : "doubtful",
      },
    ];
  },
};
