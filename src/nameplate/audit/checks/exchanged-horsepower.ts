import { type Check, shown } from "../check.ts";
import { isSeriesHp } from "../horsepower-series.ts";

/**
 * Horsepower and service factor typed for each other: the figure given as hp is none that motors are built
 * for, and the one given as service factor is. Total horsepower is the same either way.
 */
export const exchangedHorsepower: Check = {
  name: "exchanged-horsepower",
  source: "NEMA MG 1 10.32",
  reasons: ["horsepower-exchanged"],
  find: (subject) => {
    const { hp, serviceFactor } = subject.nameplate;
    if (hp === undefined || serviceFactor === undefined) return [];
    // A label that prints total horsepower under HP has a service factor of 1.
    const looksExchanged =
      !isSeriesHp(hp) && hp >= 1 && hp <= 2 && serviceFactor !== 1 && isSeriesHp(serviceFactor);
    if (!looksExchanged) return [];
    return [
      {
        ratings: ["hp", "serviceFactor"],
        reason: "horsepower-exchanged",
        values: { hp: shown(subject, "hp"), serviceFactor },
        severity: serviceFactor < 1 ? "impossible" : "doubtful",
        suggestions: [{ rating: "hp", value: serviceFactor, also: { rating: "serviceFactor", value: hp } }],
      },
    ];
  },
};
