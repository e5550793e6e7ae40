import { assessThread } from "../conversation/assess.ts";
import { decide } from "../desk/acts/index.ts";
import { presented } from "../desk/present.ts";
import type { Outgoing } from "../outgoing.ts";
import type { CaseRow, Change } from "../store/store.ts";
import { toCustomer } from "./customer.ts";
import type { Known } from "./knowledge.ts";
import { briefMessage, caseOf, partsMessage, rowOf, threadOf } from "./state.ts";
import type { EngineParts, StaffAnswer, StaffItem } from "./types.ts";

/** An act decided: the answer, and one change for the store. */
export interface ActWorked {
  readonly change: Change;
  readonly answer: StaffAnswer;
}

/** Decides an act on what is stored now. */
export async function actOnCase(
  parts: EngineParts,
  item: StaffItem,
  row: CaseRow,
  known: Known,
): Promise<ActWorked> {
  const { store } = parts;
  const stored = await store.findThread(row.threadId);
  const open = caseOf(row);
  const newest = (await store.latestCase(row.threadId))?.id === row.id;
  const decision = decide({ ...item, ...known, case: open, thread: threadOf(stored), newest });
  const answer: StaffAnswer = { done: decision.kind === "done", answer: decision.answer };
  const acted = { id: item.id, caseId: item.caseId, ...answer };
  if (decision.kind === "refused") return { answer, change: { at: item.at, acted, outgoing: [] } };
  const { choices } = decision;

  const { thread } = decision;
  const shown = presented(decision.case, thread, assessThread(thread, known.knowledge), known);
  return {
    answer: choices.length > 0 ? { ...answer, choices } : answer,
    change: {
      at: item.at,
      acted,
      thread: { id: row.threadId, state: JSON.stringify(thread), version: stored?.version ?? 0 },
      case: rowOf(shown),
      events: decision.events,
      numbers: {
        by: item.by,
        edits: decision.numbers.map((edit) => (edit.kind === "add" ? { ...edit, caseId: row.id } : edit)),
      },
      doubted: decision.doubted.map(({ sku, finding }) => ({
        caseId: row.id,
        sku,
        finding: JSON.stringify(finding),
        by: item.by,
        at: item.at,
      })),
      outgoing: [
        ...toCustomer(row.threadId, decision.toCustomer, thread.pending),
        ...decision.toCase.map((content): Outgoing => ({ lane: { kind: "case", caseId: row.id }, content })),
        ...partsMessage(open, shown, parts),
        ...briefMessage(open, shown, thread, parts),
      ],
    },
  };
}
