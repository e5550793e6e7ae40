import { assessThread } from "../../conversation/assess.ts";
import { createSpeaker } from "../../conversation/speaker.ts";
import { withLine } from "../../conversation/thread.ts";
import { cautionText } from "../../conversation/verdict/cautions.ts";
import { asOfText, motorName, priceText, stockText } from "../../conversation/verdict/motor.ts";
import { partsText, workText } from "../../conversation/verdict/parts.ts";
import { motorOfCase, partsOfCase } from "../parts.ts";
import type { Decision } from "./act.ts";
import { dangerFirst, done, eventOf, notMine, refuse, type TurnOf, takingAlong } from "./answers.ts";

/** A person stands for the motor and for the parts as the desk has them; the customer is told both, with the cautions. */
export function confirm(turn: TurnOf<"confirm">): Decision {
  const refused = notMine(turn) ?? dangerFirst(turn);
  if (refused) return refused;
  const { knowledge, thread, by, at } = turn;
  const { wording, catalogue } = knowledge;
  const assessment = assessThread(thread, knowledge);
  const motor = motorOfCase(turn.case, assessment, knowledge)?.motor;
  if (!motor) return refuse(turn, "nothingToConfirm");
  const speaker = createSpeaker(wording, thread.explained);
  const list = partsOfCase(turn.case, assessment, knowledge);
  const parts = partsText(list, speaker);
  const text = [
    speaker.say("desk", "customer.confirmed", {
      name: by.name,
      motor: motorName(motor),
      price: priceText(motor, speaker),
      stock: stockText(motor, speaker),
      parts,
    }),
    ...workText(list, speaker),
    asOfText(catalogue, speaker),
  ].join("\n");
  const along = takingAlong(turn);
  return done(turn, wording.say("desk", "answer.confirmed", { motor: motor.sku, parts }), {
    case: { ...along.case, unanswered: null },
    thread: {
      ...withLine(thread, { from: "staff", text: text.slice(0, 600), at }),
      explained: speaker.explained(),
    },
    toCustomer: [text, cautionText(speaker)],
    toCase: [
      ...along.toCase,
      { text: wording.say("desk", "case.confirmed", { name: by.name, motor: motor.sku }) },
    ],
    events: [...along.events, eventOf(turn, "confirmed", `${motor.sku}; ${parts}`)],
  });
}
