import { blanks, type Check } from "../check.ts";

/** Mains are 50 or 60 Hz. Source: IEC 60196. */
export const frequency: Check = {
  name: "frequency",
  source: "IEC 60196",
  reasons: ["frequency-unusual"],
  find: (subject) => {
    const odd = subject.nameplate.hz?.find((hz) => hz !== 50 && hz !== 60);
    if (odd === undefined) return [];
    return [
      { ratings: ["hz"], reason: "frequency-unusual", values: blanks(subject, "hz"), severity: "impossible" },
    ];
  },
};
