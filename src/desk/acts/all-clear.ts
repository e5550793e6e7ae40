import type { Decision } from "./act.ts";
import { done, eventOf, notMine, refuse, type TurnOf, takingAlong } from "./answers.ts";

/** A person has dealt with the danger. The customer is told nothing by it: nobody here calls wiring safe. */
export function allClear(turn: TurnOf<"all-clear">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  const { hazard } = turn.thread;
  if (hazard === null) return refuse(turn, "noDanger");
  const { wording } = turn.knowledge;
  const along = takingAlong(turn);
  return done(turn, wording.say("desk", "answer.cleared"), {
    case: {
      ...along.case,
      urgency: turn.thread.planning ? "planning" : "pump-down",
      reason: "danger-over",
      alerted: null,
    },
    thread: { ...turn.thread, hazard: null, pending: { kind: "nothing" } },
    toCase: [...along.toCase, { text: wording.say("desk", "case.cleared", { name: turn.by.name, hazard }) }],
    events: [...along.events, eventOf(turn, "cleared", hazard)],
  });
}
