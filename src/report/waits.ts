import type { CaseEvent } from "../desk/case.ts";

/** How long a customer waited for a person. */
export interface Wait {
  readonly caseId: number;
  /** ISO instant the case came onto the desk. */
  readonly since: string;
  /** Until a person took it; null: it was not taken. */
  readonly minutes: number | null;
  /** Whether somebody was at the desk when it came. */
  readonly deskOpen: boolean;
}

/** The waits of one case, from its history: each time it came onto the desk. */
export function waitsOf(events: readonly CaseEvent[], isOpen: (at: string) => boolean): readonly Wait[] {
  const waits: Wait[] = [];
  let since: string | null = null;
  for (const { kind, at, caseId } of events) {
    if (kind === "opened" || kind === "reopened") since ??= at;
    else if (since !== null && (kind === "took" || kind === "closed")) {
      const minutes = (Date.parse(at) - Date.parse(since)) / 60_000;
      if (kind === "took") waits.push({ caseId, since, minutes, deskOpen: isOpen(since) });
      since = null;
    }
  }
  const [first] = events;
  if (since !== null && first)
    waits.push({ caseId: first.caseId, since, minutes: null, deskOpen: isOpen(since) });
  return waits;
}

/** The middle value, or the mean of the two; null of none. */
export function median(values: readonly number[]): number | null {
  const sorted = values.toSorted((a, b) => a - b);
  const [low, high] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[Math.floor(sorted.length / 2)]];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}
