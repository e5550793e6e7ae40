import { type Assessment, assessThread } from "./assess.ts";
import { toDesk } from "./cases.ts";
import { markedFrom, ratingsFrom, withoutMessage } from "./edited.ts";
import { absorb } from "./facts.ts";
import type { Knowledge } from "./knowledge.ts";
import { withKnownPump } from "./known-pump.ts";
import { type Pictured, pictureOfQuestion } from "./pictured.ts";
import { whenSentence } from "./presence.ts";
import { type Reply, textOf } from "./reply.ts";
import { createSpeaker } from "./speaker.ts";
import { talk } from "./talk.ts";
import { newThread, type Pending, type Thread, withLine } from "./thread.ts";
import type { Response, Turn } from "./turn.ts";
import type { Understood } from "./understand.ts";

/** A customer's message. */
export interface Incoming {
  readonly text: string;
  /** ISO instant. */
  readonly at: string;
  /** The channel's own name for the message, where it has one; an edited message keeps it. */
  readonly message?: string;
  /** True when these are new words of a message that was answered before. */
  readonly edited?: boolean;
}

/** What one message leads to; committed as a whole. */
export interface Step {
  readonly thread: Thread;
  /** Texts for the customer, in order. */
  readonly replies: readonly string[];
  /** Of each reply the picture that helps with it, if there is one. */
  readonly pictures: readonly (Pictured | null)[];
  /** True when everything kept of this thread is to be erased. */
  readonly erase: boolean;
  readonly assessment: Assessment;
  readonly understood: Understood;
}

/** An act answers a message or leaves it to the next one. */
type Act = (turn: Turn) => Response | null;

/**
 * In this order, the first that answers: danger goes before everything; erasing and starting over are about
 * the thread, not the motor; while a person talks with the customer the bot is silent; an unresolved danger
 * holds the parts talk; the rest is talk about the motor.
 */
const acts: readonly Act[] = [danger, erasing, withPerson, holding, startOver, talk];

/** Answers one message: pure, so the same thread, message and knowledge always give the same step. */
export function step(stored: Thread, message: Incoming, knowledge: Knowledge): Step {
  const asked = stored.pending.kind === "ratings" ? stored.pending.ratings : [];
  const edited = message.edited === true ? message.message : undefined;
  // New words of an earlier answer may be as bare as that answer was.
  const expecting = edited === undefined ? asked : [...ratingsFrom(stored.facts, edited), ...asked];
  const heard = knowledge.understand(message.text, expecting);
  const reading = withKnownPump(message.text, heard.reading, knowledge.catalogue.pumps);
  const understood: Understood = { ...heard, reading };
  const said = reading.readings.map(({ rating }) => rating);
  const thread = edited === undefined ? stored : withoutMessage(stored, edited, said);
  const speaker = createSpeaker(knowledge.wording, thread.explained);
  const turn: Turn = {
    text: message.text,
    thread: withLine(thread, {
      from: "customer",
      text: message.text.slice(0, KEPT_CHARACTERS),
      at: message.at,
    }),
    understood,
    wants: (intent) => understood.intents.some((match) => match.intent === intent),
    speaker,
    knowledge,
    when: whenSentence(knowledge.presence, speaker),
  };
  const response = firstResponse(turn);
  const answers = response.replies.filter((reply) => textOf(reply).trim() !== "");
  const replies = answers.map(textOf);
  const { facts } = response.thread;
  const after = replies.reduce(
    (state, text) => withLine(state, { from: "bot", text: text.slice(0, KEPT_CHARACTERS), at: message.at }),
    {
      ...response.thread,
      facts: message.message === undefined ? facts : markedFrom(stored.facts, facts, message.message),
      explained: speaker.explained(),
    },
  );
  return {
    thread: after,
    replies,
    pictures: picturesOf(answers, stored.pending, after),
    erase: response.erase ?? false,
    assessment: assessThread(after, knowledge),
    understood,
  };
}

/**
 * A reply's own picture; beside the last one what helps to answer it, where no other is shown. A question that was
 * asked before has shown its picture already. In danger there is no picture.
 */
function picturesOf(
  said: readonly Reply[],
  before: Pending,
  { pending, hazard }: Thread,
): readonly (Pictured | null)[] {
  if (hazard !== null) return said.map(() => null);
  const own = said.map((reply) => (typeof reply === "string" ? null : reply.picture));
  const question = pictureOfQuestion(pending);
  const fresh = JSON.stringify(before) !== JSON.stringify(pending);
  if (question === undefined || !fresh || own.some((picture) => picture !== null)) return own;
  return own.with(-1, question);
}

/** Of one line no more is kept for the brief; the whole message stays in the inbox. */
const KEPT_CHARACTERS = 600;

function firstResponse(turn: Turn): Response {
  for (const act of acts) {
    const response = act(turn);
    if (response) return response;
  }
  throw new Error("the last act answers everything");
}

/** The safety text alone, and the thread to the desk at the highest priority. */
function danger({ thread, understood, speaker, knowledge }: Turn): Response | null {
  const { hazard } = understood;
  if (hazard === null) return null;
  const text = speaker.say("safety", hazard, { emergencyNumber: knowledge.shop.emergencyNumber });
  const kept = absorb(thread, understood.reading).thread;
  return {
    thread: toDesk({ ...kept, hazard, pending: { kind: "power-off", hazard } }, "danger"),
    replies: [text],
  };
}

/** Erasing is asked back once, because it cannot be undone. */
function erasing({ thread, wants, speaker }: Turn): Response | null {
  if (thread.pending.kind === "erase") {
    const cleared: Thread = { ...thread, pending: { kind: "nothing" } };
    if (wants("yes") || wants("forget")) {
      return { thread: newThread, replies: [speaker.say("replies", "erase.done")], erase: true };
    }
    if (wants("no")) return { thread: cleared, replies: [speaker.say("replies", "erase.kept")] };
    return null;
  }
  if (!wants("forget")) return null;
  return {
    thread: { ...thread, pending: { kind: "erase" } },
    replies: [speaker.say("replies", "erase.ask")],
  };
}

/** Once a person has taken the thread the bot only listens, so that the brief stays up to date. */
function withPerson({ thread, understood }: Turn): Response | null {
  if (thread.case.state !== "taken") return null;
  return { thread: absorb(thread, understood.reading).thread, replies: [] };
}

/** After a danger nothing about parts is said until the power is off; after a shock a person takes over. */
function holding(turn: Turn): Response | null {
  const { thread, understood, wants, speaker, when } = turn;
  const { hazard } = thread;
  if (hazard === null) return null;
  const kept = absorb(thread, understood.reading).thread;
  if (hazard === "shock") return { thread: kept, replies: [speaker.say("replies", "hold.shock", { when })] };
  const off =
    wants("power-off") || (thread.pending.kind === "power-off" && understood.intents[0]?.intent === "yes");
  if (!off) return { thread: kept, replies: [speaker.say("replies", "hold")] };
  const free: Thread = { ...thread, hazard: null, pending: { kind: "nothing" } };
  const { thread: after, replies } = talk({ ...turn, thread: free });
  return { thread: after, replies: [speaker.say("replies", "powerOff"), ...replies] };
}

/** Sets the facts aside; what the desk already has stays with the desk. */
function startOver({ thread, wants, speaker }: Turn): Response | null {
  if (!wants("restart")) return null;
  const fresh: Thread = { ...newThread, case: thread.case, explained: thread.explained, lines: thread.lines };
  return { thread: fresh, replies: [speaker.say("replies", "restarted")] };
}
