import { withinVoltageBand } from "../../../engineering/voltage.ts";
import { type Check, shown } from "../check.ts";

/** The old motor ran on the wired supply, so one of its rated voltages must serve it. */
export const supply: Check = {
  name: "supply",
  source: "NEMA MG 1 12.44",
  reasons: ["supply-differs"],
  find: (subject) => {
    const { supplyVolts } = subject.site;
    const { volts } = subject.nameplate;
    if (supplyVolts === undefined || !volts) return [];
    if (volts.some((rated) => withinVoltageBand(rated, supplyVolts))) return [];
    return [
      {
        ratings: ["supplyVolts", "volts"],
        reason: "supply-differs",
        values: { supply: shown(subject, "supplyVolts"), volts: shown(subject, "volts") },
        severity: "doubtful",
      },
    ];
  },
};
