import { isInsulationClass } from "../../../engineering/insulation.ts";
import { blanks, type Check } from "../check.ts";

/** Insulation is class A, B, F or H. */
export const insulation: Check = {
  name: "insulation",
  source: "IEC 60085; NEMA MG 1 12.42",
  reasons: ["insulation-unknown"],
  find: (subject) => {
    const { insulationClass } = subject.nameplate;
    if (insulationClass === undefined || isInsulationClass(insulationClass)) return [];
    return [
      {
        ratings: ["insulationClass"],
        reason: "insulation-unknown",
        values: blanks(subject, "insulationClass"),
        severity: "doubtful",
      },
    ];
  },
};
