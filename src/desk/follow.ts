import { toDesk } from "../conversation/cases.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { whenSentence } from "../conversation/presence.ts";
import { createSpeaker } from "../conversation/speaker.ts";
import type { Thread } from "../conversation/thread.ts";
import type { Hazard } from "../nameplate/reading.ts";
import type { Attachment, Content, Outgoing } from "../outgoing.ts";
import { alertMessages, needsAlert } from "./alert.ts";
import { type CaseEvent, type DeskCase, openedCase } from "./case.ts";
import type { DeskHours } from "./hours.ts";

/** A customer's message after the bot has answered it. */
export interface CustomerTurn {
  readonly threadId: string;
  readonly thread: Thread;
  readonly text: string;
  readonly attachments: readonly Attachment[];
  /** True when these are new words of an earlier message. */
  readonly edited: boolean;
  /** Danger named in this message. */
  readonly hazard: Hazard | null;
  /** "Thanks", and nothing else. */
  readonly courtesy: boolean;
  /** ISO instant. */
  readonly at: string;
  readonly knowledge: Knowledge;
  readonly hours: DeskHours;
}

/** What the desk makes of a customer's message. */
export interface Followed {
  /** Null: the thread has nothing on the desk. */
  readonly case: DeskCase | null;
  readonly thread: Thread;
  readonly toCustomer: readonly string[];
  readonly toCase: readonly Content[];
  /** Alerts. */
  readonly outgoing: readonly Outgoing[];
  readonly events: readonly CaseEvent[];
}

/** A case closed longer ago than this stays closed: a new matter gets a new case. */
export const REOPENED_WITHIN_DAYS = 60;

/**
 * Brings the desk in step with the thread: opens a case, puts one back on the desk, reopens a closed one when
 * the customer writes again, passes words on to the person who has it, and calls out danger.
 */
export function follow(turn: CustomerTurn, last: DeskCase | undefined, newId: number): Followed {
  const again = reopens(last, turn.at);
  const wroteAgain = again && turn.thread.case.state === "none" && !isFarewell(turn, last);
  const thread = wroteAgain ? toDesk(turn.thread, "wrote-again") : turn.thread;
  const toCustomer = wroteAgain ? [wroteAgainText(turn)] : [];

  const kept = last?.standing.state === "closed" && !again ? undefined : last;
  const placed = placeCase({ ...turn, thread }, kept, newId);
  if (placed.case === null) return { ...placed, thread, toCustomer, outgoing: [] };
  const called = callOut(turn, placed.case);
  return {
    case: called.case,
    // Who starts over sets the label aside; what the desk has changed stays with the case.
    thread: { ...thread, partEdits: called.case.partEdits },
    toCustomer,
    toCase: [...placed.toCase, ...passedOn(turn, placed.case), ...called.toCase],
    outgoing: called.outgoing,
    events: [...placed.events, ...called.events],
  };
}

/** True when this thread, on the desk now, needs a case of its own rather than its last one. */
export function needsNewCase(thread: Thread, last: DeskCase | undefined, at: string): boolean {
  if (thread.case.state === "none") return false;
  return last === undefined || (last.standing.state === "closed" && !reopens(last, at));
}

function reopens(last: DeskCase | undefined, at: string): boolean {
  return last?.standing.state === "closed" && isRecent(last.standing.since, at);
}

/** "Thanks" after a closed case is no reason to open it, unless it was closed for want of an answer. */
function isFarewell({ courtesy }: CustomerTurn, last: DeskCase | undefined): boolean {
  return courtesy && !(last?.standing.state === "closed" && last.standing.outcome === "no-reply");
}

type Placed = Pick<Followed, "case" | "toCase" | "events">;

