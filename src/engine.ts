import type { Catalogue } from "./catalogue/types.ts";
import type { Assessment } from "./conversation/assess.ts";
import type { Knowledge, Shop } from "./conversation/knowledge.ts";
import { whenSentence } from "./conversation/presence.ts";
import { createSpeaker } from "./conversation/speaker.ts";
import { step } from "./conversation/step.ts";
import { newThread, type Thread, withLine } from "./conversation/thread.ts";
import type { Understand } from "./conversation/understand.ts";
import type { Wording } from "./conversation/wording.ts";
import { briefOf } from "./desk/brief.ts";
import { type DeskHours, localDate, presenceAt } from "./desk/hours.ts";
import type { InboxItem, Store, Turn } from "./store/store.ts";

/** What the engine is built from; none of it changes while a message is handled. */
export interface EngineParts {
  readonly store: Store;
  readonly understand: Understand;
  readonly wording: Wording;
  readonly catalogue: () => Catalogue;
  readonly shop: Shop;
  readonly hours: DeskHours;
  /** Told of a message that made the code throw; must not throw itself. */
  readonly onTrouble: (item: InboxItem, error: unknown) => void;
}

/** What one message led to. */
export interface Handled {
  readonly replies: readonly string[];
  readonly thread: Thread;
  /** Null when the message was seen before or could not be handled. */
  readonly assessment: Assessment | null;
}

export interface Engine {
  /** Takes one message through store, conversation and back; a message seen before changes nothing. */
  readonly handle: (item: InboxItem) => Promise<Handled>;
  /** Handles what was received but not finished before a crash. */
  readonly catchUp: () => Promise<number>;
  readonly thread: (threadId: string) => Promise<Thread>;
}

/** One message, one transaction: thread, case and replies are committed together. */
export function createEngine(parts: EngineParts): Engine {
  const { store } = parts;
  const threadOf = async (id: string): Promise<Thread> => {
    const state = await store.findThread(id);
    // Fields that a later version added take their first value.
    return state === undefined ? newThread : { ...newThread, ...(JSON.parse(state) as Partial<Thread>) };
  };

  const work = async (item: InboxItem): Promise<Handled> => {
    const before = await threadOf(item.threadId);
    const knowledge = knowledgeAt(parts, item.at);
    let turn: Turn;
    let handled: Handled;
    try {
      const { thread, replies, erase, assessment } = step(before, item, knowledge);
      turn = {
        item,
        state: JSON.stringify(thread),
        replies,
        case: caseOf(thread, assessment, knowledge),
        erase,
      };
      handled = { thread, replies, assessment };
    } catch (error) {
      parts.onTrouble(item, error);
      ({ turn, handled } = troubled(before, item, knowledge));
    }
    await store.commit(turn);
    return handled;
  };

  return {
    thread: threadOf,
    handle: async (item) => {
      const fresh = await store.receive(item);
      return fresh ? work(item) : { replies: [], thread: await threadOf(item.threadId), assessment: null };
    },
    catchUp: async () => {
      const left = await store.unhandled();
      for (const item of left) await work(item);
      return left.length;
    },
  };
}

function knowledgeAt(parts: EngineParts, at: string): Knowledge {
  const { understand, wording, catalogue, shop, hours } = parts;
  return {
    understand,
    wording,
    catalogue: catalogue(),
    shop,
    presence: presenceAt(hours, at),
    on: localDate(hours, at),
  };
}

function caseOf(thread: Thread, assessment: Assessment, knowledge: Knowledge): Turn["case"] {
  if (thread.case.state === "none") return null;
  const { urgency, reason } = thread.case;
  return { urgency, reason, brief: briefOf(thread, assessment, knowledge) };
}

/** Our own mistake: the message is kept, a person is told, the customer gets a kind line. */
function troubled(
  before: Thread,
  item: InboxItem,
  knowledge: Knowledge,
): { readonly turn: Turn; readonly handled: Handled } {
  const speaker = createSpeaker(knowledge.wording, before.explained);
  const when = whenSentence(knowledge.presence, speaker);
  const replies = [speaker.say("replies", "trouble", { when })];
  const urgency = before.case.state === "none" ? "pump-down" : before.case.urgency;
  const reason = "cannot-decide";
  const thread: Thread = {
    ...withLine(before, { from: "customer", text: item.text.slice(0, 600), at: item.at }),
    case: { state: "waiting", urgency, reason },
  };
  const turn: Turn = {
    item,
    state: JSON.stringify(thread),
    replies,
    case: {
      urgency,
      reason,
      brief: knowledge.wording.say("brief", "trouble", { words: item.text.slice(0, 300) }),
    },
    erase: false,
  };
  return { turn, handled: { replies, thread, assessment: null } };
}
