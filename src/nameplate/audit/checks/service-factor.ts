import { blanks, type Check } from "../check.ts";

/** Service factors printed again and again on pool motors. Common practice, no source. */
const common: readonly number[] = [1.1, 1.15, 1.25, 1.27, 1.3, 1.35, 1.4, 1.47, 1.5, 1.6, 1.65, 1.67];
/** Real ones that a swap of two digits would turn into a common one. Source: EPA pool pump list (1.04). */
const realThoughSwapped: ReadonlySet<number> = new Set([1.04, 1.05]);

/** The common service factor whose last two digits were swapped: 1.56 for 1.65, 1.01 for 1.10. */
function swappedFrom(value: number): number | undefined {
  const text = value.toFixed(2);
  const swapped = Number(`${text.slice(0, 2)}${text.charAt(3)}${text.charAt(2)}`);
  return common.includes(swapped) ? swapped : undefined;
}

/**
 * A service factor that nobody prints but that one swap of digits makes a usual one. Odd service factors do
 * occur, so nothing else about them is doubted; a total horsepower on the label settles it.
 */
export const serviceFactor: Check = {
  name: "service-factor",
  source: "common practice, no source",
  reasons: ["service-factor-unusual"],
  find: (subject) => {
    const { serviceFactor: value, totalHp, hp } = subject.nameplate;
    if (value === undefined || common.includes(value) || realThoughSwapped.has(value)) return [];
    if (totalHp !== undefined && hp !== undefined) return [];
    const likelier = swappedFrom(value);
    if (likelier === undefined) return [];
    return [
      {
        ratings: ["serviceFactor"],
        reason: "service-factor-unusual",
        values: blanks(subject, "serviceFactor"),
        severity: "doubtful",
        suggestions: [{ rating: "serviceFactor", value: likelier }],
      },
    ];
  },
};
