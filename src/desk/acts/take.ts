import type { Decision } from "./act.ts";
import { done, eventOf, notMine, refuse, type TurnOf, takenBy } from "./answers.ts";

/** One owner: a second taker is told who has it. */
export function take(turn: TurnOf<"take">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  if (turn.case.standing.state === "taken") return refuse(turn, "yours");
  const { wording } = turn.knowledge;
  const { name } = turn.by;
  return done(turn, wording.say("desk", "answer.took"), {
    case: takenBy(turn.case, turn.by, turn.at),
    toCustomer: [wording.say("desk", "customer.took", { name })],
    toCase: [{ text: wording.say("desk", "case.took", { name }) }],
    events: [eventOf(turn, "took")],
  });
}
