import { frameParts, type ImpliedMount, impliedMount, type ShaftEnd } from "../engineering/frames.ts";
import { labelTotalHp, type Phase } from "../engineering/power.ts";
import { largestLabelSlip, polesFromRpm, slip } from "../engineering/speed.ts";
import { hpFromWatts } from "../engineering/units.ts";
import type { Nameplate } from "../nameplate/vocabulary.ts";

/** What a label means, beyond what it says in so many words. The same for the old motor and the stock row. */

export type Face = NonNullable<Nameplate["flange"]>;
export type SpeedKind = NonNullable<Nameplate["speedKind"]>;

/** A value and whether it rests on a custom (a frame letter, a region's frequency) and not on the label's words. */
export interface Deduced<Value> {
  readonly value: Value;
  readonly inferred: boolean;
}

function statedOr<Value>(stated: Value | undefined, implied: Value | undefined): Deduced<Value> | undefined {
  if (stated !== undefined) return { value: stated, inferred: false };
  return implied === undefined ? undefined : { value: implied, inferred: true };
}

function implied({ frame }: Nameplate): ImpliedMount {
  return frame === undefined ? {} : impliedMount(frame);
}

/** Mounting face: stated, else by the frame letter; the stated word wins. */
export function faceOf(label: Nameplate): Deduced<Face> | undefined {
  return statedOr<Face>(label.flange, implied(label).face);
}

/** Shaft end: stated, else by the frame letter; the stated word wins. */
export function shaftOf(label: Nameplate): Deduced<ShaftEnd> | undefined {
  return statedOr(label.shaft, implied(label).shaft);
}

/** Body number of the frame, such as 48 or 56; undefined when no frame is stated. */
export function bodyOf(label: Nameplate): number | undefined {
  return label.frame === undefined ? undefined : frameParts(label.frame)?.body;
}

/** Rated horsepower: printed, or converted from a printed output in kW. */
export function ratedHpOf(label: Nameplate): Deduced<number> | undefined {
  return statedOr(label.hp, label.kw === undefined ? undefined : hpFromWatts(label.kw * 1000));
}

/**
 * Total horsepower: printed, else hp x service factor. A kW figure counts as output (IEC 60034-1), which is
 * marked as inferred, because some pool labels print the input there.
 */
export function totalHpOf(label: Nameplate): Deduced<number> | undefined {
  const hp = ratedHpOf(label);
  const { serviceFactor, totalHp } = label;
  const value = labelTotalHp({ hp: hp?.value, serviceFactor, totalHp });
  if (value === undefined) return undefined;
  return { value, inferred: totalHp === undefined && hp?.inferred === true };
}

/** No three-phase system has so low a line voltage, so a rating up to here proves single-phase. */
const largestSinglePhaseProofVolts = 127;

/** Phase: stated, or proved single by a rating of 127 V or less. */
export function phaseOf(label: Nameplate): Phase | undefined {
  if (label.phase !== undefined) return label.phase;
  return label.volts?.some((volts) => volts <= largestSinglePhaseProofVolts) ? 1 : undefined;
}

/** Frequency of the mains where nothing is stated: North America. */
const regionHz: readonly number[] = [60];

/** Rated frequencies: stated, else the region's. */
export function frequenciesOf(label: Nameplate): Deduced<readonly number[]> {
  return label.hz ? { value: label.hz, inferred: false } : { value: regionHz, inferred: true };
}

/** Poles of the top speed; undefined when no speed is stated or no pole count explains it. */
export function polesOf(label: Nameplate): number | undefined {
  if (!label.rpm) return undefined;
  const top = Math.max(...label.rpm);
  const { value: stated } = frequenciesOf(label);
  return polesByLabelSlip(top, stated) ?? polesByLabelSlip(top, [50, 60]) ?? polesByField(top, stated);
}

/** The pole count that explains a speed with the least slip, at any of the frequencies. */
function polesByLabelSlip(rpm: number, frequencies: readonly number[]): number | undefined {
  let best: { poles: number; slip: number } | undefined;
  for (const hz of frequencies) {
    const poles = polesFromRpm(rpm, hz);
    if (poles === undefined) continue;
    const found = slip(rpm, hz, poles);
    if (!best || found < best.slip) best = { poles, slip: found };
  }
  return best?.poles;
}

/** Slip beyond which a speed says nothing about poles any more. */
const largestThinkableSlip = 0.25;

/**
 * For speeds between the bands, which variable-speed labels print: no rotor outruns its field, so 3200 rpm at
 * 60 Hz can only be a 2-pole speed.
 */
function polesByField(rpm: number, frequencies: readonly number[]): number | undefined {
  let best: { poles: number; slip: number } | undefined;
  for (const hz of frequencies) {
    const poles = 2 * Math.floor((60 * hz) / rpm);
    if (poles < 2 || poles > 8) continue;
    const found = slip(rpm, hz, poles);
    if (found <= largestThinkableSlip && (!best || found < best.slip)) best = { poles, slip: found };
  }
  return best?.poles;
}

/** Speed kind: stated in words, else one figure single, two figures two-speed; undefined otherwise. */
export function speedKindOf(label: Nameplate): SpeedKind | undefined {
  if (label.speedKind) return label.speedKind;
  if (label.rpm?.length === 1) return "single";
  if (label.rpm?.length === 2) return isOneSpeedAtTwoFrequencies(label) ? "single" : "two";
  return undefined;
}

/** A 50/60 Hz label with 2850/3450 rpm names one speed twice. */
function isOneSpeedAtTwoFrequencies({ rpm = [], hz = [] }: Nameplate): boolean {
  if (rpm.length !== 2 || hz.length !== 2 || hz[0] === hz[1]) return false;
  const [slow, fast] = rpm.toSorted((a, b) => a - b);
  const [low, high] = hz.toSorted((a, b) => a - b);
  if (slow === undefined || fast === undefined || low === undefined || high === undefined) return false;
  const poles = polesFromRpm(slow, low);
  return poles !== undefined && slip(fast, high, poles) >= 0 && slip(fast, high, poles) <= largestLabelSlip;
}
