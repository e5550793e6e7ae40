import { newThread, type Thread } from "../conversation/thread.ts";
import type { CaseEvent, DeskCase, EventKind } from "../desk/case.ts";
import { briefContent, looksDifferent } from "../desk/present.ts";
import type { Outgoing } from "../outgoing.ts";
import type { CaseRow, EventRow, StoredThread } from "../store/store.ts";
import type { EngineParts } from "./types.ts";

/** A stored thread; fields that a later version added take their first value. */
export function threadOf(stored: StoredThread | undefined): Thread {
  return stored === undefined
    ? newThread
    : { ...newThread, ...(JSON.parse(stored.state) as Partial<Thread>) };
}

const addedLater = {
  unanswered: null,
  alerted: null,
  offered: null,
  fits: null,
  partEdits: [],
  partsAgain: [],
  sale: null,
  headline: "",
  card: "",
} as const;

/** A stored case; fields that a later version added take their first value. */
export function caseOf(row: CaseRow): DeskCase {
  return { ...addedLater, ...(JSON.parse(row.doc) as Omit<DeskCase, keyof typeof addedLater>) };
}

export function rowOf(open: DeskCase): CaseRow {
  const { id, threadId, standing, urgency, openedAt, updatedAt } = open;
  return { id, threadId, state: standing.state, urgency, doc: JSON.stringify(open), openedAt, updatedAt };
}

export const eventOf = (row: EventRow): CaseEvent => ({ ...row, kind: row.kind as EventKind });

/** A word to staff when something they changed of the parts list has just come not to suit the verdict. */
export function partsMessage(
  before: DeskCase | undefined,
  after: DeskCase,
  { wording }: Pick<EngineParts, "wording">,
): readonly Outgoing[] {
  const fresh = after.partsAgain.filter((sentence) => !before?.partsAgain.includes(sentence));
  if (fresh.length === 0) return [];
  const text = wording.say("desk", "case.partsAgain", { sentences: fresh.join(" ") });
  return [{ lane: { kind: "case", caseId: after.id }, content: { text } }];
}

/** The brief for the case's lane, when staff should see it again. */
export function briefMessage(
  before: DeskCase | undefined,
  after: DeskCase,
  thread: Thread,
  { wording }: Pick<EngineParts, "wording">,
): readonly Outgoing[] {
  if (!looksDifferent(before, after)) return [];
  return [
    {
      lane: { kind: "case", caseId: after.id },
      content: briefContent(after, thread, wording),
      slot: "brief",
    },
  ];
}
