import { totalHpAgrees } from "../agreement.ts";
import { blanks, type Check } from "../check.ts";
import { isSeriesHp } from "../horsepower-series.ts";

/** Residential pool motors run from about 0.5 to 3 hp. Common practice, no source. */
const largestUsualHp = 3.5;
/** Where the service factor is 1, HP is the total: up to 4 is in use. Common practice, no source. */
const largestUsualTotalHp = 4;

/**
 * Horsepower that motors are not built for (5.1, 0.57), where a service factor shows that it is not a total;
 * or more than home pools have, unless a printed total horsepower bears it out. Variable-speed labels and those
 * with a service factor of 1 print odd totals under HP and are left alone.
 */
export const usualHorsepower: Check = {
  name: "usual-horsepower",
  source: "NEMA MG 1 10.32; common practice",
  reasons: ["horsepower-unusual", "horsepower-large"],
  find: (subject) => {
    const { hp, serviceFactor, speedKind } = subject.nameplate;
    if (hp === undefined || speedKind === "variable") return [];
    const limit = serviceFactor === 1 ? largestUsualTotalHp : largestUsualHp;
    const large = hp > limit && !totalHpAgrees(subject.nameplate);
    const odd = serviceFactor !== undefined && serviceFactor > 1 && !isSeriesHp(hp);
    if (!large && !odd) return [];
    return [
      {
        ratings: ["hp"],
        reason: large ? "horsepower-large" : "horsepower-unusual",
        values: blanks(subject, "hp"),
        severity: "doubtful",
      },
    ];
  },
};
