import { withLine } from "../../conversation/thread.ts";
import type { Decision } from "./act.ts";
import { done, eventOf, notMine, refuse, type TurnOf, takingAlong } from "./answers.ts";

/** Longer texts would be split on the way, and a half-sent relay is worse than none. */
export const TOLD_CHARACTERS = 3500;

/** The words go to the customer as they are, under the person's name. */
export function tell(turn: TurnOf<"tell">): Decision {
  const { wording } = turn.knowledge;
  const text = turn.act.text.trim();
  if (text === "") return refuse(turn, "empty");
  if (text.length > TOLD_CHARACTERS) return refuse(turn, "long", { limit: TOLD_CHARACTERS });
  const refused = notMine(turn);
  if (refused) return refused;
  const along = takingAlong(turn);
  return done(turn, wording.say("desk", "answer.told", { text }), {
    ...along,
    case: { ...along.case, unanswered: null },
    thread: withLine(turn.thread, { from: "staff", text: text.slice(0, 600), at: turn.at }),
    toCustomer: [wording.say("desk", "customer.told", { name: turn.by.name, text })],
    events: [...along.events, eventOf(turn, "told", text)],
  });
}
