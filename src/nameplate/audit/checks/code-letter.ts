import { isCodeLetter } from "../../../engineering/code-letters.ts";
import { blanks, type Check } from "../check.ts";

/** The kVA code runs from A to V without I, O and Q. */
export const codeLetter: Check = {
  name: "code-letter",
  source: "NEMA MG 1 10.37.2; NFPA 70 (NEC) Table 430.7(B)",
  reasons: ["code-letter-unknown"],
  find: (subject) => {
    const { kvaCode } = subject.nameplate;
    if (kvaCode === undefined || isCodeLetter(kvaCode)) return [];
    return [
      {
        ratings: ["kvaCode"],
        reason: "code-letter-unknown",
        values: blanks(subject, "kvaCode"),
        severity: "doubtful",
      },
    ];
  },
};
