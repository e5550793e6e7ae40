import type { RatingName } from "../nameplate/vocabulary.ts";
import type { Speaker } from "./speaker.ts";
import type { Thread } from "./thread.ts";

/** At most this many label readings are asked in one message. */
export const ASKED_TOGETHER = 3;

/** Looked at away from the label: each goes in a message of its own, so nobody runs about for one answer. */
const awayFromLabel: ReadonlySet<RatingName> = new Set([
  "supplyVolts",
  "breakerPoles",
  "breakerAmps",
  "pumpModel",
]);

/** Which of the planned ratings go into the next message: up to three from the label, or one from elsewhere. */
export function nextQuestion(plan: readonly RatingName[]): readonly RatingName[] {
  const [first] = plan;
  if (first === undefined) return [];
  if (awayFromLabel.has(first)) return [first];
  return plan.filter((rating) => !awayFromLabel.has(rating)).slice(0, ASKED_TOGETHER);
}

/** The thread after asking for `ratings`, and the text that asks. */
export function ask(
  thread: Thread,
  ratings: readonly RatingName[],
  speaker: Speaker,
): { readonly thread: Thread; readonly text: string } {
  const asked = { ...thread.asked };
  for (const rating of ratings) asked[rating] = (asked[rating] ?? 0) + 1;
  return {
    thread: { ...thread, asked, pending: { kind: "ratings", ratings } },
    text: questionText(thread, ratings, speaker),
  };
}

function questionText(thread: Thread, ratings: readonly RatingName[], speaker: Speaker): string {
  const phrase = (rating: RatingName) =>
    speaker.say("questions", (thread.asked[rating] ?? 0) > 0 ? `${rating}.again` : rating);
  const again = ratings.some((rating) => (thread.asked[rating] ?? 0) > 0);
  const before = Object.keys(thread.asked).length > 0;
  const opening = speaker.say("questions", again ? "ask.again" : before ? "ask.next" : "ask.first");
  const [only] = ratings;
  const body =
    ratings.length === 1 && only !== undefined
      ? `${opening} ${phrase(only)}`
      : `${opening}\n${ratings.map((rating) => `• ${phrase(rating)}`).join("\n")}`;
  return before ? body : `${body}\n${speaker.say("questions", "ask.skip")}`;
}
