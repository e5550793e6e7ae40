import { assessThread } from "../../conversation/assess.ts";
import { setFact } from "../../conversation/facts.ts";
import { showFacts } from "../../conversation/speaker.ts";
import type { Thread } from "../../conversation/thread.ts";
import type { RatingName, RatingValue } from "../../nameplate/vocabulary.ts";
import type { Decision } from "./act.ts";
import { done, eventOf, notMine, refuse, type TurnOf } from "./answers.ts";

/** A reading put right, in words the reader understands; what fits is worked out again. */
export function correct(turn: TurnOf<"correct">): Decision {
  const refused = notMine(turn);
  if (refused) return refused;
  const { knowledge, by } = turn;
  const text = turn.act.text.trim().slice(0, 300);
  const { readings } = knowledge.understand(text).reading;
  if (readings.length === 0) return refuse(turn, "nothingRead", { text });
  const thread = readings.reduce(
    (state, { rating, value, words }) => staffFact(state, rating, value, words),
    turn.thread,
  );
  const facts = showFacts(
    thread.facts,
    readings.map(({ rating }) => rating),
  );
  return done(
    turn,
    knowledge.wording.say("desk", "answer.corrected", { facts, fits: fitsNow(turn, thread) }),
    {
      thread,
      toCase: [{ text: knowledge.wording.say("desk", "case.corrected", { name: by.name, facts }) }],
      events: [eventOf(turn, "corrected", facts)],
    },
  );
}

/** What a person stands for is not doubted again unless it cannot be true. */
function staffFact(
  thread: Thread,
  rating: RatingName,
  value: RatingValue<RatingName>,
  words: string,
): Thread {
  const set = setFact(thread, rating, value, "staff");
  return {
    ...set,
    facts: { ...set.facts, [rating]: { value, words, certainty: "staff" } },
    confirmed: [...new Set([...set.confirmed, rating])],
    pending: { kind: "nothing" },
  };
}

function fitsNow({ knowledge }: TurnOf<"correct">, thread: Thread): string {
  const { wording } = knowledge;
  const { match } = assessThread(thread, knowledge);
  if (match === null) return wording.say("desk", "answer.fitsOpen");
  const best = match.motors[0];
  if (!best) return wording.say("desk", "answer.fitsNone");
  return wording.say("desk", "answer.fits", {
    motor: best.motor.sku,
    verdict: wording.say("desk", `verdict.${best.verdict}`),
  });
}