/** The case in step with the thread's mirror of it. */
function placeCase(turn: CustomerTurn, last: DeskCase | undefined, newId: number): Placed {
  const mirror = turn.thread.case;
  const { at, knowledge } = turn;
  if (mirror.state === "none") {
    return { case: last?.standing.state === "closed" ? null : (last ?? null), toCase: [], events: [] };
  }
  const { urgency, reason } = mirror;
  const standing = { state: "waiting", since: at } as const;
  if (!last) {
    const opened = openedCase(newId, turn.threadId, { urgency, reason, at });
    return { case: opened, toCase: [], events: [{ caseId: newId, at, by: null, kind: "opened", text: "" }] };
  }
  const kept: DeskCase = { ...last, urgency, reason };
  const reopened = (text: string): Placed => ({
    case: { ...kept, standing, unanswered: { since: at, promised: true } },
    toCase: [{ text }],
    events: [
      {
        caseId: last.id,
        at,
        by: null,
        kind: "reopened",
        text: knowledge.wording.say("brief", `reason.${reason}`),
      },
    ],
  });
  switch (last.standing.state) {
    case "waiting":
    case "taken": {
      const unanswered =
        last.unanswered ??
        (turn.courtesy ? null : { since: at, promised: last.standing.state === "waiting" });
      return { case: { ...kept, unanswered }, toCase: [], events: [] };
    }
    case "with-bot":
      return reopened(
        knowledge.wording.say("desk", "case.backOnDesk", {
          reason: knowledge.wording.say("brief", `reason.${reason}`),
        }),
      );
    case "closed":
      return reopened(
        knowledge.wording.say("desk", "case.wroteAgain", {
          outcome: knowledge.wording.say("desk", `outcome.${last.standing.outcome}`),
          name: last.standing.by.name,
        }),
      );
  }
}

/** Longer messages are cut for staff; the whole one is in the inbox. */
const PASSED_CHARACTERS = 3000;

/** The customer's words for the person who has the case; pictures for everybody who looks. */
function passedOn(
  { text, attachments, edited, hazard, knowledge }: CustomerTurn,
  open: DeskCase,
): readonly Content[] {
  const { wording } = knowledge;
  // Words of danger are passed on with their alarm.
  const reads = hazard === null && (open.standing.state === "taken" || attachments.length > 0);
  const words =
    reads && text.trim() !== ""
      ? [
          wording.say("desk", edited ? "case.edited" : "case.said", {
            text: text.slice(0, PASSED_CHARACTERS),
          }),
        ]
      : [];
  const pictures =
    attachments.length > 0
      ? [
          wording.say("desk", attachments.length === 1 ? "case.sentOne" : "case.sent", {
            count: attachments.length,
          }),
        ]
      : [];
  if (words.length + pictures.length === 0) return [];
  const shown = [...pictures, ...words].join("\n");
  return [attachments.length > 0 ? { text: shown, attachments } : { text: shown }];
}

function callOut(
  { hazard, text, at, knowledge, hours }: CustomerTurn,
  open: DeskCase,
): Pick<Followed, "toCase" | "outgoing" | "events"> & { readonly case: DeskCase } {
  if (hazard === null) return { case: open, toCase: [], outgoing: [], events: [] };
  const { wording } = knowledge;
  const words = text.replace(/\s+/g, " ").trim().slice(0, 200);
  const toCase = [{ text: wording.say("desk", "case.danger", { hazard, words }) }];
  if (!needsAlert(open, hazard, at)) return { case: open, toCase, outgoing: [], events: [] };
  const { id } = open;
  const alert = wording.say("desk", "alert", { hazard, id, words, phone: hours.onCall.phone });
  return {
    case: { ...open, alerted: { hazard, at } },
    toCase,
    outgoing: alertMessages(id, hazard, alert, hours, wording),
    events: [{ caseId: id, at, by: null, kind: "alerted", text: hazard }],
  };
}

function wroteAgainText({ knowledge, thread }: CustomerTurn): string {
  const speaker = createSpeaker(knowledge.wording, thread.explained);
  return speaker.say("desk", "customer.wroteAgain", { when: whenSentence(knowledge.presence, speaker) });
}

function isRecent(since: string, at: string): boolean {
  return Date.parse(at) - Date.parse(since) < REOPENED_WITHIN_DAYS * 86_400_000;
}
