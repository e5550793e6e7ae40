import { createSpeaker, terms } from "../conversation/speaker.ts";
import type { Wording } from "../conversation/wording.ts";
import type { MatchResult } from "../matching/types.ts";
import type { RatingName } from "../nameplate/vocabulary.ts";

/** A match in the plain form other programs rely on, reasons in words. */
export function showMatch(match: MatchResult, ask: readonly RatingName[], wording: Wording): object {
  const speaker = createSpeaker(wording, terms);
  return {
    verdict: match.verdict,
    motors: [...match.motors, ...match.ruledOut].map(({ motor, verdict, findings }) => ({
      sku: motor.sku,
      verdict,
      findings: findings.map(({ rule, outcome, reason, values }) => ({
        rule,
        outcome,
        reason: speaker.say("reasons", reason, values),
      })),
    })),
    ask,
  };
}
