import { totalHpAgrees } from "../agreement.ts";
import { blanks, type Check, type Finding, type Subject, shown } from "../check.ts";

/** Service factors printed again and again on pool motors. Common practice, no source. */
const common: readonly number[] = [1.1, 1.15, 1.25, 1.3, 1.35, 1.4, 1.5, 1.6, 1.65, 1.67];
/** Real ones that a swap of two digits would turn into a common one. Source: EPA pool pump list (1.04). */
const realThoughSwapped: ReadonlySet<number> = new Set([1.04, 1.05]);

/** The common service factor whose last two digits were swapped: 1.56 for 1.65, 1.01 for 1.10. */
function swappedFrom(value: number): number | undefined {
  const text = value.toFixed(2);
  const swapped = Number(`${text.slice(0, 2)}${text.charAt(3)}${text.charAt(2)}`);
  return common.includes(swapped) ? swapped : undefined;
}

/**
 * Highest service factor met on pool motors up to each hp, a little margin included: it falls as motors grow,
 * because the frame stays the same. Common practice, no source.
 */
const highest: readonly (readonly [upToHp: number, serviceFactor: number])[] = [
  [0.5, 2],
  [0.75, 1.8],
  [1, 1.75],
  [1.5, 1.7],
  [2, 1.5],
  [Number.POSITIVE_INFINITY, 1.4],
];

function unusual(subject: Subject): Finding | undefined {
  const { serviceFactor: value } = subject.nameplate;
  if (value === undefined || common.includes(value) || realThoughSwapped.has(value)) return undefined;
  const likelier = swappedFrom(value);
  if (likelier === undefined || totalHpAgrees(subject.nameplate)) return undefined;
  return {
    ratings: ["serviceFactor"],
    reason: "service-factor-unusual",
    values: blanks(subject, "serviceFactor"),
    severity: "doubtful",
    suggestions: [{ rating: "serviceFactor", value: likelier }],
  };
}

/** The stated service factor, or the one that total hp over hp comes to, against the size of the motor. */
function outOfProportion(subject: Subject): Finding | undefined {
  const { serviceFactor, totalHp, hp } = subject.nameplate;
  if (hp === undefined || totalHpAgrees(subject.nameplate)) return undefined;
  const value = serviceFactor ?? (totalHp === undefined ? undefined : totalHp / hp);
  const limit = highest.find(([upToHp]) => hp <= upToHp)?.[1];
  if (value === undefined || limit === undefined) return undefined;
  const tooLow = serviceFactor === undefined && value < 0.97;
  if (value <= limit && !tooLow) return undefined;
  return {
    ratings: serviceFactor === undefined ? ["totalHp", "hp"] : ["serviceFactor", "hp"],
    reason: serviceFactor === undefined ? "total-horsepower-proportion" : "service-factor-large",
    values: {
      value: shown(subject, serviceFactor === undefined ? "totalHp" : "serviceFactor"),
      hp: shown(subject, "hp"),
    },
    severity: tooLow ? "impossible" : "doubtful",
  };
}

/**
 * A service factor that nobody prints but that one swap of digits makes a usual one (odd ones do occur, so
 * nothing else about them is doubted), or one too high for a motor of this size. A total horsepower on the
 * label that agrees settles both.
 */
export const serviceFactor: Check = {
  name: "service-factor",
  source: "common practice, no source",
  reasons: ["service-factor-unusual", "service-factor-large", "total-horsepower-proportion"],
  find: (subject) => [unusual(subject), outOfProportion(subject)].filter((finding) => finding !== undefined),
};
