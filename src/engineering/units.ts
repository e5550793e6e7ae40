/** Watts in one horsepower: 745.7 W (NIST SP 811, mechanical horsepower, rounded to one decimal). */
export const wattsPerHp = 745.7;

/** Watts for a power in horsepower. */
export function wattsFromHp(hp: number): number {
  return hp * wattsPerHp;
}

/** Horsepower for a power in watts. */
export function hpFromWatts(watts: number): number {
  return watts / wattsPerHp;
}

/** Degrees Fahrenheit for degrees Celsius, unrounded (definition: F = C x 9/5 + 32). */
export function fahrenheitFromCelsius(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** Degrees Celsius for degrees Fahrenheit, unrounded (definition: C = (F - 32) x 5/9). */
export function celsiusFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** U.S. cents, to a tenth, from dollars: electricity prices are said in cents. */
export function centsFromUsd(usd: number): number {
  return Math.round(usd * 1000) / 10;
}
