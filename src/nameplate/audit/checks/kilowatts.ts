import { labelTotalHp } from "../../../engineering/power.ts";
import { hpFromWatts } from "../../../engineering/units.ts";
import { type Check, shown } from "../check.ts";

/** Preferred kW figures are rounded from hp: 0.18 kW for 1/4 hp is off by 3.5 %. */
const tolerance = 0.06;

/** Output in kW must be the horsepower, or the total horsepower, in other words. */
export const kilowatts: Check = {
  name: "kilowatts",
  source: "NIST SP 811 (1 hp = 745.7 W)",
  reasons: ["kilowatts-differ"],
  find: (subject) => {
    const { kw, hp } = subject.nameplate;
    const powers = [hp, labelTotalHp(subject.nameplate)].filter((power) => power !== undefined);
    if (kw === undefined || powers.length === 0) return [];
    const kwInHp = hpFromWatts(kw * 1000);
    if (powers.some((power) => Math.abs(kwInHp / power - 1) <= tolerance)) return [];
    const doubted = hp === undefined ? ("totalHp" as const) : ("hp" as const);
    return [
      {
        ratings: ["kw", doubted],
        reason: "kilowatts-differ",
        values: {
          kw: shown(subject, "kw"),
          kwInHp: `${Math.round(kwInHp * 100) / 100} hp`,
          hp: shown(subject, doubted),
        },
        severity: "doubtful",
      },
    ];
  },
};
