import type { Decision } from "./act.ts";
import { dangerFirst, done, eventOf, notMine, type TurnOf } from "./answers.ts";

/** Another urgency; never a lower one while a danger is open. */
export function rank(turn: TurnOf<"rank">): Decision {
  const { urgency } = turn.act;
  const refused = notMine(turn) ?? (urgency === "danger" ? null : dangerFirst(turn));
  if (refused) return refused;
  const { wording } = turn.knowledge;
  const word = wording.say("brief", `urgency.${urgency}`);
  return done(turn, wording.say("desk", "answer.ranked", { urgency: word }), {
    case: { ...turn.case, urgency },
    toCase: [{ text: wording.say("desk", "case.ranked", { name: turn.by.name, urgency: word }) }],
    events: [eventOf(turn, "ranked", urgency)],
  });
}
