import { assessThread } from "./assess.ts";
import { goOn } from "./go-on.ts";
import type { Knowledge } from "./knowledge.ts";
import { whenSentence } from "./presence.ts";
import type { Reply } from "./reply.ts";
import { createSpeaker } from "./speaker.ts";
import type { Thread } from "./thread.ts";
import type { TalkTurn } from "./turn.ts";

/**
 * The bot takes the word again after a person: the open question or a verdict that has changed meanwhile,
 * and nothing when all has been said.
 */
export function resume(
  thread: Thread,
  knowledge: Knowledge,
): { readonly thread: Thread; readonly replies: readonly Reply[] } {
  if (thread.hazard !== null) return { thread, replies: [] };
  const speaker = createSpeaker(knowledge.wording, thread.explained);
  const assessment = assessThread(thread, knowledge);
  if (assessment.match === null) return { thread, replies: [speaker.say("replies", "opening")] };
  const turn: TalkTurn = {
    text: "",
    thread,
    understood: knowledge.understand(""),
    wants: () => false,
    speaker,
    knowledge,
    when: whenSentence(knowledge.presence, speaker),
    // Everything known counts as just heard, so that the talk goes on instead of asking what was meant.
    absorbed: { thread, news: ["modelNumbers"], changes: [] },
    assessment,
  };
  const { thread: after, replies } = goOn(turn, false);
  const said = after.answered === thread.answered && after.pending.kind === "nothing";
  return said ? { thread, replies: [] } : { thread: { ...after, explained: speaker.explained() }, replies };
}
