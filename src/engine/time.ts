import { withLine } from "../conversation/thread.ts";
import { due, type Notice } from "../desk/due.ts";
import type { CaseRow } from "../store/store.ts";
import { toCustomer } from "./customer.ts";
import { caseOf, threadOf } from "./state.ts";
import type { EngineParts } from "./types.ts";

/** Sends what an instant brings; gives the number of messages queued. */
export async function bringOnTime(
  parts: EngineParts,
  at: string,
  inTurn: <T>(threadId: string, task: () => Promise<T>) => Promise<T>,
): Promise<number> {
  const { store } = parts;
  const rows = await store.openCases();
  const notices = due(at, rows.map(caseOf), parts);
  let sent = 0;
  for (const notice of notices) {
    if (await store.noticed(notice.key)) continue;
    if (notice.caseId === null) {
      const { key, outgoing } = notice;
      if ((await store.commit({ at, notice: key, outgoing })) === "done") sent += outgoing.length;
      continue;
    }
    const row = rows.find(({ id }) => id === notice.caseId);
    if (row) sent += await inTurn(row.threadId, () => sendToCase(parts, at, notice.key, row));
  }
  return sent;
}

/** Somebody may have taken the case meanwhile: looked at again in the customer's turn, and stored only if so. */
async function sendToCase(parts: EngineParts, at: string, key: string, { id }: CaseRow): Promise<number> {
  const { store } = parts;
  const row = await store.findCase(id);
  const notice = row && due(at, [caseOf(row)], parts).find((still: Notice) => still.key === key);
  if (!row || !notice) return 0;
  const stored = await store.findThread(row.threadId);
  const before = threadOf(stored);
  const thread = notice.toCustomer.reduce(
    (state, text) => withLine(state, { from: "bot", text, at }),
    before,
  );
  const outgoing = [...toCustomer(row.threadId, notice.toCustomer, { kind: "nothing" }), ...notice.outgoing];
  const committed = await store.commit({
    at,
    notice: key,
    thread: { id: row.threadId, state: JSON.stringify(thread), version: stored?.version ?? 0 },
    events: notice.events,
    outgoing,
  });
  return committed === "done" ? outgoing.length : 0;
}
