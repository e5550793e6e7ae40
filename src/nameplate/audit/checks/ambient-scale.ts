import { celsiusFromFahrenheit } from "../../../engineering/units.ts";
import { nameplateRatings } from "../../vocabulary.ts";
import { blanks, type Check } from "../check.ts";

/** Above this nobody marks a pool motor in deg C; 60 C is the most in use. Common practice, no source. */
const hottestMarkedC = 60;

/**
 * An ambient that makes sense in Fahrenheit only (122 is 50 deg C), or one above what pool motors carry.
 */
export const ambientScale: Check = {
  name: "ambient-scale",
  source: "definition of degree Fahrenheit; usual ambients: common practice, no source",
  reasons: ["ambient-fahrenheit", "ambient-high"],
  find: (subject) => {
    const { ambientC } = subject.nameplate;
    if (ambientC === undefined || ambientC <= hottestMarkedC) return [];
    const celsius = Math.round(celsiusFromFahrenheit(ambientC) * 10) / 10;
    const { min } = nameplateRatings.ambientC.plausible;
    const fahrenheit = celsius >= min && celsius <= hottestMarkedC;
    return [
      {
        ratings: ["ambientC"],
        reason: fahrenheit ? "ambient-fahrenheit" : "ambient-high",
        values: blanks(subject, "ambientC"),
        severity: ambientC > 100 ? "impossible" : "doubtful",
        ...(fahrenheit ? { suggestions: [{ rating: "ambientC", value: celsius }] } : {}),
      },
    ];
  },
};
