import type { RatingName } from "../vocabulary.ts";

/**
 * How well one number suits a rating of a pool motor: 2 customary, 1 possible, 0 odd, below 0 hardly what the
 * writer meant. Odd values are still read where the words leave no doubt: the audit asks about them.
 */
export function suits(rating: RatingName, value: number): number {
  const judge = judges[rating];
  if (!judge || !Number.isFinite(value) || value <= 0) return -4;
  return judge(value);
}

const customaryHp = new Set([
  1 / 8,
  1 / 6,
  0.25,
  1 / 3,
  2 / 3,
  0.33,
  0.5,
  0.75,
  1,
  1.25,
  1.5,
  1.65,
  1.85,
  2,
  2.5,
  2.7,
  3,
  5,
]);
const customaryVolts = new Set([110, 115, 120, 127, 200, 208, 220, 230, 240, 380, 400, 415, 440, 460, 480]);
const breakers = new Set([10, 15, 20, 25, 30, 35, 40, 45, 50, 60]);

const within = (value: number, min: number, max: number) => value >= min && value <= max;
const decimals = (value: number) => !Number.isInteger(value);

function horsepower(value: number): number {
  if (customaryHp.has(value)) return 2;
  if (within(value, 0.1, 10)) return 1;
  return within(value, 10, 40) ? -0.5 : within(value, 40, 400) ? -2 : -4;
}

function current(value: number): number {
  if (within(value, 0.5, 45)) return decimals(value) ? 2 : 1.4;
  return within(value, 45, 300) ? -0.8 : -4;
}

const judges: Partial<Record<RatingName, (value: number) => number>> = {
  hp: horsepower,
  totalHp: (value) =>
    within(value, 0.2, 8) ? 2 : within(value, 8, 60) ? 0 : within(value, 60, 400) ? -1 : -4,
  kw: (value) => (within(value, 0.1, 5) ? 2 : within(value, 5, 60) ? 0 : -3),
  serviceFactor: (value) =>
    within(value, 1, 2)
      ? decimals(value)
        ? 2
        : 1.2
      : within(value, 0.5, 3)
        ? 0.3
        : within(value, 3, 20) || within(value, 100, 199)
          ? -1
          : -4,
  volts: (value) =>
    customaryVolts.has(value)
      ? 2
      : within(value, 90, 600) && !decimals(value)
        ? 0.8
        : within(value, 10, 5000) && !decimals(value)
          ? -1.2
          : -4,
  amps: current,
  serviceFactorAmps: current,
  rpm: (value) =>
    within(value, 2800, 3600) || within(value, 1400, 1800) || within(value, 1100, 1200)
      ? 2
      : within(value, 300, 4200)
        ? 1
        : within(value, 34, 40000) && !decimals(value)
          ? -1.5
          : -4,
  hz: (value) =>
    value === 60 || value === 50 ? 2 : within(value, 40, 70) ? 0.5 : within(value, 5, 600) ? -1.2 : -4,
  phase: (value) => (value === 1 || value === 3 ? 2 : -4),
  ambientC: (value) => (within(value, 25, 65) ? 2 : within(value, 1, 200) ? 0 : -4),
  capacitorUf: (value) => (within(value, 2, 1000) ? 2 : 0),
  breakerAmps: (value) => (breakers.has(value) ? 2 : within(value, 10, 200) && !decimals(value) ? 0 : -4),
  supplyVolts: (value) =>
    customaryVolts.has(value) ? 2 : within(value, 100, 500) && !decimals(value) ? 0.8 : -4,
  hoursPerDay: (value) => (within(value, 0.5, 24) ? 2 : -4),
};

/**
 * True where two figures may stand on one label as the two values of one rating. Parted by a mere comma or
 * nothing (`loosely`) only dual-voltage amps at 2:1 or near enough go together.
 */
export function goTogether(rating: RatingName, first: number, second: number, loosely = false): boolean {
  const ratio = Math.max(first, second) / Math.min(first, second);
  if (rating === "amps" || rating === "serviceFactorAmps")
    return within(ratio, 1.001, 1.3) || (loosely ? within(ratio, 1.8, 2.2) : within(ratio, 1.6, 4.5));
  if (rating === "rpm") return first !== second && suits("rpm", first) >= 1 && suits("rpm", second) >= 1;
  if (rating === "hz") return first !== second && suits("hz", first) === 2 && suits("hz", second) === 2;
  if (rating === "volts") return first !== second && suits("volts", first) > 0 && suits("volts", second) > 0;
  return false;
}
