import { type RatingName, ratings } from "../nameplate/vocabulary.ts";
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

/** The thread after asking for `wanted`, and the text that asks. */
export function ask(
  thread: Thread,
  wanted: readonly RatingName[],
  speaker: Speaker,
): { readonly thread: Thread; readonly text: string } {
  const asked = { ...thread.asked };
  for (const rating of wanted) asked[rating] = (asked[rating] ?? 0) + 1;
  return {
    thread: { ...thread, asked, pending: { kind: "ratings", ratings: wanted } },
    text: questionText(thread, wanted, speaker),
  };
}

/** The rest of a question that was answered in part: a reminder, which nobody has failed to answer yet. */
export function remind(
  thread: Thread,
  open: readonly RatingName[],
  speaker: Speaker,
): { readonly thread: Thread; readonly text: string } {
  const names = open.map((rating) => ratings[rating].title).join(", ");
  return {
    thread: { ...thread, pending: { kind: "ratings", ratings: open } },
    text: speaker.say("replies", "stillOpen", { ratings: names }),
  };
}

function questionText(thread: Thread, wanted: readonly RatingName[], speaker: Speaker): string {
  const timesAsked = (rating: RatingName) => thread.asked[rating] ?? 0;
  const [only] = wanted;
  if (
    wanted.length === 1 &&
    only !== undefined &&
    timesAsked(only) === 0 &&
    speaker.has("questions", `${only}.alone`)
  ) {
    return speaker.say("questions", `${only}.alone`);
  }
  const again = wanted.some((rating) => timesAsked(rating) > 0);
  const before = Object.keys(thread.asked).length > 0;
  const opening = speaker.say("questions", again ? "ask.again" : before ? "ask.next" : "ask.first");
  const phrases = wanted.map((rating) =>
    speaker.say("questions", timesAsked(rating) > 0 ? `${rating}.again` : rating),
  );
  const body =
    phrases.length === 1
      ? `${opening} ${phrases[0]}.`
      : `${opening}\n${phrases.map((phrase) => `• ${phrase}`).join("\n")}`;
  return before ? body : `${body}\n${speaker.say("questions", "ask.skip")}`;
}
