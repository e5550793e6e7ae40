import { toDesk } from "./cases.ts";
import type { Knowledge } from "./knowledge.ts";
import { whenSentence } from "./presence.ts";
import { createSpeaker } from "./speaker.ts";
import type { Thread } from "./thread.ts";

/**
 * A picture or file came in: a person looks at it. `reply` is the kind line for the customer, undefined
 * while a person talks with them.
 */
export function receivePicture(
  thread: Thread,
  knowledge: Knowledge,
): { readonly thread: Thread; readonly reply: string | undefined } {
  if (thread.case.state === "taken") return { thread, reply: undefined };
  const speaker = createSpeaker(knowledge.wording, thread.explained);
  const when = whenSentence(knowledge.presence, speaker);
  const nothingYet = Object.keys(thread.facts).length === 0 && thread.hazard === null;
  const key = nothingYet ? "customer.picture" : "customer.pictureKnown";
  return { thread: toDesk(thread, "sent-picture"), reply: speaker.say("desk", key, { when }) };
}
