import { polesFromRpm } from "../../../engineering/speed.ts";
import { blanks, type Check, shown } from "../check.ts";

/**
 * Full-load speed lies up to 10 % under a synchronous speed (120 x Hz / poles); pool motors are 2- or 4-pole
 * at their top speed (common practice, no source). A drive may turn at any speed below the top.
 */
export const speed: Check = {
  name: "speed",
  source: "synchronous speed: definition; slip and poles: common practice, no source",
  reasons: ["speed-slip", "speed-slow", "speed-frequency"],
  find: (subject) => {
    const { rpm, hz, speedKind } = subject.nameplate;
    if (!rpm) return [];
    const top = Math.max(...rpm);
    const possibleHz = hz ?? [60, 50];
    const fits = (speedRpm: number) => possibleHz.some((f) => polesFromRpm(speedRpm, f) !== undefined);
    const judged = speedKind === "variable" ? [] : rpm;
    const odd = judged.find((speedRpm) => !fits(speedRpm));
    if (odd !== undefined) {
      const otherHz = [50, 60].some((f) => polesFromRpm(odd, f) !== undefined);
      const wrongHz = hz?.length === 1 && otherHz;
      return [
        {
          ratings: wrongHz ? ["rpm", "hz"] : ["rpm"],
          reason: wrongHz ? "speed-frequency" : "speed-slip",
          values: { ...blanks(subject, "rpm"), hz: shown(subject, "hz") },
          severity: "impossible",
        },
      ];
    }
    const slow = judged.length > 0 && possibleHz.every((f) => (polesFromRpm(top, f) ?? 8) > 4);
    if (!slow) return [];
    return [{ ratings: ["rpm"], reason: "speed-slow", values: blanks(subject, "rpm"), severity: "doubtful" }];
  },
};
