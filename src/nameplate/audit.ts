import type { Check } from "./audit/check.ts";
import { ambientScale } from "./audit/checks/ambient-scale.ts";
import { ampsCount } from "./audit/checks/amps-count.ts";
import { ampsRatio } from "./audit/checks/amps-ratio.ts";
import { breakerPoles } from "./audit/checks/breaker-poles.ts";
import { breakerSize } from "./audit/checks/breaker-size.ts";
import { codeLetter } from "./audit/checks/code-letter.ts";
import { dutyMinutes } from "./audit/checks/duty-minutes.ts";
import { exchangedHorsepower } from "./audit/checks/exchanged-horsepower.ts";
import { frequency } from "./audit/checks/frequency.ts";
import { insulation } from "./audit/checks/insulation.ts";
import { kilowatts } from "./audit/checks/kilowatts.ts";
import { knownFrame } from "./audit/checks/known-frame.ts";
import { phaseVolts } from "./audit/checks/phase-volts.ts";
import { powerBalance } from "./audit/checks/power-balance.ts";
import { ranges } from "./audit/checks/ranges.ts";
import { ratedVolts } from "./audit/checks/rated-volts.ts";
import { serviceFactor } from "./audit/checks/service-factor.ts";
import { serviceFactorAmps } from "./audit/checks/service-factor-amps.ts";
import { speed } from "./audit/checks/speed.ts";
import { supply } from "./audit/checks/supply.ts";
import { tableCurrent } from "./audit/checks/table-current.ts";
import { totalHorsepower } from "./audit/checks/total-horsepower.ts";
import { usualHorsepower } from "./audit/checks/usual-horsepower.ts";
import { doubtsFrom } from "./audit/proposals.ts";
import type { Doubt } from "./reading.ts";
import type { Nameplate, Site } from "./vocabulary.ts";

/**
 * Every check, in the order its doubts are told: first what one rating shows by itself, then two ratings
 * that must agree, then the power balance of them all, last the place against the label.
 */
export const checks: readonly Check[] = [
  ambientScale,
  exchangedHorsepower,
  ratedVolts,
  frequency,
  ranges,
  knownFrame,
  insulation,
  codeLetter,
  dutyMinutes,
  serviceFactor,
  usualHorsepower,
  totalHorsepower,
  kilowatts,
  phaseVolts,
  ampsCount,
  ampsRatio,
  serviceFactorAmps,
  speed,
  powerBalance,
  tableCurrent,
  supply,
  breakerPoles,
  breakerSize,
];

/**
 * Ratings that cannot, or can hardly, be true, in the order they should be asked about. Never throws and
 * changes nothing: what to do about a doubt is the reader's affair.
 */
export function auditNameplate(nameplate: Nameplate, site: Site = {}): readonly Doubt[] {
  return doubtsFrom({ nameplate, site }, checks);
}
