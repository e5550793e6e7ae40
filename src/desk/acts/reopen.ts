import type { Decision } from "./act.ts";
import { done, eventOf, refuse, type TurnOf } from "./answers.ts";

/** A closed case waits again. */
export function reopen(turn: TurnOf<"reopen">): Decision {
  if (turn.case.standing.state !== "closed") return refuse(turn, "notClosed");
  if (!turn.newest) return refuse(turn, "newerCase");
  const { wording } = turn.knowledge;
  const { name } = turn.by;
  return done(turn, wording.say("desk", "answer.reopened"), {
    case: { ...turn.case, standing: { state: "waiting", since: turn.at } },
    toCase: [{ text: wording.say("desk", "case.reopened", { name }) }],
    events: [eventOf(turn, "reopened", name)],
  });
}
