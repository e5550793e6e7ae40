import { namedRating } from "../../nameplate/named-rating.ts";
import { pictureOfQuestion } from "../pictured.ts";
import type { Reply } from "../reply.ts";
import type { TalkTurn } from "../turn.ts";

/** "What is SF?": the word asked about, else what was just asked for, else where the label is; in words and drawn. */
export function explain({ text, thread, speaker, knowledge }: TalkTurn): Reply {
  const named = namedRating(text);
  const asked = thread.pending.kind === "ratings" ? thread.pending.ratings[0] : undefined;
  const rating = named ?? asked;
  const known = rating !== undefined && knowledge.wording.has("explain", rating);
  const picture =
    named === undefined
      ? (pictureOfQuestion(thread.pending) ?? ({ kind: "label" } as const))
      : ({ kind: "ratings", ratings: [named] } as const);
  return { text: speaker.say("explain", known ? rating : "general"), picture };
}
