import type { Values } from "../../conversation/wording.ts";
import type { StaffMember } from "../../staff.ts";
import { ageInWords } from "../age.ts";
import { type CaseEvent, type DeskCase, type EventKind, mirrored } from "../case.ts";
import type { Act, Decision, DeskTurn } from "./act.ts";

type Done = Extract<Decision, { kind: "done" }>;
type Refused = Extract<Decision, { kind: "refused" }>;

/** The act is not done, and why, in a sentence. */
export function refuse({ knowledge }: DeskTurn, key: string, values: Values = {}): Refused {
  return { kind: "refused", answer: knowledge.wording.say("desk", `refused.${key}`, values) };
}

/** What is done; everything not named stays as it was. The thread's mirror follows the case. */
export function done(turn: DeskTurn, answer: string, changes: Partial<Omit<Done, "kind" | "answer">>): Done {
  const changed = changes.case ?? turn.case;
  return {
    kind: "done",
    toCustomer: [],
    toCase: [],
    events: [],
    numbers: [],
    doubted: [],
    choices: [],
    ...changes,
    case: { ...changed, updatedAt: turn.at },
    thread: mirrored(changes.thread ?? turn.thread, changed),
    answer,
  };
}

/** A line of the case's history by the one who acts. */
export function eventOf({ case: { id }, by, at }: DeskTurn, kind: EventKind, text = ""): CaseEvent {
  return { caseId: id, at, by, kind, text };
}

/** Why this person may not work on the case now: it is closed, or somebody else has it. */
export function notMine(turn: DeskTurn): Refused | null {
  const { standing } = turn.case;
  const { wording } = turn.knowledge;
  if (standing.state === "closed") {
    return refuse(turn, "closed", { outcome: wording.say("desk", `outcome.${standing.outcome}`) });
  }
  if (standing.state === "taken" && standing.by.id !== turn.by.id) {
    return refuse(turn, "taken", {
      name: standing.by.name,
      age: ageInWords(standing.since, turn.at, wording),
    });
  }
  return null;
}

/** Why nothing but the danger may be talked of; null when there is none. */
export function dangerFirst(turn: DeskTurn): Refused | null {
  const { hazard } = turn.thread;
  return hazard === null ? null : refuse(turn, "danger", { hazard });
}

/** The case in this person's hands. */
export function takenBy(open: DeskCase, by: StaffMember, at: string): DeskCase {
  const mine = open.standing.state === "taken" && open.standing.by.id === by.id;
  return mine ? open : { ...open, standing: { state: "taken", by, since: at } };
}

/** Writing to the customer takes a case that nobody has; what that adds for those who look on. */
export function takingAlong(turn: DeskTurn): Pick<Done, "case" | "toCase" | "events"> {
  const taken = takenBy(turn.case, turn.by, turn.at);
  if (taken === turn.case) return { case: taken, toCase: [], events: [] };
  const text = turn.knowledge.wording.say("desk", "case.took", { name: turn.by.name });
  return { case: taken, toCase: [{ text }], events: [eventOf(turn, "took")] };
}

/** Narrowed turn of one act. */
export type TurnOf<K extends Act["kind"]> = DeskTurn<Extract<Act, { kind: K }>>;
