import { type ReportData, shownRequest } from "./summary.ts";

/** One row a request, for a spreadsheet; no customer's words, no name of a customer. */
export const requestColumns = [
  "at",
  "case",
  "face",
  "total_hp",
  "volts",
  "supply_volts",
  "phase",
  "speed_kind",
  "verdict",
  "sku",
  "messages",
  "outcome",
  "outcome_sku",
  "agreement",
  "waited_minutes",
] as const;

type Cell = string | number | null | undefined;

export function requestRows({ requests, waits }: ReportData): readonly (readonly Cell[])[] {
  const firstWait = new Map(waits.toReversed().map((wait) => [wait.caseId, wait.minutes]));
  return requests.map(({ at, caseId, askedFor, verdict, sku, messages, outcome, outcomeSku, agreement }) => {
    const minutes = caseId === null ? null : firstWait.get(caseId);
    return [
      at,
      caseId,
      askedFor.face,
      askedFor.totalHp,
      askedFor.volts && shownRequest(askedFor).volts,
      askedFor.supplyVolts,
      askedFor.phase,
      askedFor.speedKind,
      verdict,
      sku,
      messages,
      outcome,
      outcomeSku,
      agreement,
      minutes === null || minutes === undefined ? null : Math.round(minutes * 10) / 10,
    ];
  });
}
