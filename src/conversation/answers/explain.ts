import { namedRating } from "../../nameplate/named-rating.ts";
import type { TalkTurn } from "../turn.ts";

/** "What is SF?": the word asked about, else what was just asked for, else where the label is. */
export function explain({ text, thread, speaker, knowledge }: TalkTurn): string {
  const asked = thread.pending.kind === "ratings" ? thread.pending.ratings[0] : undefined;
  const rating = namedRating(text) ?? asked;
  const known = rating !== undefined && knowledge.wording.has("explain", rating);
  return speaker.say("explain", known ? rating : "general");
}
