/** Measures of a Type C or J face, in inches; letters are those of the standard. */
export interface FaceMeasures {
  /** AJ, the bolt circle. */
  readonly boltCircleIn: number;
  /** AK, the rabbet that centres the pump. */
  readonly rabbetIn: number;
  /** BF, diameter of the four tapped holes, 90 degrees apart. */
  readonly holeIn: number;
  /** U, the shaft. */
  readonly shaftIn: number;
}

/**
 * Source: NEMA MG 1 Part 4 (Type C face mounting); the J face is the same (MG 1 18, jet-pump motors; clause
 * numbers from memory). The 1/4-20 hole of the 48C is from memory.
 */
export const roundFaces = {
  "56": { boltCircleIn: 5.875, rabbetIn: 4.5, holeIn: 3 / 8, shaftIn: 0.625 },
  "48": { boltCircleIn: 3.75, rabbetIn: 3, holeIn: 1 / 4, shaftIn: 0.5 },
} as const satisfies Record<string, FaceMeasures>;

/** Measures of a shaft end, in inches. */
export interface ShaftMeasures {
  /** U, the diameter. */
  readonly diameterIn: number;
  /** N-W, what stands out of the face. */
  readonly lengthIn: number;
}

/**
 * Source: NEMA MG 1 Part 4 (56C: U 5/8, N-W 1-7/8, key 3/16 square and 1-3/8 long) and MG 1 18 (56J: N-W 2-7/16;
 * clause from memory). The 7/16-20 thread was read on one public drawing; how far it runs has no source.
 */
export const keyedShaft = { diameterIn: 0.625, lengthIn: 1.875, keyIn: 3 / 16, keyLengthIn: 1.375 } as const;
export const threadedShaft = {
  diameterIn: 0.625,
  lengthIn: 2.4375,
  threadIn: 7 / 16,
  threadPerIn: 20,
} as const;
