import type { Assessment } from "./assess.ts";
import type { Absorbed } from "./facts.ts";
import type { IntentName } from "./intents.ts";
import type { Knowledge } from "./knowledge.ts";
import type { Reply } from "./reply.ts";
import type { Speaker } from "./speaker.ts";
import type { Thread } from "./thread.ts";
import type { Understood } from "./understand.ts";

/** One message on its way through the acts of a step. */
export interface Turn {
  readonly text: string;
  /** The thread, the message already in its lines. */
  readonly thread: Thread;
  readonly understood: Understood;
  readonly wants: (intent: IntentName) => boolean;
  readonly speaker: Speaker;
  readonly knowledge: Knowledge;
  /** One truthful sentence on when a person is there. */
  readonly when: string;
}

/** A turn in the talk about the motor: what the message added, and where the thread now stands. */
export interface TalkTurn extends Turn {
  readonly absorbed: Absorbed;
  readonly assessment: Assessment;
}

/** What an act answers. */
export interface Response {
  readonly thread: Thread;
  readonly replies: readonly Reply[];
  readonly erase?: boolean;
}
