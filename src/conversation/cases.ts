import { type CaseReason, type Thread, type Urgency, urgencies } from "./thread.ts";

const urgencyOf: Readonly<Record<CaseReason, Urgency>> = {
  danger: "danger",
  "asked-for-person": "pump-down",
  "nothing-fits": "pump-down",
  "cannot-decide": "pump-down",
  "sent-picture": "pump-down",
  "wrote-again": "pump-down",
  "danger-over": "pump-down",
  "verdict-ready": "ready-to-confirm",
};

/**
 * The thread with a case on the desk for `reason`. A case only ever becomes more urgent by itself; a person
 * lowers it.
 */
export function toDesk(thread: Thread, reason: CaseReason): Thread {
  const urgency = thread.planning && reason !== "danger" ? "planning" : urgencyOf[reason];
  if (thread.case.state === "none") return { ...thread, case: { state: "waiting", urgency, reason } };
  const rises = urgencies.indexOf(urgency) < urgencies.indexOf(thread.case.urgency);
  const settles = thread.case.reason !== "danger" && reason === "verdict-ready";
  if (!rises && !settles) return thread;
  return { ...thread, case: { ...thread.case, urgency: rises ? urgency : thread.case.urgency, reason } };
}
