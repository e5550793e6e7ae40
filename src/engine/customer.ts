import type { Assessment } from "../conversation/assess.ts";
import { assessThread } from "../conversation/assess.ts";
import { customerChoices } from "../conversation/choices.ts";
import { receivePicture } from "../conversation/picture.ts";
import { whenSentence } from "../conversation/presence.ts";
import { type Reply, textOf } from "../conversation/reply.ts";
import { createSpeaker } from "../conversation/speaker.ts";
import { step } from "../conversation/step.ts";
import { newThread, type Pending, type Thread, withLine } from "../conversation/thread.ts";
import { READ_CHARACTERS, type Understood } from "../conversation/understand.ts";
import type { CaseEvent, DeskCase } from "../desk/case.ts";
import { openedCase } from "../desk/case.ts";
import { follow, needsNewCase } from "../desk/follow.ts";
import { presented } from "../desk/present.ts";
import type { Hazard } from "../nameplate/reading.ts";
import type { Outgoing } from "../outgoing.ts";
import type { Change, InboxItem } from "../store/store.ts";
import type { Known } from "./knowledge.ts";
import { briefMessage, partsMessage, rowOf } from "./state.ts";
import type { EngineParts, Handled } from "./types.ts";
import { verdictGiven } from "./verdict-record.ts";

/** What a customer's message finds. */
export interface Found {
  readonly item: InboxItem;
  readonly thread: Thread;
  readonly version: number;
  /** The thread's newest case, whatever its state. */
  readonly last: DeskCase | undefined;
  readonly known: Known;
  /** The number a new case would get. */
  readonly newId: () => Promise<number>;
}

/** What a message leads to: one change for the store. */
export interface Worked {
  readonly change: Change;
  readonly handled: Handled;
}

/** The bot's answer and what the desk makes of the message. Throws where the code has a mistake. */
export async function answerCustomer(parts: EngineParts, found: Found): Promise<Worked> {
  const { item, version, last, known } = found;
  const answered = answerOf(found);
  if (answered.erase) return erased(parts, found, answered);

  const newId = needsNewCase(answered.thread, last, item.at) ? await found.newId() : NO_CASE;
  const followed = follow(
    {
      threadId: item.threadId,
      thread: answered.thread,
      text: item.text,
      attachments: item.attachments ?? [],
      edited: item.edited ?? false,
      hazard: answered.hazard,
      courtesy: answered.courtesy,
      at: item.at,
      knowledge: known.knowledge,
      hours: parts.hours,
    },
    last,
    newId,
  );
  const cut = item.text.length > READ_CHARACTERS && answered.hazard === null && answered.replies.length > 0;
  const replies: readonly Reply[] = [
    ...(cut ? [parts.wording.say("replies", "tooLong")] : []),
    ...answered.replies,
    ...followed.toCustomer,
  ];
  const shown =
    followed.case &&
    presented({ ...followed.case, updatedAt: item.at }, followed.thread, answered.assessment, known);
  const before = shown?.id === last?.id ? last : undefined;
  const verdict = verdictGiven(found.thread, followed.thread, answered.assessment, shown?.id ?? null);
  const toCase = shown
    ? followed.toCase.map((content): Outgoing => ({ lane: { kind: "case", caseId: shown.id }, content }))
    : [];
  return {
    change: {
      at: item.at,
      handled: item.id,
      thread: { id: item.threadId, state: JSON.stringify(followed.thread), version },
      ...(shown ? { case: rowOf(shown) } : {}),
      events: followed.events,
      ...(verdict ? { verdict } : {}),
      outgoing: [
        ...toCustomer(item.threadId, replies, followed.thread.pending),
        ...followed.outgoing,
        ...(shown
          ? [...partsMessage(before, shown, parts), ...briefMessage(before, shown, followed.thread, parts)]
          : []),
        ...toCase,
      ],
    },
    handled: { replies: replies.map(textOf), thread: followed.thread, assessment: answered.assessment },
  };
}

/** Where no new case is opened its number is never looked at. */
const NO_CASE = 0;

interface Answered {
  readonly thread: Thread;
  readonly replies: readonly Reply[];
  readonly erase: boolean;
  readonly assessment: Assessment;
  readonly hazard: Hazard | null;
  readonly courtesy: boolean;
}

