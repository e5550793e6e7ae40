import { blanks, type Check } from "../check.ts";
import { isSeriesHp } from "../horsepower-series.ts";

/**
 * Horsepower that motors are not built for (5.1, 0.57), where a service factor shows that it is not a total.
 * Variable-speed labels and those with a service factor of 1 print odd totals under HP and are left alone.
 */
export const usualHorsepower: Check = {
  name: "usual-horsepower",
  source: "NEMA MG 1 10.32; common practice",
  reasons: ["horsepower-unusual"],
  find: (subject) => {
    const { hp, serviceFactor, speedKind } = subject.nameplate;
    if (hp === undefined || serviceFactor === undefined || serviceFactor <= 1) return [];
    if (speedKind === "variable" || isSeriesHp(hp)) return [];
    return [
      { ratings: ["hp"], reason: "horsepower-unusual", values: blanks(subject, "hp"), severity: "doubtful" },
    ];
  },
};
