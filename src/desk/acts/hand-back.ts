import { resume } from "../../conversation/resume.ts";
import { mirrored } from "../case.ts";
import type { Decision } from "./act.ts";
import { dangerFirst, done, eventOf, notMine, refuse, type TurnOf } from "./answers.ts";

/** The bot has the word again and goes on where the talk stands. */
export function handBack(turn: TurnOf<"hand-back">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  if (turn.case.standing.state !== "taken") return refuse(turn, "notTaken");
  const danger = dangerFirst(turn);
  if (danger) return danger;
  const { by, at, knowledge } = turn;
  const { wording } = knowledge;
  const back = { ...turn.case, unanswered: null, standing: { state: "with-bot", since: at } } as const;
  const { thread, replies } = resume(mirrored(turn.thread, back), knowledge);
  // A verdict that has changed meanwhile puts the case on the desk again, to be confirmed.
  const again = thread.case.state === "none" ? back : waitingAgain(back, thread.case, at);
  return done(turn, wording.say("desk", "answer.handedBack"), {
    case: again,
    thread,
    toCustomer: [wording.say("desk", "customer.handedBack", { name: by.name }), ...replies],
    toCase: [{ text: wording.say("desk", "case.handedBack", { name: by.name }) }],
    events: [eventOf(turn, "handed-back")],
  });
}

function waitingAgain(
  open: TurnOf<"hand-back">["case"],
  { urgency, reason }: Pick<TurnOf<"hand-back">["case"], "urgency" | "reason">,
  at: string,
): TurnOf<"hand-back">["case"] {
  return {
    ...open,
    urgency,
    reason,
    unanswered: { since: at, promised: true },
    standing: { state: "waiting", since: at },
  };
}