/** A picture without words is not talked about; one with words is both. */
function answerOf({ item, thread, known: { knowledge } }: Found): Answered {
  const pictures = item.attachments ?? [];
  if (pictures.length > 0 && item.text.trim() === "") {
    const seen = receivePicture(thread, knowledge);
    return {
      thread: seen.thread,
      replies: seen.reply === undefined ? [] : [seen.reply],
      erase: false,
      assessment: assessThread(seen.thread, knowledge),
      hazard: null,
      courtesy: false,
    };
  }
  const { understood, pictures: drawn, ...stepped } = step(thread, item, knowledge);
  const answered: Answered = {
    ...stepped,
    replies: stepped.replies.map((text, index): Reply => {
      const picture = drawn[index] ?? null;
      return picture === null ? text : { text, picture };
    }),
    hazard: understood.hazard,
    courtesy: isCourtesy(understood),
  };
  if (pictures.length === 0 || answered.erase) return answered;
  const seen = receivePicture(answered.thread, knowledge);
  const replies =
    seen.reply === undefined || answered.hazard !== null
      ? answered.replies
      : [seen.reply, ...answered.replies];
  return { ...answered, thread: seen.thread, replies };
}

const besideThanks: ReadonlySet<string> = new Set(["thanks", "yes", "greeting"]);

function isCourtesy({ intents, reading, hazard }: Understood): boolean {
  if (hazard !== null || reading.readings.length > 0) return false;
  const names = intents.map(({ intent }) => intent);
  return names.includes("thanks") && names.every((name) => besideThanks.has(name));
}

/** Messages for the customer; the last one carries the buttons for what it asks. */
export function toCustomer(
  threadId: string,
  replies: readonly Reply[],
  pending: Pending,
): readonly Outgoing[] {
  const choices = customerChoices(pending).map(({ id, label }) => ({ id, label }));
  return replies.map((reply, index): Outgoing => {
    const last = index === replies.length - 1;
    return {
      lane: { kind: "customer", threadId },
      content: {
        text: textOf(reply),
        ...(last && choices.length > 0 ? { choices } : {}),
        ...(typeof reply === "string" ? {} : { picture: reply.picture }),
      },
    };
  });
}

/** Everything of the thread goes; staff are told so that they delete what they wrote down elsewhere. */
function erased(parts: EngineParts, { item, version, last }: Found, answered: Answered): Worked {
  const told: readonly Outgoing[] = last
    ? [{ lane: { kind: "desk" }, content: { text: parts.wording.say("desk", "erased", { ids: last.id }) } }]
    : [];
  return {
    change: {
      at: item.at,
      handled: item.id,
      erase: true,
      thread: { id: item.threadId, state: "{}", version },
      outgoing: [...toCustomer(item.threadId, answered.replies, answered.thread.pending), ...told],
    },
    handled: { replies: answered.replies.map(textOf), thread: newThread, assessment: answered.assessment },
  };
}

/** Our own mistake: the message is kept, a person is told, the customer gets a kind line. */
export async function afterMistake(parts: EngineParts, found: Found): Promise<Worked> {
  const { item, thread, version, last, known } = found;
  const { wording } = parts;
  const words = item.text.slice(0, 300);
  const open = last && last.standing.state !== "closed" ? last : undefined;
  const taken = open?.standing.state === "taken";
  const urgency = open?.urgency ?? "pump-down";
  const reason = open?.reason === "danger" ? "danger" : "cannot-decide";
  const kept: DeskCase = {
    ...(open ?? openedCase(await found.newId(), item.threadId, { urgency, reason, at: item.at })),
    reason,
    brief: wording.say("brief", "trouble", { words }),
    updatedAt: item.at,
  };
  const waits: DeskCase = taken
    ? kept
    : {
        ...kept,
        standing: open?.standing.state === "waiting" ? open.standing : { state: "waiting", since: item.at },
      };
  const speaker = createSpeaker(wording, thread.explained);
  const when = whenSentence(known.knowledge.presence, speaker);
  const replies = taken ? [] : [speaker.say("replies", "trouble", { when })];
  const after: Thread = {
    ...withLine(thread, { from: "customer", text: item.text.slice(0, 600), at: item.at }),
    case: { state: taken ? "taken" : "waiting", urgency, reason },
  };
  const event: CaseEvent = { caseId: waits.id, at: item.at, by: null, kind: "opened", text: "" };
  return {
    change: {
      at: item.at,
      handled: item.id,
      thread: { id: item.threadId, state: JSON.stringify(after), version },
      case: rowOf(waits),
      events: open ? [] : [event],
      outgoing: [
        ...toCustomer(item.threadId, replies, { kind: "nothing" }),
        ...briefMessage(open, waits, after, parts),
      ],
    },
    handled: { replies, thread: after, assessment: null },
  };
}
