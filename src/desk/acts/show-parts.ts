import { assessThread } from "../../conversation/assess.ts";
import { createSpeaker } from "../../conversation/speaker.ts";
import { listText, partsOfCase, unsettledText } from "../parts.ts";
import { partChoices } from "../parts-choices.ts";
import type { Decision } from "./act.ts";
import { done, type TurnOf } from "./answers.ts";

/** The parts list with what can be done to each part; anybody of the staff may look. */
export function showParts(turn: TurnOf<"show-parts">): Decision {
  const { thread, knowledge } = turn;
  const speaker = createSpeaker(knowledge.wording, []);
  const list = partsOfCase(turn.case, assessThread(thread, knowledge), knowledge);
  const again = list.unsettled.map((one) => unsettledText(one, speaker));
  return done(turn, [listText(list, speaker), ...again].join("\n"), {
    choices: turn.case.standing.state === "closed" ? [] : partChoices(turn.case.id, list, knowledge.wording),
  });
}
