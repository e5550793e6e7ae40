import { totalHorsepower as product } from "../../../engineering/power.ts";
import { type Check, shown } from "../check.ts";
import { isSeriesHp } from "../horsepower-series.ts";

/** Labels round or cut total horsepower to two decimals and print fractions as .33: this much may be off. */
const tolerance = (totalHp: number): number => 0.02 + 0.015 * totalHp;

/** A printed total horsepower must be hp x service factor. */
export const totalHorsepower: Check = {
  name: "total-horsepower",
  source: "10 CFR 431.483 by reference to UL 1004-10",
  reasons: ["total-horsepower-differs"],
  find: (subject) => {
    const { hp, serviceFactor, totalHp } = subject.nameplate;
    if (hp === undefined || serviceFactor === undefined || totalHp === undefined) return [];
    const expected = product(hp, serviceFactor);
    if (Math.abs(expected - totalHp) <= tolerance(totalHp)) return [];
    return [
      {
        ratings: isSeriesHp(hp) ? ["totalHp", "serviceFactor", "hp"] : ["hp", "totalHp", "serviceFactor"],
        reason: "total-horsepower-differs",
        values: {
          hp: shown(subject, "hp"),
          serviceFactor,
          expected: `${Math.round(expected * 100) / 100} hp`,
          totalHp: shown(subject, "totalHp"),
        },
        severity: "impossible",
      },
    ];
  },
};
