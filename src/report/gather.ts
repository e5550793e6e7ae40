import { DateTime } from "luxon";
import { type DeskHours, localDate, presenceAt } from "../desk/hours.ts";
import { caseOf, eventOf } from "../engine/state.ts";
import type { Store } from "../store/store.ts";
import { requestsOf } from "./requests.ts";
import type { ReportData } from "./summary.ts";
import { type Wait, waitsOf } from "./waits.ts";

/** Reads what the report of the last `days` days (today counts as one) is made from; `now` is an ISO instant. */
export async function gather(store: Store, hours: DeskHours, days: number, now: string): Promise<ReportData> {
  const today = DateTime.fromISO(now, { zone: hours.timeZone }).startOf("day");
  const since = today.minus({ days: days - 1 });
  const from = since.toUTC().toISO() ?? now;
  const began = since.toMillis();

  const verdicts = await store.verdicts(from);
  const answered = new Set(verdicts.map(({ caseId }) => caseId));
  const rows = await store.cases();
  const recent = rows.filter(({ updatedAt }) => Date.parse(updatedAt) >= began);
  const waits: Wait[] = [];
  for (const { id } of recent) {
    const events = (await store.events(id)).map(eventOf);
    const all = waitsOf(events, (at) => presenceAt(hours, at).open);
    waits.push(...all.filter((wait) => Date.parse(wait.since) >= began));
  }
  return {
    from: localDate(hours, from),
    to: localDate(hours, now),
    requests: requestsOf(verdicts, rows.map(caseOf)),
    withoutVerdict: recent.filter(({ id, openedAt }) => Date.parse(openedAt) >= began && !answered.has(id))
      .length,
    waits,
  };
}
