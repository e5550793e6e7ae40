/**
 * Insulation classes met on small motors: highest winding temperature in deg C.
 * Source: IEC 60085 thermal classes; used by NEMA MG 1 12.42 and 12.43.
 */
export const insulationMaxC = { A: 105, B: 130, F: 155, H: 180 } as const;
export type InsulationClass = keyof typeof insulationMaxC;

/** Ambient that a motor without a marked ambient is built for, deg C. Source: NEMA MG 1 12.42. */
export const standardAmbientC = 40;

/** True for a class letter that small motors carry. */
export function isInsulationClass(letter: string): letter is InsulationClass {
  return Object.hasOwn(insulationMaxC, letter);
}
