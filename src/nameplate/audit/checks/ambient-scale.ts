import { celsiusFromFahrenheit } from "../../../engineering/units.ts";
import { nameplateRatings } from "../../vocabulary.ts";
import { blanks, type Check } from "../check.ts";

/** Above this nobody marks a pool motor in deg C; 60 C is the most in use. Common practice, no source. */
const hottestMarkedC = 60;

/** Labels mark whole steps of 5 deg C; a figure converted from Fahrenheit has a decimal. */
const isMarked = (ambientC: number): boolean => !Number.isInteger(ambientC) || ambientC % 5 === 0;

/**
 * An ambient that makes sense in Fahrenheit only (122 is 50 deg C), one above what pool motors carry, or one
 * that nobody marks (58).
 */
export const ambientScale: Check = {
  name: "ambient-scale",
  source: "definition of degree Fahrenheit; usual ambients: common practice, no source",
  reasons: ["ambient-fahrenheit", "ambient-unusual"],
  find: (subject) => {
    const { ambientC } = subject.nameplate;
    if (ambientC === undefined || (ambientC <= hottestMarkedC && isMarked(ambientC))) return [];
    const celsius = Math.round(celsiusFromFahrenheit(ambientC) * 10) / 10;
    const { min } = nameplateRatings.ambientC.plausible;
    const fahrenheit = ambientC > hottestMarkedC && celsius >= min && celsius <= hottestMarkedC;
    return [
      {
        ratings: ["ambientC"],
        reason: fahrenheit ? "ambient-fahrenheit" : "ambient-unusual",
        values: blanks(subject, "ambientC"),
        severity: ambientC > 100 ? "impossible" : "doubtful",
        ...(fahrenheit ? { suggestions: [{ rating: "ambientC", value: celsius }] } : {}),
      },
    ];
  },
};
