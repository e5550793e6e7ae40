import { apparentVa, type Phase } from "./power.ts";
import { type CodeLetter, codeLetterLowerKvaPerHp } from "./tables/code-letters.ts";

/** Locked-rotor kVA per hp: `from` belongs to the band, `below` does not; V has no upper limit. */
export interface KvaBand {
  readonly from: number;
  readonly below: number;
}

const letters = Object.keys(codeLetterLowerKvaPerHp) as CodeLetter[];

/** True for a letter of the standard (A to V without I, O and Q). */
export function isCodeLetter(letter: string): letter is CodeLetter {
  return Object.hasOwn(codeLetterLowerKvaPerHp, letter);
}

/** The band of a code letter in kVA per hp. Source: NEMA MG 1 10.37.2; NEC Table 430.7(B). */
export function kvaBand(letter: CodeLetter): KvaBand {
  const next = letters[letters.indexOf(letter) + 1];
  return {
    from: codeLetterLowerKvaPerHp[letter],
    below: next === undefined ? Number.POSITIVE_INFINITY : codeLetterLowerKvaPerHp[next],
  };
}

/** The code letter of a motor that takes `kvaPerHp` at standstill. */
export function codeLetter(kvaPerHp: number): CodeLetter {
  return letters.findLast((letter) => codeLetterLowerKvaPerHp[letter] <= kvaPerHp) ?? "A";
}

/** Current at standstill in amperes for a locked-rotor figure in kVA per hp: kVA x 1000 / (V, x sqrt 3 if three-phase). */
export function lockedRotorAmps(kvaPerHp: number, hp: number, volts: number, phase: Phase = 1): number {
  return (kvaPerHp * hp * 1000) / apparentVa(volts, 1, phase);
}
