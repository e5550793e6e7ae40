/** One copper size: AWG and ampacity in amperes with 60 and 75 deg C terminals. */
export interface CopperSize {
  readonly awg: number;
  readonly amps60C: number;
  readonly amps75C: number;
}

/**
 * Copper ampacity, up to three current-carrying conductors, 30 deg C ambient, smallest wire first.
 * Source: NFPA 70 (NEC) Table 310.16 (Table 310.15(B)(16) before 2020; older editions gave 14 and 12 AWG more).
 */
export const copperSizes: readonly CopperSize[] = [
  { awg: 14, amps60C: 15, amps75C: 20 },
  { awg: 12, amps60C: 20, amps75C: 25 },
  { awg: 10, amps60C: 30, amps75C: 35 },
  { awg: 8, amps60C: 40, amps75C: 50 },
  { awg: 6, amps60C: 55, amps75C: 65 },
];

/** Smallest standard breaker, A: since the 2023 edition. Source: NFPA 70 (NEC) Table 240.6(A). */
export const smallestBreakerAmps = 10;

/** Standard ratings of breakers and fuses from 15 A. Source: NFPA 70 (NEC) Table 240.6(A); to 60 A read, the rest from memory. */
export const standardProtectionAmps: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200,
];
