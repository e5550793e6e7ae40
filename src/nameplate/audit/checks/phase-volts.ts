import { type Check, shown } from "../check.ts";

/** Three-phase motors start at 200 V; small single-phase motors end at 277 V. Source: NEMA MG 1 10.30. */
export const phaseVolts: Check = {
  name: "phase-volts",
  source: "NEMA MG 1 10.30",
  reasons: ["phase-volts-three", "phase-volts-single"],
  find: (subject) => {
    const { phase, volts } = subject.nameplate;
    if (phase === undefined || !volts) return [];
    const wrong = phase === 3 ? volts.some((v) => v <= 127) : volts.every((v) => v > 277);
    if (!wrong) return [];
    return [
      {
        ratings: ["phase", "volts"],
        reason: phase === 3 ? "phase-volts-three" : "phase-volts-single",
        values: { volts: shown(subject, "volts") },
        severity: "doubtful",
      },
    ];
  },
};
