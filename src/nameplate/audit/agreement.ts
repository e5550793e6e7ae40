import { totalHorsepower } from "../../engineering/power.ts";
import type { Nameplate } from "../vocabulary.ts";

/** Labels round or cut total horsepower to two decimals and print fractions as .33: this much may be off. */
const tolerance = (totalHp: number): number => 0.02 + 0.015 * totalHp;

/** True when hp, service factor and total hp are all stated and agree: three figures that bear each other out. */
export function totalHpAgrees({ hp, serviceFactor, totalHp }: Nameplate): boolean {
  if (hp === undefined || serviceFactor === undefined || totalHp === undefined) return false;
  return Math.abs(totalHorsepower(hp, serviceFactor) - totalHp) <= tolerance(totalHp);
}
