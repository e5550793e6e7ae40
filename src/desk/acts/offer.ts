import { motorBySku } from "../../catalogue/catalogue.ts";
import { type Assessment, assessThread } from "../../conversation/assess.ts";
import { createSpeaker } from "../../conversation/speaker.ts";
import { withLine } from "../../conversation/thread.ts";
import { cautionText } from "../../conversation/verdict/cautions.ts";
import { motorName, priceText, stockText } from "../../conversation/verdict/motor.ts";
import { partsText } from "../../conversation/verdict/parts.ts";
import { decisiveFinding } from "../../matching/explain.ts";
import { judgeMotor } from "../../matching/match.ts";
import type { StockMotor } from "../../matching/types.ts";
import { partsOfCase } from "../parts.ts";
import type { Decision } from "./act.ts";
import { dangerFirst, done, eventOf, notMine, refuse, type TurnOf, takingAlong } from "./answers.ts";

/** A motor of the person's own choice, with the reason, told to the customer with the usual cautions. */
export function offer(turn: TurnOf<"offer">): Decision {
  const refused = notMine(turn) ?? dangerFirst(turn);
  if (refused) return refused;
  const { knowledge, by, at } = turn;
  const { wording } = knowledge;
  const motor = motorBySku(knowledge.catalogue, turn.act.sku);
  if (!motor) return refuse(turn, "noMotor", { sku: turn.act.sku });
  const why = turn.act.why.trim();
  if (why === "") return refuse(turn, "noWhy", { sku: motor.sku });
  const speaker = createSpeaker(wording, turn.thread.explained);
  const assessment = assessThread(turn.thread, knowledge);
  const text = speaker.say("desk", "customer.offered", {
    name: by.name,
    motor: motorName(motor),
    price: priceText(motor, speaker),
    stock: stockText(motor, speaker),
    why,
    parts: partsText(partsOfCase({ ...turn.case, offered: motor.sku }, assessment, knowledge), speaker),
  });
  const along = takingAlong(turn);
  const answer = wording.say("desk", "answer.offered", {
    motor: motor.sku,
    warning: warningOf(turn, motor, assessment),
  });
  return done(turn, answer.trim(), {
    case: { ...along.case, offered: motor.sku, unanswered: null },
    thread: withLine(turn.thread, { from: "staff", text: text.slice(0, 600), at }),
    toCustomer: [text, cautionText(speaker)],
    toCase: [
      ...along.toCase,
      { text: wording.say("desk", "case.offered", { name: by.name, motor: motor.sku }) },
    ],
    events: [...along.events, eventOf(turn, "offered", `${motor.sku}: ${why}`)],
  });
}

/** The rules' word for the one who offers; a person may know more than they do. */
function warningOf(
  { knowledge }: TurnOf<"offer">,
  motor: StockMotor,
  { nameplate, site }: Assessment,
): string {
  const judged = judgeMotor({ nameplate, site, on: knowledge.on }, motor);
  if (judged.verdict !== "no-fit" && judged.verdict !== "undecided") return "";
  const why = decisiveFinding(judged);
  const speaker = createSpeaker(knowledge.wording, []);
  const reason = why ? speaker.say("reasons", why.reason, why.values) : "";
  const key = judged.verdict === "no-fit" ? "answer.offered.ruledOut" : "answer.offered.undecided";
  return speaker.say("desk", key, { reason }).trim();
}
