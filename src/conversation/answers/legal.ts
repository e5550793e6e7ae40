import type { TalkTurn } from "../turn.ts";
import { motorName } from "../verdict/motor.ts";

/** "May I still buy that one?": the sale rule's finding for the motor on offer. */
export function legal({ assessment, speaker }: TalkTurn): string {
  const best = assessment.match?.motors[0];
  const sale = best?.findings.find(({ rule }) => rule === "sale");
  if (!best || !sale || best.verdict === "undecided") return speaker.say("replies", "legal.later");
  const reason = speaker.say("reasons", sale.reason, sale.values);
  return speaker.say("replies", "legal.best", { motor: motorName(best.motor), reason });
}
