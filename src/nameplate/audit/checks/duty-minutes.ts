import { blanks, type Check } from "../check.ts";

/** Time ratings in minutes. Source: NFPA 70 (NEC) 430.7(A)(6). */
const timeRatings: ReadonlySet<number> = new Set([5, 15, 30, 60]);

/** Duty is continuous or one of the standard time ratings. */
export const dutyMinutes: Check = {
  name: "duty-minutes",
  source: "NFPA 70 (NEC) 430.7(A)",
  reasons: ["duty-unusual"],
  find: (subject) => {
    const { duty } = subject.nameplate;
    if (typeof duty !== "number" || timeRatings.has(duty)) return [];
    return [
      { ratings: ["duty"], reason: "duty-unusual", values: blanks(subject, "duty"), severity: "doubtful" },
    ];
  },
};
