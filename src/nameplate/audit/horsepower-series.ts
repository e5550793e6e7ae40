/**
 * Horsepower that motors are built for, fractions as labels print them. Source: NEMA MG 1 10.32 for the
 * standard ones; 1.25, 2.5, 3.5 and 4 on pool motors: EPA pool pump list (2.5) and common practice.
 */
const series: readonly number[] = [
  1 / 8,
  1 / 6,
  1 / 4,
  1 / 3,
  1 / 2,
  3 / 4,
  1,
  1.25,
  1.5,
  2,
  2.5,
  3,
  3.5,
  4,
  5,
];

/** True when `hp` is a figure of the series within a fraction, two decimals of a fraction included (.33, .16). */
export function isSeriesHp(hp: number, fraction = 0): boolean {
  return series.some((figure) => Math.abs(figure - hp) <= Math.max(0.011, fraction * figure));
}
