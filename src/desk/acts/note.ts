import type { Decision } from "./act.ts";
import { done, eventOf, refuse, type TurnOf } from "./answers.ts";

/** Kept with the case, in any state, by anybody of the staff; the customer never sees it. */
export function note(turn: TurnOf<"note">): Decision {
  const text = turn.act.text.trim();
  if (text === "") return refuse(turn, "empty");
  return done(turn, turn.knowledge.wording.say("desk", "answer.noted"), {
    events: [eventOf(turn, "noted", text)],
  });
}
