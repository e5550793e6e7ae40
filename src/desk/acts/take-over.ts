import type { Decision } from "./act.ts";
import { done, eventOf, refuse, type TurnOf, takenBy } from "./answers.ts";
import { take } from "./take.ts";

/** From a colleague who is not there; a case nobody has is simply taken. */
export function takeOver(turn: TurnOf<"take-over">): Decision {
  const { standing } = turn.case;
  if (standing.state !== "taken") return take({ ...turn, act: { kind: "take" } });
  if (standing.by.id === turn.by.id) return refuse(turn, "yours");
  const { wording } = turn.knowledge;
  const names = { name: turn.by.name, before: standing.by.name };
  return done(turn, wording.say("desk", "answer.tookOver", names), {
    case: takenBy(turn.case, turn.by, turn.at),
    toCustomer: [wording.say("desk", "customer.tookOver", names)],
    toCase: [{ text: wording.say("desk", "case.tookOver", names) }],
    events: [eventOf(turn, "took", standing.by.name)],
  });
}
