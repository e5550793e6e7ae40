/**
 * Locked-rotor kVA per hp by code letter: the lower limit of each band; a band ends where the next begins.
 * I, O and Q are not used. Source: NEMA MG 1 10.37.2; NFPA 70 (NEC) Table 430.7(B).
 */
export const codeLetterLowerKvaPerHp = {
  A: 0,
  B: 3.15,
  C: 3.55,
  D: 4.0,
  E: 4.5,
  F: 5.0,
  G: 5.6,
  H: 6.3,
  J: 7.1,
  K: 8.0,
  L: 9.0,
  M: 10.0,
  N: 11.2,
  P: 12.5,
  R: 14.0,
  S: 16.0,
  T: 18.0,
  U: 20.0,
  V: 22.4,
} as const;

export type CodeLetter = keyof typeof codeLetterLowerKvaPerHp;
