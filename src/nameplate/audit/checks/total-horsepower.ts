import { totalHorsepower as product } from "../../../engineering/power.ts";
import { totalHpAgrees } from "../agreement.ts";
import { type Check, type Finding, type Subject, shown } from "../check.ts";
import { isSeriesHp } from "../horsepower-series.ts";

/** Horsepower behind a printed total and service factor may miss the series by this fraction (label rounding). */
const seriesTolerance = 0.025;

function differs(subject: Subject): Finding | undefined {
  const { hp, serviceFactor, totalHp } = subject.nameplate;
  if (hp === undefined || serviceFactor === undefined || totalHp === undefined) return undefined;
  if (totalHpAgrees(subject.nameplate)) return undefined;
  return {
    ratings: isSeriesHp(hp) ? ["totalHp", "serviceFactor", "hp"] : ["hp", "totalHp", "serviceFactor"],
    reason: "total-horsepower-differs",
    values: {
      hp: shown(subject, "hp"),
      serviceFactor,
      expected: `${Math.round(product(hp, serviceFactor) * 100) / 100} hp`,
      totalHp: shown(subject, "totalHp"),
    },
    severity: "impossible",
  };
}

function impliesOddHp(subject: Subject): Finding | undefined {
  const { hp, serviceFactor, totalHp, speedKind } = subject.nameplate;
  if (hp !== undefined || serviceFactor === undefined || totalHp === undefined) return undefined;
  if (serviceFactor <= 1 || speedKind === "variable") return undefined;
  const implied = totalHp / serviceFactor;
  if (isSeriesHp(implied, seriesTolerance)) return undefined;
  return {
    ratings: ["totalHp", "serviceFactor"],
    reason: "total-horsepower-odd",
    values: {
      serviceFactor,
      totalHp: shown(subject, "totalHp"),
      implied: `${Math.round(implied * 100) / 100} hp`,
    },
    severity: "doubtful",
  };
}

/** A printed total horsepower must be hp x service factor; without hp, it must lead to one that is built. */
export const totalHorsepower: Check = {
  name: "total-horsepower",
  source: "10 CFR 431.483 by reference to UL 1004-10; NEMA MG 1 10.32",
  reasons: ["total-horsepower-differs", "total-horsepower-odd"],
  find: (subject) => [differs(subject), impliesOddHp(subject)].filter((finding) => finding !== undefined),
};
