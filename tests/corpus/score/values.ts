/** Numbers this close are the same reading (a Fahrenheit conversion, a fraction). */
const TOLERANCE = 1e-6;

/** Equality of two readings: numbers within 1e-6, lists entry by entry in order, the rest exactly. */
export function sameValue(left: unknown, right: unknown): boolean {
  if (typeof left === "number" && typeof right === "number") return Math.abs(left - right) <= TOLERANCE;
  if (Array.isArray(left) && Array.isArray(right)) {
    return left.length === right.length && left.every((entry, index) => sameValue(entry, right[index]));
  }
  return left === right;
}

/** Equality of two lists of names, whatever their order and repeats. */
export function sameSet(left: readonly string[], right: readonly string[]): boolean {
  const [a, b] = [new Set(left), new Set(right)];
  return a.size === b.size && [...a].every((name) => b.has(name));
}
