/** Largest slip of a small induction motor at full load that a label can show, as a fraction (common practice). */
export const largestLabelSlip = 0.1;

const smallMotorPoles = [2, 4, 6, 8] as const;
export type Poles = (typeof smallMotorPoles)[number];

/** Synchronous speed in rpm: 120 x Hz / poles (definition). */
export function synchronousRpm(hz: number, poles: number): number {
  return (120 * hz) / poles;
}

/** Slip as a fraction of synchronous speed; negative when the motor would outrun its field. */
export function slip(rpm: number, hz: number, poles: number): number {
  const synchronous = synchronousRpm(hz, poles);
  return (synchronous - rpm) / synchronous;
}

/**
 * Poles of an induction motor with this full-load speed: the pole count whose slip is 0 to 10 %; undefined
 * when no count explains the speed.
 */
export function polesFromRpm(rpm: number, hz: number): Poles | undefined {
  return smallMotorPoles.find((poles) => {
    const fraction = slip(rpm, hz, poles);
    return fraction >= 0 && fraction <= largestLabelSlip;
  });
}
